package borderwright.engine.buying.suppliers;

import borderwright.engine.buying.list.OwnedStock;
import borderwright.engine.prices.BoardOffer;
import borderwright.engine.prices.DeliveryOption;
import org.jspecify.annotations.Nullable;

/**
 * Where boards of one type come from: an offer or the shed, exactly one of the two.
 *
 * @param offer what is bought, null when owned
 * @param owned what is owned, null when bought
 * @param supplier number of the supplier, {@link ShoppingCase#SHED} when owned
 */
public record BoardSource(
        @Nullable BoardOffer offer, @Nullable OwnedStock owned, int supplier) {
    boolean isOwned() {
        return offer == null;
    }

    /** For a person: the supplier, or the label of what is owned. */
    String from() {
        return offer != null ? offer.supplier() : owned != null ? owned.label() : "";
    }

    public long lengthTicks() {
        return offer != null ? offer.lengthTicks() : owned != null ? owned.lengthTicks() : 0;
    }

    /** Waste at each end, where a bought board loses {@code bought}. */
    public long trimTicks(long bought) {
        return owned != null ? owned.trimTicks() : bought;
    }

    long packPrice() {
        return offer != null ? offer.packPrice() : 0;
    }

    /** What a pack counts besides its price. */
    long counted() {
        return offer != null ? offer.instead().counted() : 0;
    }

    /** Of one board, rounded down. */
    long pricePerBoard() {
        return offer != null ? offer.packPrice() / offer.pack() : 0;
    }

    int pack() {
        return offer != null ? offer.pack() : 1;
    }

    /** Packs below which none is sold, at least 1. */
    int leastPacks() {
        return offer != null ? (int) Math.min(offer.leastPacks(), Integer.MAX_VALUE) : 1;
    }

    /** Whether it need not travel, or travels that way. */
    boolean isCarriedBy(DeliveryOption way) {
        return offer == null || way.carries(offer);
    }

    int available() {
        return offer != null ? offer.available() : owned != null ? owned.count() : 0;
    }
}
