package borderwright.engine.strength.frame;

/** A displacement along, or a rotation about, one of the axes. */
public enum Freedom {
    UX(0),
    UY(1),
    UZ(2),
    RX(3),
    RY(4),
    RZ(5);

    static final int COUNT = 6;

    private final int index;

    Freedom(int index) {
        this.index = index;
    }

    /** Its place among the six of a node: translations first. */
    int index() {
        return index;
    }
}
