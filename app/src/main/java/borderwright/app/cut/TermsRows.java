package borderwright.app.cut;

import borderwright.engine.measure.Length;
import borderwright.engine.prices.DeliveryOption;
import borderwright.engine.prices.SupplierTerms;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The rows of a file of terms: one for each supplier, and one more for each further band of delivery charges. */
final class TermsRows {
    private static final List<String> ONCE =
            List.of("tax_percent", "free_over", "minimum_order", "collection", "collect_up_to_mm");

    private final CutFiles files;
    private final Map<String, Supplier> suppliers = new LinkedHashMap<>();

    TermsRows(CutFiles files) {
        this.files = files;
    }

    private record Band(BigDecimal from, BigDecimal charge) {}

    private record Supplier(
            BigDecimal tax,
            BigDecimal minimum,
            List<Band> bands,
            @Nullable BigDecimal collection,
            @Nullable BigDecimal collectUpTo) {}

    void read(CsvTable.Row row) {
        String name = row.text("supplier");
        Supplier known = suppliers.get(name);
        BigDecimal from = files.money(row, "from_value", BigDecimal.ZERO);
        BigDecimal charge = files.money(row, "delivery", BigDecimal.ZERO);
        if (known != null) {
            if (row.text("from_value").isEmpty()) {
                row.fault(CutFaultMessage.SUPPLIER_TWICE.of(name));
            } else if (from != null && charge != null) {
                addBand(known, new Band(from, charge), row);
            }
            return;
        }
        BigDecimal tax = files.money(row, "tax_percent", BigDecimal.ZERO);
        BigDecimal minimum = files.money(row, "minimum_order", BigDecimal.ZERO);
        BigDecimal freeOver = optional(row, "free_over");
        BigDecimal collection = optional(row, "collection");
        BigDecimal collectUpTo = optional(row, "collect_up_to_mm");
        if (collection == null && collectUpTo != null) {
            row.fault(CutFaultMessage.COLLECTION_WITHOUT_COST.of());
        }
        if (row.isBad() || from == null || charge == null || tax == null || minimum == null) {
            return;
        }
        List<Band> bands = new ArrayList<>();
        if (collection == null || !row.text("delivery").isEmpty()) {
            bands.add(new Band(from, charge));
        }
        if (freeOver != null) {
            bands.add(new Band(freeOver, BigDecimal.ZERO));
        }
        suppliers.put(name, new Supplier(tax, minimum, bands, collection, collectUpTo));
    }

    private @Nullable BigDecimal optional(CsvTable.Row row, String column) {
        return row.text(column).isEmpty() ? null : files.money(row, column, null);
    }

    private static void addBand(Supplier known, Band band, CsvTable.Row row) {
        for (String column : ONCE) {
            if (!row.text(column).isEmpty()) {
                row.fault(CutFaultMessage.NOT_IN_FIRST_ROW.of(column.replace('_', ' '), row.text("supplier")));
                return;
            }
        }
        Band last = known.bands.isEmpty() ? null : known.bands.get(known.bands.size() - 1);
        if (last != null && band.from.compareTo(last.from) <= 0) {
            row.fault(CutFaultMessage.BANDS_NOT_RISING.of(band.from, last.from));
        } else if (last != null && band.charge.compareTo(last.charge) > 0) {
            row.fault(CutFaultMessage.DELIVERY_CHARGE_RISES.of(band.charge, band.from, last.charge));
        } else {
            known.bands.add(band);
        }
    }

    List<SupplierTerms> terms() {
        List<SupplierTerms> terms = new ArrayList<>();
        suppliers.forEach((name, s) -> {
            List<DeliveryOption> ways = new ArrayList<>();
            s.bands.forEach(b -> ways.add(DeliveryOption.delivered(files.minor(b.from), files.minor(b.charge))));
            if (s.collection != null) {
                ways.add(DeliveryOption.fetched(files.minor(s.collection)).upTo(longest(s.collectUpTo)));
            }
            terms.add(new SupplierTerms(name, s.tax, files.minor(s.minimum), ways));
        });
        return terms;
    }

    private static long longest(@Nullable BigDecimal mm) {
        return mm == null
                ? DeliveryOption.ANY_LENGTH
                : mm.multiply(BigDecimal.valueOf(Length.TICKS_PER_MM))
                        .setScale(0, RoundingMode.FLOOR)
                        .longValueExact();
    }

    /** The sum of all charges and of all values that orders must reach. */
    BigDecimal sumOfThresholds() {
        BigDecimal sum = BigDecimal.ZERO;
        for (Supplier s : suppliers.values()) {
            sum = sum.add(s.minimum).add(s.collection == null ? BigDecimal.ZERO : s.collection);
            for (Band band : s.bands) {
                sum = sum.add(band.from).add(band.charge);
            }
        }
        return sum;
    }

    /** Decimals that taxes add to the parts of money that are counted: hundredths, or less with decimals in the rate. */
    int parts() {
        return suppliers.values().stream()
                .filter(s -> s.tax.signum() > 0)
                .mapToInt(s -> 2 + Math.max(0, s.tax.stripTrailingZeros().scale()))
                .max()
                .orElse(0);
    }
}
