package borderwright.engine.layout.run;

import java.util.List;

/**
 * An unbroken part of a run, from one square end to the next.
 *
 * @param from where it begins
 * @param to where it ends
 * @param cuts the cuts between its planters, in order
 */
public record Stretch(SquareCut from, SquareCut to, List<SquareCut> cuts) {
    public Stretch {
        cuts = List.copyOf(cuts);
    }

    /** Start, cuts and end: planter {@code i} lies between bound {@code i} and the next. */
    public SquareCut bound(int i) {
        return i == 0 ? from : i <= cuts.size() ? cuts.get(i - 1) : to;
    }

    public int planters() {
        return cuts.size() + 1;
    }
}
