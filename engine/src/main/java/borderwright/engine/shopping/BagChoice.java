package borderwright.engine.shopping;

import borderwright.engine.filling.Material;
import borderwright.engine.garden.Garden;
import borderwright.engine.prices.GoodsOffer;
import borderwright.engine.prices.PriceLists;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * One way to buy a material: one supplier's bag or load, and nothing else.
 *
 * @param item the material
 * @param supplier who sells it
 * @param eachM3 how much is in one, m3
 * @param count how many are needed
 * @param cost what they cost as priced, delivery not counted
 * @param eachKg weight of one as moist earth, kg
 * @param loose whether it comes as a load or bulk bag that nobody carries: a quarter of a cubic metre or more
 * @param barrows barrow loads from where it is set down
 */
public record BagChoice(
        String item, String supplier, double eachM3, int count, Money cost, double eachKg, boolean loose, int barrows) {
    /** Moist excavated earth, kg/m3 (appendix with DOI 10.1201/b12981-45). */
    private static final double MOIST_KG_PER_M3 = 1442;

    /** A load or bulk bag of so much nobody carries, m3. */
    public static final double LOOSE_M3 = 0.25;

    private static final double LITRES_PER_M3 = 1000;

    public static List<BagChoice> of(Garden garden, List<Material> materials, PriceLists prices) {
        List<BagChoice> choices = new ArrayList<>();
        for (Material material : materials) {
            for (GoodsOffer offer : prices.goods()) {
                if (material.bought() && offer.item().equals(material.item())) {
                    choices.add(choice(garden, material, offer));
                }
            }
        }
        return choices;
    }

    private static BagChoice choice(Garden garden, Material material, GoodsOffer offer) {
        int count = Bulk.of(material.orderedM3(), garden.units())
                .quantity()
                .divide(offer.contains(), 0, RoundingMode.CEILING)
                .intValueExact();
        double each = offer.contains().doubleValue() * Bulk.unitM3(garden.units());
        return new Builder(material.item(), offer.supplier())
                .each(each)
                .count(count, Money.ofMinor(garden.currency(), Math.multiplyExact(offer.price(), count)))
                .barrows((int) Math.ceil(material.orderedM3()
                                * LITRES_PER_M3
                                / garden.ground().dig().barrowLitres()
                        - 1e-9))
                .build();
    }

    /** A choice, set part by part. */
    static final class Builder {
        private final String item;
        private final String supplier;
        private double eachM3;
        private int count;
        private @Nullable Money cost;
        private int barrows;

        Builder(String item, String supplier) {
            this.item = item;
            this.supplier = supplier;
        }

        Builder each(double m3) {
            eachM3 = m3;
            return this;
        }

        /** How many are needed, and what they cost together. */
        Builder count(int needed, Money together) {
            count = needed;
            cost = together;
            return this;
        }

        Builder barrows(int loads) {
            barrows = loads;
            return this;
        }

        BagChoice build() {
            if (cost == null) {
                throw new IllegalStateException("a choice of " + item + " needs its cost");
            }
            return new BagChoice(
                    item, supplier, eachM3, count, cost, eachM3 * MOIST_KG_PER_M3, eachM3 >= LOOSE_M3, barrows);
        }
    }
}
