package borderwright.engine.garden;

import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.garden.vocabulary.NearbyKind;
import borderwright.engine.measure.Length;
import java.util.Optional;

/**
 * Something near the planters that has to be kept clear of.
 *
 * @param what it is
 * @param edge that it is measured from, named from the corner where its distance along starts
 * @param from where it is, or begins
 * @param to where it ends; the same as {@code from} for a single place
 * @param trunkMm a tree's trunk across; 0 of all else
 * @param depth below the ground of a service, if it is known
 * @param bottom height above the datum of the lower edge of an air brick or of cladding, if it is given
 */
public record NearbyThing(
        NearbyKind what,
        Names edge,
        Place from,
        Place to,
        double trunkMm,
        Optional<Length> depth,
        Optional<Length> bottom) {
    private static final double TRUNKS = 12;
    private static final double MOST_ROOTS_MM = 15_000;

    /** A place by its edge: distance along it, and into the border; negative outside. */
    public record Place(double alongMm, double intoMm) {}

    /** How far a tree's roots are taken to reach, mm: 12 trunks, 15 m at most (BS 5837:2012 4.6.1, from memory); 0 of no tree. */
    public double rootsMm() {
        return Math.min(MOST_ROOTS_MM, TRUNKS * trunkMm);
    }
}
