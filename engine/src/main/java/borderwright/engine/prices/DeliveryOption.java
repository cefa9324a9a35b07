package borderwright.engine.prices;

/**
 * A way of getting an order home.
 *
 * <p>Delivery becomes free at the {@code fromValue} of a delivered option whose {@code charge} is 0: once the goods as priced,
 * before tax is added, come to that value. The options of a supplier stand in {@link SupplierTerms}, read from the garden
 * document by {@link PriceLists}.
 *
 * <p>See docs/decisions/0058.
 *
 * @param fetched whether the buyer fetches it; else the supplier delivers
 * @param fromValue least value of goods as priced, minor units, at least 0
 * @param charge what it costs, minor units, at least 0: a delivery charge as priced, taxed as goods are, or the buyer's own
 *     cost of a journey, not taxed
 * @param longestTicks longest board that travels, ticks; {@link #ANY_LENGTH} for no limit
 */
public record DeliveryOption(boolean fetched, long fromValue, long charge, long longestTicks) {
    public static final long ANY_LENGTH = Long.MAX_VALUE;

    public DeliveryOption {
        if (fromValue < 0 || charge < 0 || longestTicks < 0) {
            throw new IllegalArgumentException("value, charge and length must not be negative: " + fromValue + ", "
                    + charge + ", " + longestTicks);
        }
    }

    /** Delivery of boards of any length, for goods of a value or more. */
    public static DeliveryOption delivered(long fromValue, long charge) {
        return new DeliveryOption(false, fromValue, charge, ANY_LENGTH);
    }

    /** A journey of the buyer's own for boards of any length. */
    public static DeliveryOption fetched(long charge) {
        return new DeliveryOption(true, 0, charge, ANY_LENGTH);
    }

    /** The same for boards up to a length only, ticks. */
    public DeliveryOption upTo(long longest) {
        return new DeliveryOption(fetched, fromValue, charge, longest);
    }

    public boolean carries(BoardOffer offer) {
        return offer.lengthTicks() <= longestTicks;
    }

    public boolean carries(GoodsOffer offer) {
        return !fetched || !offer.deliveredOnly();
    }
}
