package borderwright.engine.survey.shape;

import borderwright.engine.survey.network.Positions;

/** A partly placed network: some points have a place, and keeping them there breaks clues at a cost. */
final class PartialPlacement {
    private final Positions at;
    private final boolean[] placed;
    private final double cost;

    PartialPlacement(Positions at, boolean[] placed, double cost) {
        this.at = at;
        this.placed = placed;
        this.cost = cost;
    }

    Positions at() {
        return at;
    }

    /** Which points have a place; not to be changed. */
    boolean[] placed() {
        return placed;
    }

    double cost() {
        return cost;
    }
}
