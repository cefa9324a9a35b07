package borderwright.engine.stock;

/**
 * What cutting into a board costs in offcuts that could have been kept: what the whole board is worth as an offcut, less
 * what is left of it. It grows with the length used, and an offcut never counts more than its board costs, so that no board
 * is bought to be kept.
 *
 * <p>See docs/decisions/0057.
 */
public final class OffcutValue {
    private final OffcutWorth worth;
    private final long unitTicks;
    /** Length of each board that its whole sizes leave out, less the cut that an offcut takes, ticks. */
    private final long[] beyond;

    private final long grains;
    /** Most that an offcut of each board counts, minor units. */
    private final long[] most;

    /**
     * Of the boards of one section.
     *
     * @param worth what an offcut is worth by its length
     * @param unitTicks ticks in one whole size
     * @param beyond length of each board that its whole sizes leave out, less the cut that an offcut takes, ticks
     * @param grains units of cost in a minor unit
     * @param most most that an offcut of each board counts, minor units
     */
    public OffcutValue(OffcutWorth worth, long unitTicks, long[] beyond, long grains, long[] most) {
        this.worth = worth;
        this.unitTicks = unitTicks;
        this.beyond = beyond.clone();
        this.grains = grains;
        this.most = most.clone();
    }

    /** Worth of what is left over of board {@code j}, in units of cost. */
    long worth(int j, long leftOver) {
        return grains * Math.min(most[j], worth.of(Math.max(0, leftOver * unitTicks + beyond[j])));
    }
}
