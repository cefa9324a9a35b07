package borderwright.engine.garden.checks;

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
                    "delivery",
                    where + ".free over",
                    "Delivery is free over " + supplier.freeOver().toPlainString()
                            + ", but no delivery charge is given.",
                    "Write the charge as `delivery`, or leave `free over` out."));
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
            found.add(new Problem(
                    "delivery",
                    where + ".delivery bands",
                    "Delivery has bands, and a charge of its own, a free value or `collection only: yes` besides.",
                    "Keep the bands, or leave them out."));
        }
        if (supplier.collection() != null && bands.isEmpty() && supplier.delivery() == null && !fetchedOnly(supplier)) {
            found.add(new Problem(
                    "delivery",
                    where + ".collection",
                    "The order may be fetched, but what delivery costs is not given.",
                    "Write `delivery` or `delivery bands`, or `collection only: yes` where it can only be fetched."));
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
            found.add(new Problem(
                    "delivery",
                    where + ".within",
                    "The band holds within a distance, but how far away the supplier is is not given.",
                    "Write `distance` beside the supplier's name, in the same unit."));
        }
        for (GivenSupplier.GivenDeliveryBand lower : supplier.deliveryBands()) {
            boolean sameReach = same(band.within(), lower.within());
            int order = from(lower).compareTo(from(band));
            if (sameReach && order < 0 && lower.charge().compareTo(band.charge()) < 0) {
                found.add(new Problem(
                        "delivery",
                        where + ".charge",
                        "Delivery must not cost more for more goods: "
                                + band.charge().toPlainString() + " from "
                                + from(band).toPlainString() + " on, but "
                                + lower.charge().toPlainString() + " from "
                                + from(lower).toPlainString() + " on.",
                        "Give the greater value the lesser charge."));
                return;
            }
        }
    }

    private void checkBoard(GivenSupplier.GivenBoardPrice board, String where) {
        sections.require(board.section(), where + ".section", found);
        money(where + ".price", Optional.ofNullable(board.price()));
        List<String> prices = prices(board);
        if (prices.isEmpty()) {
            found.add(new Problem(
                    "price-kind",
                    where,
                    "This board has no price.",
                    "Write `price` for a whole board, or `per metre`, `per foot` or `per board foot`."));
        } else if (prices.size() > 1) {
            found.add(new Problem(
                    "price-kind",
                    where + "." + prices.get(1),
                    "This board has two kinds of price: " + String.join(" and ", prices) + ".",
                    "Keep one of them."));
        } else if (board.price() != null) {
            checkWholeBoard(board, where);
        } else {
            checkByLength(board, prices.get(0), where);
        }
        checkLengths(board, where);
    }

    private static List<String> prices(GivenSupplier.GivenBoardPrice board) {
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

    private void checkWholeBoard(GivenSupplier.GivenBoardPrice board, String where) {
        if (board.length() == null) {
            found.add(new Problem(
                    "price-length",
                    where + ".length",
                    "The price is for a whole board, but its length is missing.",
                    "Write `length: 3.6 m`."));
        }
        if (!board.lengths().isEmpty()) {
            found.add(new Problem(
                    "price-length",
                    where + ".lengths",
                    "The price is for one whole board, so it has one length.",
                    "Write `length`, and a line for each length that has a price of its own."));
        }
    }

    private void checkByLength(GivenSupplier.GivenBoardPrice board, String price, String where) {
        if (board.length() != null) {
            found.add(new Problem(
                    "price-length",
                    where + ".length",
                    "With `" + price + "` the board is sold by length.",
                    "Write the lengths in which it is sold as `lengths: [3.0 m, 3.6 m]`."));
        } else if (board.lengths().isEmpty()) {
            found.add(new Problem(
                    "price-length",
                    where + ".lengths",
                    "With `" + price + "` the lengths in which the board is sold are missing.",
                    "Write `lengths: [3.0 m, 3.6 m]`."));
        }
    }

    private void checkLengths(GivenSupplier.GivenBoardPrice board, String where) {
        for (int i = 0; i < board.lengths().size(); i++) {
            if (board.lengths().get(i).mm() < 50) {
                found.add(new Problem(
                        "out-of-range",
                        where + ".lengths[" + i + "]",
                        "A board is not shorter than 50 mm.",
                        "Write the length in which it is sold, such as `3.6 m`."));
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
            found.add(new Problem(
                    "money",
                    where,
                    amount.get().toPlainString() + " has more decimals than " + currency.getCode() + ", which has "
                            + places + ".",
                    "Round it to what is paid."));
        }
    }
}
