package borderwright.engine.survey.network;

/** Partial derivatives of one observation by the unknowns of its network: one sparse row of the design matrix. */
public final class DesignRow {
    /** An observation touches three points at most, each with a place and a height. */
    private static final int MOST = 9;

    private final Network network;
    private final int[] unknown = new int[MOST];
    private final double[] value = new double[MOST];
    private int count;

    public DesignRow(Network network) {
        this.network = network;
    }

    public DesignRow of(Observation observation, Positions at) {
        count = 0;
        observation.partials(at, this);
        return this;
    }

    /** Adds the derivatives by a point's place; nothing when its place is given. */
    void byPlace(int point, double dx, double dy) {
        int first = network.placeUnknown(point);
        if (first >= 0) {
            add(first, dx);
            add(first + 1, dy);
        }
    }

    /** Adds the derivative by a point's height; nothing when its height is given. */
    void byHeight(int point, double dh) {
        int index = network.heightUnknown(point);
        if (index >= 0) {
            add(index, dh);
        }
    }

    private void add(int index, double d) {
        for (int k = 0; k < count; k++) {
            if (unknown[k] == index) {
                value[k] += d;
                return;
            }
        }
        unknown[count] = index;
        value[count] = d;
        count++;
    }

    int count() {
        return count;
    }

    int unknown(int k) {
        return unknown[k];
    }

    double value(int k) {
        return value[k];
    }
}
