package borderwright.engine.buying.why;

import borderwright.engine.prices.BoardOffer;
import borderwright.engine.prices.DeliveryOption;
import borderwright.engine.prices.SupplierTerms;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Why a basket is the cheapest, in figures: what each thing would have to cost to be bought instead, and what this basket
 * pays for besides wood. Money in whole minor units.
 *
 * @param boards boards that are not bought, each with the price at which it would be; the nearest to its price first
 * @param suppliers suppliers that nothing is bought from, each with the cut in all its prices that would win it a place
 * @param dearer lengths that are bought although another length of the section costs less per metre
 * @param deliveries delivery charges that are paid
 * @param spares boards that are bought and not cut
 * @param savedByNesting what cutting slanted ends into each other saves
 */
public record Explanation(
        List<BoardWins> boards,
        List<SupplierWins> suppliers,
        List<DearerLength> dearer,
        List<Delivery> deliveries,
        List<Spare> spares,
        long savedByNesting) {
    /** Nothing to explain. */
    public static final Explanation NONE = new Explanation(List.of(), List.of(), List.of(), List.of(), List.of(), 0);

    public Explanation {
        boards = List.copyOf(boards);
        suppliers = List.copyOf(suppliers);
        dearer = List.copyOf(dearer);
        deliveries = List.copyOf(deliveries);
        spares = List.copyOf(spares);
    }

    /**
     * A board that is not bought at its price.
     *
     * @param offer the board as it is priced
     * @param atPrice greatest price of a pack, as priced, at which a basket that buys it was found to cost less
     * @param sharp whether nothing is cheaper at one minor unit more
     */
    public record BoardWins(BoardOffer offer, long atPrice, boolean sharp) {}

    /**
     * A supplier that nothing is bought from.
     *
     * @param supplier its name
     * @param atThousandths greatest share of all its prices, in thousandths, at which a basket that buys from it was found
     *     to cost less; delivery stays as it is
     * @param sharp whether nothing is cheaper at one thousandth more
     */
    public record SupplierWins(String supplier, int atThousandths, boolean sharp) {}

    /**
     * A length that costs more per metre than another of its section and is bought all the same.
     *
     * @param offer the board that is bought
     * @param cheaper the board of that section with the least price per metre, tax added
     * @param possible whether the list can be served without it
     * @param moreWithout how much more the list costs at least when it is not to be had
     * @param offcutTicks length of that section that this basket buys beyond its pieces
     * @param offcutWithoutTicks the same for the best basket without it
     */
    public record DearerLength(
            BoardOffer offer,
            BoardOffer cheaper,
            boolean possible,
            long moreWithout,
            long offcutTicks,
            long offcutWithoutTicks) {}

    /**
     * How an order gets home, where that costs anything or there is another way.
     *
     * @param supplier whose order it is
     * @param fetched whether the buyer fetches it
     * @param charge for delivery as priced, or for fetching it
     * @param shortOfNext goods that are missing for cheaper delivery, as priced; {@link SupplierTerms#NEVER} where there is none
     * @param nextCharge what delivery costs then, as priced; 0 when it is free
     * @param other the cheapest way of the other kind at this value of goods, null where there is none
     * @param longestTicks longest board that travels this way, ticks; {@link DeliveryOption#ANY_LENGTH} for no limit
     */
    public record Delivery(
            String supplier,
            boolean fetched,
            long charge,
            long shortOfNext,
            long nextCharge,
            @Nullable DeliveryOption other,
            long longestTicks) {}

    /**
     * Boards that are bought to fill a pack or to reach the threshold of an order, and not cut.
     *
     * @param offer the board
     * @param boards how many
     * @param value what they cost, as priced, rounded down
     */
    public record Spare(BoardOffer offer, long boards, long value) {}

    /** The same with what nesting saves, minor units. */
    public Explanation withNesting(long saved) {
        return new Explanation(boards, suppliers, dearer, deliveries, spares, saved);
    }
}
