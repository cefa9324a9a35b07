package borderwright.engine.garden;

import borderwright.engine.problem.Problem;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/** Suppliers: is each price of one kind, for a section that is described, in whole minor units of the currency? */
final class SupplierChecks {
    private final KnownNames sections;
    private final Optional<CurrencyUnit> currency;
    private final List<Problem> found = new ArrayList<>();

    private SupplierChecks(Garden garden, KnownNames sections) {
        this.sections = sections;
        this.currency = CurrencyUnit.registeredCurrencies().stream()
                .filter(unit -> unit.getCode().equals(garden.currency()))
                .findFirst();
    }

    static List<Problem> check(Garden garden, KnownNames sections) {
        SupplierChecks checks = new SupplierChecks(garden, sections);
        List<SupplierNote> suppliers = garden.suppliers();
        KnownNames.of("supplier", suppliers.stream().map(SupplierNote::name).toList())
                .reportTwice("suppliers", checks.found);
        for (int i = 0; i < suppliers.size(); i++) {
            checks.checkSupplier(suppliers.get(i), "suppliers[" + i + "]");
        }
        return checks.found;
    }

    private void checkSupplier(SupplierNote supplier, String where) {
        if (supplier.freeOver() != null && supplier.delivery() == null) {
            found.add(new Problem(
                    "delivery",
                    where + ".free over",
                    "Delivery is free over " + supplier.freeOver().toPlainString()
                            + ", but no delivery charge is given.",
                    "Write the charge as `delivery`, or leave `free over` out."));
        }
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

    private void checkBoard(SupplierNote.BoardPrice board, String where) {
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

    private static List<String> prices(SupplierNote.BoardPrice board) {
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

    private void checkWholeBoard(SupplierNote.BoardPrice board, String where) {
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

    private void checkByLength(SupplierNote.BoardPrice board, String price, String where) {
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

    private void checkLengths(SupplierNote.BoardPrice board, String where) {
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
