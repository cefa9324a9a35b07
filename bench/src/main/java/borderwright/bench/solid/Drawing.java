package borderwright.bench.solid;

/** How a box is drawn, from the plan's own frame to what is built. */
enum Drawing {
    /**
     * All as the plan's frame has it: parts meet on middle lines, all screws of a joint stand at half the height of its
     * board, boards cannot twist; the wood is so stiff across the grain and in shear that neither counts.
     */
    AS_FRAME,
    /** The same, and the wood as soft across the grain and in shear as it is. */
    AS_HINGES,
    /** Each piece where it lies and each screw where it is driven; boards may twist about their middle lines. */
    AS_BUILT;

    private static final double STIFF = 10;

    boolean isHinged() {
        return this != AS_BUILT;
    }

    /** Factor on the stiffness across the grain and in shear. */
    double acrossGrain() {
        return this == AS_FRAME ? STIFF : 1;
    }
}
