package borderwright.engine.prices;

/**
 * A board that can be bought, resolved from a price list.
 *
 * @param supplier who sells it
 * @param section its section
 * @param lengthTicks its length, ticks
 * @param packPrice price of one pack as priced, minor units
 * @param pack boards in a pack, 1 when sold singly
 * @param available boards to be had, {@link Integer#MAX_VALUE} for as many as needed
 * @param least boards from which the price holds for all of them, 1 for any number
 * @param instead where another section may stand in for {@code section}: which it is and what that counts
 */
public record BoardOffer(
        String supplier,
        String section,
        long lengthTicks,
        long packPrice,
        int pack,
        int available,
        int least,
        Instead instead) {
    public BoardOffer {
        if (lengthTicks <= 0 || packPrice < 0 || pack < 1 || available < 0 || least < 1 || instead.counted < 0) {
            throw new IllegalArgumentException("a board offer needs a length, a price of 0 or more and a pack, got "
                    + lengthTicks + ", " + packPrice + ", " + pack + ", " + available);
        }
    }

    /**
     * A section that stands in for the one that is wanted.
     *
     * @param section what is really bought; empty for the section itself
     * @param counted what the difference of a pack is worth, minor units, at least 0: weighed against prices, paid to nobody
     */
    public record Instead(String section, long counted) {
        /** The section itself. */
        public static final Instead NOTHING = new Instead("", 0);
    }

    /** A price for any number. */
    public BoardOffer(String supplier, String section, long lengthTicks, long packPrice, int pack, int available) {
        this(supplier, section, lengthTicks, packPrice, pack, available, 1, Instead.NOTHING);
    }

    /** The section that is really bought. */
    public String sold() {
        return instead.section.isEmpty() ? section : instead.section;
    }

    /** Whether the price holds only from more than one pack on. */
    public boolean hasBreak() {
        return least > pack;
    }

    /** Packs from which the price holds. */
    public long leastPacks() {
        return (least + (long) pack - 1) / pack;
    }

    public BoardOffer withPrice(long price) {
        return new BoardOffer(supplier, section, lengthTicks, price, pack, available, least, instead);
    }
}
