package borderwright.bench.solid;

import java.util.List;

/**
 * A spring along one direction between places of bricks, or between one and the ground.
 *
 * @param joint what it belongs to; a contact has none
 * @param kind what it does
 * @param law when it works
 * @param stiffness N/mm
 * @param limitN greatest force of a slipping one
 * @param terms its lengthening as a sum over displacements
 */
record Link(String joint, Kind kind, Law law, double stiffness, double limitN, List<Term> terms) {
    Link {
        terms = List.copyOf(terms);
    }

    /** What it stands for. */
    enum Kind {
        SCREW_ALONG_WALL,
        SCREW_UPWARDS,
        SCREW_PULLED,
        STRAP,
        LAP_SCREW,
        FACES,
        FILL
    }

    /** When it works. */
    enum Law {
        ELASTIC,
        /** Only when shortened. */
        CONTACT,
        /** Elastic between two limits. */
        SLIPPING
    }

    /**
     * One displacement's part.
     *
     * @param node its number
     * @param axis 1, 2 or 3
     * @param factor of the displacement
     */
    record Term(int node, int axis, double factor) {}
}
