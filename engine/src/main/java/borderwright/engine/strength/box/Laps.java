package borderwright.engine.strength.box;

import borderwright.engine.buildup.parts.Box.Fixing;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.geometry.Point;
import borderwright.engine.strength.box.DrivenScrews.Driven;
import borderwright.engine.strength.frame.SpringLaw;
import borderwright.engine.strength.frame.Vector;
import borderwright.engine.strength.timber.FastenerJoint;
import java.util.List;
import java.util.Optional;

/**
 * Lapped corners: the end of one board against the inner face of the other, in compression only, and the screws through
 * the lap, sheared across the grain's end. These count only where they keep the rule set's distance from the board's faces,
 * and never against being pulled out.
 *
 * <p>See docs/decisions/0042.
 */
final class Laps {
    private static final double NEAR_MM = 1;

    private final FrameOfBox frame;

    Laps(FrameOfBox frame) {
        this.frame = frame;
    }

    /**
     * The end of a board at a corner.
     *
     * @param piece which board
     * @param node its end node
     * @param outward unit vector out of the box
     * @param away unit vector along the board, from the corner
     */
    record End(Piece piece, int node, Vector outward, Vector away) {
        boolean reaches(Point corner) {
            return piece.place().plan().contains(corner, -NEAR_MM);
        }
    }

    /**
     * Joins the two boards of a course at a corner, where one of them laps the other.
     *
     * @param corner of the outer faces
     * @param middle where the middle lines meet, at the course's middle
     */
    void join(End first, End second, Point corner, Vector middle) {
        boolean firstReaches = first.reaches(corner);
        if (firstReaches == second.reaches(corner)) {
            return;
        }
        End through = firstReaches ? first : second;
        End butting = firstReaches ? second : first;
        double sine = Math.abs(through.outward.dot(butting.away));
        double half = frame.lines.wallMm / 2 / sine;
        Vector place = middle.plus(butting.away.times(half));
        double stiffness = frame.materials.timber(through.piece.section()).e90Mean()
                * through.piece.place().heightMm();
        for (int hand = -1; hand <= 1; hand += 2) {
            Vector edge = place.plus(through.away.times(hand * half));
            frame.builder.spring(butting.node, through.node, edge, through.outward, stiffness, SpringLaw.CONTACT);
        }
        screw(through, butting, place);
    }

    private void screw(End through, End butting, Vector place) {
        Optional<Driven> driven = frame.driven.ofLap(through.piece, butting.piece);
        Optional<Fixing> fixing = driven.map(Driven::fixing)
                .filter(screw -> frame.materials.staysInEdge(screw.diameterMm(), frame.lines.wallMm));
        if (fixing.isEmpty()) {
            return;
        }
        FastenerJoint joint = frame.materials.endJoint(
                frame.materials.screw(fixing.get().diameterMm(), fixing.get().lengthMm()),
                frame.lines.wallMm,
                through.piece.section(),
                fixing.get().lengthMm(),
                butting.piece.section());
        frame.screws.help(joint, driven.get().count(), through.node, butting.node, place, List.of(butting.outward));
    }
}
