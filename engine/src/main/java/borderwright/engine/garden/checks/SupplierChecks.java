package borderwright.engine.garden.checks;

import borderwright.engine.garden.given.GivenBoardPrice;
import borderwright.engine.garden.given.GivenGarden;
import borderwright.engine.garden.given.GivenSupplier;
import borderwright.engine.problem.Problem;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;

/** Suppliers: is each price of one kind, for a section that is described, in whole minor units of the currency? */
final class SupplierChecks {
    /** No board is shorter; a length below is a slip of the unit. */
    private static final double SHORTEST_MM = 50;

    private final KnownNames sections;
    private final Optional<CurrencyUnit> currency;
    private final List<Problem> found = new ArrayList<>();

    private SupplierChecks(GivenGarden garden, KnownNames sections) {
        this.sections = sections;
        this.currency = CurrencyUnit.registeredCurrencies().stream()
                .filter(unit -> unit.getCode().equals(garden.currency()))
                .findFirst();
    }

    static List<Problem> check(GivenGarden garden, KnownNames sections) {
        SupplierChecks checks = new SupplierChecks(garden, sections);
        List<GivenSupplier> suppliers = garden.suppliers();
        KnownNames.of("supplier", suppliers.stream().map(GivenSupplier::name).toList())
                .reportTwice("suppliers", checks.found);
        for (int i = 0; i < suppliers.size(); i++) {
            checks.checkSupplier(suppliers.get(i), "suppliers[" + i + "]");
        }
        return checks.found;
    }

    private void checkSupplier(GivenSupplier supplier, String where) {
        if (supplier.freeOver() != null && supplier.delivery() == null) {
            found.add(new Problem(
                    where + ".free over", SupplierMessage.FREE_DELIVERY_WITHOUT_CHARGE.of(supplier.freeOver())));
        }
        checkWays(supplier, where);
        money(where + ".delivery", Optional.ofNullable(supplier.delivery()));
        money(where + ".free over", Optional.ofNullable(supplier.freeOver()));
        money(where + ".minimum order", Optional.ofNullable(supplier.minimumOrder()));
        for (int i = 0; i < supplier.boards().size() && found.size() < GardenChecks.MOST_FAULTS; i++) {
            checkBoard(supplier.boards().get(i), where + ".boards[" + i + "]");
        }
        for (int i = 0; i < supplier.goods().size() && found.size() < GardenChecks.MOST_FAULTS; i++) {
            money(
                    where + ".goods[" + i + "].price",
                    Optional.of(supplier.goods().get(i).price()));
        }
    }

    private void checkWays(GivenSupplier supplier, String where) {
        List<GivenSupplier.GivenDeliveryBand> bands = supplier.deliveryBands();
        if (!bands.isEmpty() && (supplier.delivery() != null || supplier.freeOver() != null || fetchedOnly(supplier))) {
            found.add(new Problem(where + ".delivery bands", SupplierMessage.DELIVERY_BANDS_AND_CHARGE.of()));
        }
        if (supplier.collection() != null && bands.isEmpty() && supplier.delivery() == null && !fetchedOnly(supplier)) {
            found.add(new Problem(where + ".collection", SupplierMessage.COLLECTION_WITHOUT_DELIVERY.of()));
        }
        for (int i = 0; i < bands.size() && found.size() < GardenChecks.MOST_FAULTS; i++) {
            checkBand(supplier, i, where + ".delivery bands[" + i + "]");
        }
        GivenSupplier.GivenCollection collection = supplier.collection();
        money(where + ".collection.cost", Optional.ofNullable(collection == null ? null : collection.cost()));
    }

    private void checkBand(GivenSupplier supplier, int i, String where) {
        GivenSupplier.GivenDeliveryBand band = supplier.deliveryBands().get(i);
        money(where + ".order value from", Optional.ofNullable(band.orderValueFrom()));
        money(where + ".charge", Optional.of(band.charge()));
        if (band.within() != null && supplier.distance() == null) {
            found.add(new Problem(where + ".within", SupplierMessage.BAND_WITHOUT_DISTANCE.of()));
        }
        for (GivenSupplier.GivenDeliveryBand lower : supplier.deliveryBands()) {
            boolean sameReach = same(band.within(), lower.within());
            int order = from(lower).compareTo(from(band));
            if (sameReach && order < 0 && lower.charge().compareTo(band.charge()) < 0) {
                found.add(new Problem(
                        where + ".charge",
                        SupplierMessage.DELIVERY_RISES.of(band.charge(), from(band), lower.charge(), from(lower))));
                return;
            }
        }
    }

    private void checkBoard(GivenBoardPrice board, String where) {
        sections.require(board.section(), where + ".section", found);
        money(where + ".price", Optional.ofNullable(board.price()));
        List<String> prices = prices(board);
        if (prices.isEmpty()) {
            found.add(new Problem(where, SupplierMessage.PRICE_MISSING.of()));
        } else if (prices.size() > 1) {
            found.add(new Problem(where + "." + prices.get(1), SupplierMessage.PRICES_OF_TWO_KINDS.of(prices)));
        } else if (board.price() != null) {
            checkWholeBoard(board, where);
        } else {
            checkByLength(board, prices.get(0), where);
        }
        checkLengths(board, where);
    }

    private static List<String> prices(GivenBoardPrice board) {
        Map<String, Boolean> given = new LinkedHashMap<>();
        given.put("price", board.price() != null);
        given.put("per metre", board.perMetre() != null);
        given.put("per foot", board.perFoot() != null);
        given.put("per board foot", board.perBoardFoot() != null);
        return given.entrySet().stream()
                .filter(Map.Entry::getValue)
                .map(Map.Entry::getKey)
                .toList();
    }

    private void checkWholeBoard(GivenBoardPrice board, String where) {
        if (board.length() == null) {
            found.add(new Problem(where + ".length", SupplierMessage.BOARD_LENGTH_MISSING.of()));
        }
        if (!board.lengths().isEmpty()) {
            found.add(new Problem(where + ".lengths", SupplierMessage.WHOLE_BOARD_OF_SEVERAL_LENGTHS.of()));
        }
    }

    private void checkByLength(GivenBoardPrice board, String price, String where) {
        if (board.length() != null) {
            found.add(new Problem(where + ".length", SupplierMessage.BOARD_SOLD_BY_LENGTH.of(price)));
        } else if (board.lengths().isEmpty()) {
            found.add(new Problem(where + ".lengths", SupplierMessage.SOLD_LENGTHS_MISSING.of(price)));
        }
    }

    private void checkLengths(GivenBoardPrice board, String where) {
        for (int i = 0; i < board.lengths().size(); i++) {
            if (board.lengths().get(i).mm() < SHORTEST_MM) {
                found.add(new Problem(
                        where + ".lengths[" + i + "]", SupplierMessage.SOLD_LENGTH_TOO_SHORT.of(SHORTEST_MM)));
            }
        }
    }

    private static boolean fetchedOnly(GivenSupplier supplier) {
        return Boolean.TRUE.equals(supplier.collectionOnly());
    }

    private static boolean same(@Nullable BigDecimal one, @Nullable BigDecimal other) {
        if (one == null || other == null) {
            return one == null && other == null;
        }
        return one.compareTo(other) == 0;
    }

    private static BigDecimal from(GivenSupplier.GivenDeliveryBand band) {
        return band.orderValueFrom() == null ? BigDecimal.ZERO : band.orderValueFrom();
    }

    private void money(String where, Optional<BigDecimal> amount) {
        currency.ifPresent(unit -> checkMinorUnits(where, amount, unit, found));
    }

    /** Reports an amount that is not a whole number of the currency's minor unit. */
    static void checkMinorUnits(String where, Optional<BigDecimal> amount, CurrencyUnit currency, List<Problem> found) {
        int places = currency.getDecimalPlaces();
        if (amount.isPresent() && amount.get().stripTrailingZeros().scale() > places) {
            found.add(new Problem(where, SupplierMessage.MONEY_TOO_FINE.of(amount.get(), currency.getCode(), places)));
        }
    }
}
