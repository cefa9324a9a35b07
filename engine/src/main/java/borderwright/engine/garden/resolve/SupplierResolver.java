package borderwright.engine.garden.resolve;

import borderwright.engine.garden.SupplierSpec;
import borderwright.engine.garden.SupplierSpec.DeliveryBand;
import borderwright.engine.garden.SupplierSpec.PriceUnit;
import borderwright.engine.garden.SupplierSpec.Quote;
import borderwright.engine.garden.given.GivenBoardPrice;
import borderwright.engine.garden.given.GivenSupplier;
import borderwright.engine.garden.given.GivenSupplier.GivenDeliveryBand;
import borderwright.engine.measure.Length;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/** Suppliers with their prices and terms. */
public final class SupplierResolver {
    private SupplierResolver() {}

    /** A supplier alone. */
    public static SupplierSpec supplier(GivenSupplier given) {
        return supplier(given, Ledger.empty());
    }

    static SupplierSpec supplier(GivenSupplier g, Ledger in) {
        boolean included = in.or("tax included", g.taxIncluded(), true, Ledger.PRACTICE);
        return new SupplierSpec(
                g.name(),
                included
                        ? Optional.empty()
                        : Optional.of(in.or("tax percent", g.taxPercent(), BigDecimal.ZERO, "none to add")),
                new SupplierSpec.DeliverySpec(
                        in.or("collection only", g.collectionOnly(), false, "delivered")
                                ? SupplierSpec.Way.FETCHED_ONLY
                                : SupplierSpec.Way.EITHER,
                        in.or("delivery", g.delivery(), BigDecimal.ZERO, "no charge"),
                        Optional.ofNullable(g.freeOver()),
                        g.deliveryBands().isEmpty() ? Optional.empty() : Optional.of(bandsHere(g, in)),
                        Optional.ofNullable(g.longestBoard()),
                        Optional.ofNullable(g.collection())
                                .map(collection -> collection(collection, in.in("collection", collection)))),
                in.or("minimum order", g.minimumOrder(), BigDecimal.ZERO, "none"),
                Optional.ofNullable(g.quoted()),
                GardenResolver.each("boards", g.boards(), SupplierResolver::board, in),
                GardenResolver.each("goods", g.goods(), SupplierResolver::goods, in));
    }

    private static SupplierSpec.Collection collection(GivenSupplier.GivenCollection g, Ledger in) {
        return new SupplierSpec.Collection(
                in.or("cost", g.cost(), BigDecimal.ZERO, "nothing"), Optional.ofNullable(g.longestBoard()));
    }

    /** The bands that hold at the supplier's distance; none where it does not deliver so far. */
    private static List<DeliveryBand> bandsHere(GivenSupplier g, Ledger in) {
        BigDecimal distance = g.distance();
        BigDecimal nearest = null;
        for (GivenDeliveryBand band : g.deliveryBands()) {
            BigDecimal within = band.within();
            if (within != null
                    && distance != null
                    && distance.compareTo(within) <= 0
                    && (nearest == null || within.compareTo(nearest) < 0)) {
                nearest = within;
            }
        }
        List<DeliveryBand> here = new ArrayList<>();
        for (int i = 0; i < g.deliveryBands().size(); i++) {
            GivenDeliveryBand band = g.deliveryBands().get(i);
            BigDecimal from = in.in("delivery bands[" + i + "]", band)
                    .or("order value from", band.orderValueFrom(), BigDecimal.ZERO, "any value");
            if (isWithin(band.within(), nearest)) {
                here.add(new DeliveryBand(from, band.charge()));
            }
        }
        return here;
    }

    private static boolean isWithin(@Nullable BigDecimal within, @Nullable BigDecimal holds) {
        if (within == null || holds == null) {
            return within == null && holds == null;
        }
        return within.compareTo(holds) == 0;
    }

    private static SupplierSpec.BoardPrice board(GivenBoardPrice g, Ledger in) {
        List<Length> lengths = new ArrayList<>(g.lengths());
        if (g.length() != null && !lengths.contains(g.length())) {
            lengths.add(0, g.length());
        }
        return new SupplierSpec.BoardPrice(
                g.section(),
                lengths,
                quote(g),
                in.or("pack", g.pack(), 1, "sold singly"),
                orAny(g.available()),
                in.or("price from count", g.priceFromCount(), 1, "any number"));
    }

    private static Optional<Quote> quote(GivenBoardPrice g) {
        if (g.price() != null) {
            return Optional.of(new Quote(g.price(), PriceUnit.BOARD));
        } else if (g.perMetre() != null) {
            return Optional.of(new Quote(g.perMetre(), PriceUnit.METRE));
        } else if (g.perFoot() != null) {
            return Optional.of(new Quote(g.perFoot(), PriceUnit.FOOT));
        }
        return Optional.ofNullable(g.perBoardFoot()).map(amount -> new Quote(amount, PriceUnit.BOARD_FOOT));
    }

    private static SupplierSpec.GoodsPrice goods(GivenSupplier.GivenGoodsPrice g, Ledger in) {
        return new SupplierSpec.GoodsPrice(
                g.item(),
                g.price(),
                in.or("contains", g.contains(), BigDecimal.ONE, "one"),
                orAny(g.available()),
                in.or("price from count", g.priceFromCount(), 1, "any number"),
                in.or("delivered only", g.deliveredOnly(), false, "may be fetched")
                        ? SupplierSpec.Way.DELIVERED_ONLY
                        : SupplierSpec.Way.EITHER);
    }

    private static OptionalInt orAny(@Nullable Integer given) {
        return given == null ? OptionalInt.empty() : OptionalInt.of(given);
    }
}
