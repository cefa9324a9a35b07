package borderwright.engine.layout;

import java.util.List;

/**
 * An unbroken part of a run, from one square end to the next.
 *
 * @param from where it begins
 * @param to where it ends
 * @param cuts the cuts between its planters, in order
 */
record Stretch(Cut from, Cut to, List<Cut> cuts) {
    Stretch {
        cuts = List.copyOf(cuts);
    }

    /** Start, cuts and end: planter {@code i} lies between bound {@code i} and the next. */
    Cut bound(int i) {
        return i == 0 ? from : i <= cuts.size() ? cuts.get(i - 1) : to;
    }

    int planters() {
        return cuts.size() + 1;
    }
}
