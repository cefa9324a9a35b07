package borderwright.engine.prices;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.garden.Garden;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.measure.Length;
import java.util.HashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * What a box costs by its pieces and fixings, to compare ways of building it before there is a basket: each piece by the
 * cheapest price of its section by length, each fixing by the cheapest price of one, tax added.
 *
 * <p>Waste, packs and delivery are left to the basket. What nobody prices is taken at the dearest price by volume that
 * anybody asks for boards, so that it does not look free.
 */
public final class PieceCost implements ToDoubleFunction<Box> {
    /** For a fixing that nobody prices, in units of money (common practice, no source). */
    private static final double UNPRICED_FIXING = 0.10;

    private final Map<String, Double> perMm = new HashMap<>();
    private final Map<String, Double> perFixing = new HashMap<>();

    public PieceCost(Garden garden, PriceLists prices) {
        double minor = StrictMath.pow(10, garden.currency().getDecimalPlaces());
        double dearestPerMm3 = 0;
        for (BoardOffer offer : prices.boards()) {
            double pack = prices.withTax(offer.supplier(), (double) offer.packPrice())
                    + offer.instead().counted();
            double price = pack / minor / offer.pack();
            double lengthMm = new Length(offer.lengthTicks()).mm();
            perMm.merge(offer.section(), price / lengthMm, Math::min);
        }
        for (SectionSpec section : garden.sections()) {
            double mm2 = section.thickness().mm() * section.width().mm();
            dearestPerMm3 = Math.max(dearestPerMm3, perMm.getOrDefault(section.name(), 0.0) / mm2);
        }
        for (SectionSpec section : garden.sections()) {
            perMm.putIfAbsent(
                    section.name(),
                    dearestPerMm3 * section.thickness().mm() * section.width().mm());
        }
        for (GoodsOffer offer : prices.goods()) {
            perFixing.merge(
                    offer.item(),
                    prices.withTax(offer.supplier(), (double) offer.price())
                            / minor
                            / offer.contains().doubleValue(),
                    Math::min);
        }
    }

    @Override
    public double applyAsDouble(Box box) {
        double cost = 0;
        for (Piece piece : box.pieces()) {
            cost += piece.length().mm() * perMm.getOrDefault(piece.section(), 0.0);
        }
        for (Box.Fixing fixing : box.fixings()) {
            cost += fixing.count() * perFixing.getOrDefault(fixing.item(), UNPRICED_FIXING);
        }
        return cost;
    }
}
