package borderwright.engine.garden.resolve;

import borderwright.engine.garden.SupplierSpec;
import borderwright.engine.garden.SupplierSpec.DeliveryBand;
import borderwright.engine.garden.SupplierSpec.PriceUnit;
import borderwright.engine.garden.SupplierSpec.Quote;
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
                included ? Optional.empty() : Optional.of(orZero(g.taxPercent())),
                new SupplierSpec.DeliverySpec(
                        in.or("collection only", g.collectionOnly(), false, "delivered"),
                        in.or("delivery", g.delivery(), BigDecimal.ZERO, "no charge"),
                        Optional.ofNullable(g.freeOver()),
                        g.deliveryBands().isEmpty() ? Optional.empty() : Optional.of(bandsHere(g)),
                        Optional.ofNullable(g.longestBoard()),
                        Optional.ofNullable(g.collection()).map(SupplierResolver::collection)),
                in.or("minimum order", g.minimumOrder(), BigDecimal.ZERO, "none"),
                Optional.ofNullable(g.quoted()),
                g.boards().stream().map(SupplierResolver::board).toList(),
                g.goods().stream().map(SupplierResolver::goods).toList());
    }

    private static SupplierSpec.Collection collection(GivenSupplier.GivenCollection g) {
        return new SupplierSpec.Collection(orZero(g.cost()), Optional.ofNullable(g.longestBoard()));
    }

    /** The bands that hold at the supplier's distance; none where it does not deliver so far. */
    private static List<DeliveryBand> bandsHere(GivenSupplier g) {
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
        BigDecimal holds = nearest;
        return g.deliveryBands().stream()
                .filter(band -> isWithin(band.within(), holds))
                .map(band -> new DeliveryBand(orZero(band.orderValueFrom()), band.charge()))
                .toList();
    }

    private static boolean isWithin(@Nullable BigDecimal within, @Nullable BigDecimal holds) {
        if (within == null || holds == null) {
            return within == null && holds == null;
        }
        return within.compareTo(holds) == 0;
    }

    private static SupplierSpec.BoardPrice board(GivenSupplier.GivenBoardPrice g) {
        List<Length> lengths = new ArrayList<>(g.lengths());
        if (g.length() != null && !lengths.contains(g.length())) {
            lengths.add(0, g.length());
        }
        return new SupplierSpec.BoardPrice(
                g.section(), lengths, quote(g), orOne(g.pack()), orAny(g.available()), orOne(g.priceFromCount()));
    }

    private static Optional<Quote> quote(GivenSupplier.GivenBoardPrice g) {
        if (g.price() != null) {
            return Optional.of(new Quote(g.price(), PriceUnit.BOARD));
        } else if (g.perMetre() != null) {
            return Optional.of(new Quote(g.perMetre(), PriceUnit.METRE));
        } else if (g.perFoot() != null) {
            return Optional.of(new Quote(g.perFoot(), PriceUnit.FOOT));
        }
        return Optional.ofNullable(g.perBoardFoot()).map(amount -> new Quote(amount, PriceUnit.BOARD_FOOT));
    }

    private static SupplierSpec.GoodsPrice goods(GivenSupplier.GivenGoodsPrice g) {
        return new SupplierSpec.GoodsPrice(
                g.item(),
                g.price(),
                g.contains() == null ? BigDecimal.ONE : g.contains(),
                orAny(g.available()),
                orOne(g.priceFromCount()),
                Boolean.TRUE.equals(g.deliveredOnly()));
    }

    private static BigDecimal orZero(@Nullable BigDecimal given) {
        return given == null ? BigDecimal.ZERO : given;
    }

    private static int orOne(@Nullable Integer given) {
        return given == null ? 1 : given;
    }

    private static OptionalInt orAny(@Nullable Integer given) {
        return given == null ? OptionalInt.empty() : OptionalInt.of(given);
    }
}
