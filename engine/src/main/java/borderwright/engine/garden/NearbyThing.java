package borderwright.engine.garden;

import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.garden.vocabulary.NearbyKind;
import borderwright.engine.measure.Length;
import org.jspecify.annotations.Nullable;

/** Something near the planters that has to be kept clear of. */
public record NearbyThing(
        NearbyKind what,

        Names edge,

        Length along,

        @Nullable Length to,

        @Nullable Length into,

        @Nullable Length endInto,

        @Nullable Length trunk,

        @Nullable Length girth,

        @Nullable Length depth,

        @Nullable Length bottom) {

    private static final double TRUNKS = 12;
    private static final double MOST_ROOTS_MM = 15_000;

    /** A tree's trunk across, mm; 0 where it is not known. */
    public double trunkMm() {
        return trunk != null ? trunk.mm() : girth != null ? girth.mm() / Math.PI : 0;
    }

    /** How far a tree's roots are taken to reach, mm: 12 trunks, 15 m at most (BS 5837:2012 4.6.1, from memory); 0 of no tree. */
    public double rootsMm() {
        return Math.min(MOST_ROOTS_MM, TRUNKS * trunkMm());
    }

    /** Along the edge where it ends, mm. */
    public double toMm() {
        return to == null ? along.mm() : to.mm();
    }

    /** Into the border where it begins, mm. */
    public double intoMm() {
        return into == null ? 0 : into.mm();
    }

    /** Into the border where it ends, mm. */
    public double endIntoMm() {
        return endInto == null ? intoMm() : endInto.mm();
    }
}
