package borderwright.engine.prices;

/**
 * A board that can be bought, resolved from a price list.
 *
 * @param supplier who sells it
 * @param section its section
 * @param lengthTicks its length, ticks
 * @param packPrice price of one pack as priced, minor units
 * @param supply in which numbers it is sold
 * @param instead where another section may stand in for {@code section}: which it is and what that counts
 */
public record BoardOffer(
        String supplier, String section, long lengthTicks, long packPrice, Supply supply, Instead instead) {
    public BoardOffer {
        if (lengthTicks <= 0 || packPrice < 0 || instead.counted < 0) {
            throw new IllegalArgumentException(
                    "a board offer needs a length and a price of 0 or more, got " + lengthTicks + ", " + packPrice);
        }
    }

    /**
     * In which numbers a board is sold.
     *
     * @param pack boards in a pack, 1 when sold singly
     * @param available boards to be had, {@link Integer#MAX_VALUE} for as many as needed
     * @param least boards from which the price holds for all of them, 1 for any number
     */
    public record Supply(int pack, int available, int least) {
        public Supply {
            if (pack < 1 || available < 0 || least < 1) {
                throw new IllegalArgumentException("boards come in packs of 1 or more, got " + pack + ", " + available
                        + " to be had, from " + least + " on");
            }
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
        this(supplier, section, lengthTicks, packPrice, new Supply(pack, available, 1), Instead.NOTHING);
    }

    /** Boards in a pack, 1 when sold singly. */
    public int pack() {
        return supply.pack;
    }

    /** Boards to be had, {@link Integer#MAX_VALUE} for as many as needed. */
    public int available() {
        return supply.available;
    }

    /** Boards from which the price holds for all of them, 1 for any number. */
    public int least() {
        return supply.least;
    }

    /** The section that is really bought. */
    public String sold() {
        return instead.section.isEmpty() ? section : instead.section;
    }

    /** Whether the price holds only from more than one pack on. */
    public boolean hasBreak() {
        return least() > pack();
    }

    /** Packs from which the price holds. */
    public long leastPacks() {
        return (least() + (long) pack() - 1) / pack();
    }

    public BoardOffer withPrice(long price) {
        return new BoardOffer(supplier, section, lengthTicks, price, supply, instead);
    }

    /** The same where its price holds for so many boards or more. */
    public BoardOffer soldFrom(int boards) {
        return new BoardOffer(
                supplier, section, lengthTicks, packPrice, new Supply(pack(), available(), boards), instead);
    }

    /**
     * The same board where it stands in for another section.
     *
     * @param wanted the section it stands in for
     * @param counted what the difference of a pack is worth, minor units, at least 0
     */
    public BoardOffer inPlaceOf(String wanted, long counted) {
        return new BoardOffer(supplier, wanted, lengthTicks, packPrice, supply, new Instead(section, counted));
    }
}
