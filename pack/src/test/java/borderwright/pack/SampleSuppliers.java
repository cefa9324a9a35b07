package borderwright.pack;

import borderwright.engine.garden.SupplierSpec;
import borderwright.engine.measure.Length;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Two invented suppliers: one brings boards, with tax in its prices; the other sells fixings and soil, without. */
final class SampleSuppliers {
    static final List<SupplierSpec> ALL = List.of(alder(), birch());

    private SampleSuppliers() {}

    private static SupplierSpec alder() {
        return new SupplierSpec(
                "Alder",
                Optional.empty(),
                delivery(SupplierSpec.Way.EITHER, "30.00"),
                BigDecimal.ZERO,
                Optional.of(LocalDate.of(2026, 3, 2)),
                List.of(
                        board(SampleGarden.LARCH, 3800, "9.60"),
                        board(SampleGarden.LARCH, 3000, "8.10"),
                        board(SampleGarden.BATTEN, 3000, "4.20")),
                List.of());
    }

    private static SupplierSpec birch() {
        return new SupplierSpec(
                "Birch",
                Optional.of(new BigDecimal("20")),
                delivery(SupplierSpec.Way.FETCHED_ONLY, "0"),
                BigDecimal.ZERO,
                Optional.empty(),
                List.of(),
                List.of(
                        goods("screw 5 x 70", "12.80", 200),
                        goods("screw 5 x 60", "11.20", 200),
                        goods("soil", "55.00", 1)));
    }

    private static SupplierSpec.DeliverySpec delivery(SupplierSpec.Way way, String charge) {
        return new SupplierSpec.DeliverySpec(
                way, new BigDecimal(charge), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static SupplierSpec.BoardPrice board(String section, double mm, String price) {
        return new SupplierSpec.BoardPrice(
                section,
                List.of(Length.ofMm(mm)),
                Optional.of(new SupplierSpec.Quote(new BigDecimal(price), SupplierSpec.PriceUnit.BOARD)),
                1,
                OptionalInt.empty(),
                1);
    }

    private static SupplierSpec.GoodsPrice goods(String item, String price, int contains) {
        return new SupplierSpec.GoodsPrice(
                item,
                new BigDecimal(price),
                BigDecimal.valueOf(contains),
                OptionalInt.empty(),
                1,
                SupplierSpec.Way.EITHER);
    }
}
