package borderwright.engine.floors;

import borderwright.engine.buildup.BoxBuilder;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.BuildMeans;
import borderwright.engine.buildup.parts.CutSteps;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.filling.SoilVolume;
import borderwright.engine.garden.FillingSpec.MixPart;
import borderwright.engine.garden.Garden;
import borderwright.engine.layout.plan.BoxShape;
import borderwright.engine.measure.Length;
import borderwright.engine.prices.BoardLimits;
import borderwright.engine.prices.BoardOffer;
import borderwright.engine.prices.GoodsOffer;
import borderwright.engine.prices.PriceLists;
import borderwright.engine.shopping.Bulk;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.TreeSet;
import org.joda.money.Money;

/**
 * The height of a false floor as a lever on money: soil saved against slats, bearers and legs.
 *
 * <p>Boxes that are alike are built once. Each is built up anew with the floor at the height in question, so slats and legs are
 * those that would be cut. Prices are the cheapest in the lists, tax added, for each m3 and each metre; the planner then
 * has the best of them planned whole. Nothing is compared where a price is missing.
 */
public final class FloorOptionFinder {
    private static final double[] HEIGHTS_MM = {0, 150, 200, 250, 300, 400, 500, 600};

    /** Less soil than this grows no more than cress and salad leaves (common practice, no source). */
    private static final double LEAST_SOIL_MM = 150;

    private static final double MM_PER_M = 1000;

    private final Garden garden;
    private final PriceLists prices;
    private final BuildMeans means;
    private final Map<String, Double> perMetre = new TreeMap<>();

    private FloorOptionFinder(Garden garden, PriceLists prices) {
        this.garden = garden;
        this.prices = prices;
        this.means = new BuildMeans(
                garden.sections(),
                garden.saws(),
                BoardLimits.longestPieceMm(garden, prices.boards()),
                garden.units(),
                new CutSteps(garden.cutting().lengthsTo()));
        for (BoardOffer offer : prices.boards()) {
            double metres = new Length(offer.lengthTicks()).mm() / MM_PER_M * offer.pack();
            perMetre.merge(
                    offer.section(), prices.withTax(offer.supplier(), (double) offer.packPrice()) / metres, Math::min);
        }
    }

    /** One row for each height that leaves soil enough in every box; empty where prices are missing. */
    public static List<FloorOption> of(Garden garden, List<Box> boxes, PriceLists prices) {
        FloorOptionFinder choices = new FloorOptionFinder(garden, prices);
        OptionalDouble soil = choices.soilPerM3();
        return soil.isEmpty() ? List.of() : choices.rows(boxes, soil.getAsDouble());
    }

    private List<FloorOption> rows(List<Box> boxes, double soilPerM3) {
        Map<BoxShape, List<Box>> alike = new LinkedHashMap<>();
        boxes.forEach(
                box -> alike.computeIfAbsent(shape(box), k -> new ArrayList<>()).add(box));
        TreeSet<Double> heights = new TreeSet<>();
        for (double height : HEIGHTS_MM) {
            heights.add(height);
        }
        boxes.forEach(box -> heights.add(box.plan().platformMm()));
        List<FloorOption> rows = new ArrayList<>();
        for (double height : heights) {
            boolean given = boxes.stream().allMatch(b -> b.plan().platformMm() == height);
            Row row = new Row(height);
            if (alike.values().stream().allMatch(group -> row.add(group.get(0), group.size()))
                    && (given || row.leastDepthMm >= LEAST_SOIL_MM)) {
                rows.add(row.summedUp(new FloorOption.Builder(height, given), soilPerM3)
                        .build());
            }
        }
        return rows;
    }

    /** The shape of a box, its floor aside: that is what is tried. */
    private static BoxShape shape(Box box) {
        return BoxShape.of(box.plan().withPlatform(0));
    }

    /** All boxes at one height, summed up. */
    private final class Row {
        private final double heightMm;
        private double leastDepthMm = Double.POSITIVE_INFINITY;
        private double orderedM3;
        private double filledM3;
        private double metres;
        private double minor;

        Row(double heightMm) {
            this.heightMm = heightMm;
        }

        /** Whether such a floor can be built, and its sections have prices. */
        boolean add(Box box, int times) {
            Box built = BoxBuilder.build(box.plan().withPlatform(heightMm), garden.build(), means);
            if (heightMm > 0 && floor(built).isEmpty()) {
                return false;
            }
            for (SoilVolume planter : SoilVolume.of(built, garden.soil(), 0)) {
                orderedM3 += times * planter.orderedM3();
                filledM3 += times * planter.filledM3();
                leastDepthMm = Math.min(leastDepthMm, planter.depthMm());
            }
            for (Piece piece : floor(built)) {
                Double price = perMetre.get(piece.section());
                if (price == null) {
                    return false;
                }
                double length = piece.length().mm() / MM_PER_M;
                metres += times * length;
                minor += times * length * price;
            }
            return true;
        }

        private static List<Piece> floor(Box box) {
            return box.pieces().stream()
                    .filter(p ->
                            p.role() == Piece.Role.SLAT || p.role() == Piece.Role.BEARER || p.role() == Piece.Role.LEG)
                    .toList();
        }

        FloorOption.Builder summedUp(FloorOption.Builder option, double soilPerM3) {
            return option.soil(leastDepthMm, orderedM3, filledM3 * garden.soil().soakedKgPerM3())
                    .costs(money(orderedM3 * soilPerM3), metres, money(minor));
        }

        private Money money(double minorUnits) {
            return Money.ofMinor(garden.currency(), Math.round(minorUnits));
        }
    }

    /** Cheapest price of a cubic metre of the mix, minor units with tax. */
    private OptionalDouble soilPerM3() {
        List<MixPart> parts = garden.filling().mix();
        double all = parts.stream().mapToDouble(MixPart::parts).sum();
        double sum = 0;
        for (MixPart part : parts) {
            OptionalDouble cheapest = prices.goods().stream()
                    .filter(offer -> offer.item().equals(part.item()))
                    .mapToDouble(offer -> perM3(offer))
                    .min();
            if (cheapest.isEmpty()) {
                return given();
            }
            sum += cheapest.getAsDouble() * part.parts() / all;
        }
        return OptionalDouble.of(sum);
    }

    private OptionalDouble given() {
        Optional<BigDecimal> given = garden.soil().perCubicMetre();
        return given.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(given.get()
                        .movePointRight(garden.currency().getDecimalPlaces())
                        .setScale(0, RoundingMode.HALF_UP)
                        .doubleValue());
    }

    private double perM3(GoodsOffer offer) {
        return prices.withTax(offer.supplier(), (double) offer.price())
                / (offer.contains().doubleValue() * Bulk.unitM3(garden.units()));
    }
}
