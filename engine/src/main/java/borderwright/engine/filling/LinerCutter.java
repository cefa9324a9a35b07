package borderwright.engine.filling;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.filling.LinerPlan.Strip;
import borderwright.engine.garden.FillingSpec.LinerSpec;
import borderwright.engine.ground.RollPacking;
import java.util.ArrayList;
import java.util.List;

/**
 * Cuts a liner: one strip round the inside of each planter, from its bottom to where it is stapled under the rim.
 *
 * <p>A roll is slit into as many lanes as strips of the greatest width fit side by side; a wall higher than a roll is wide takes
 * two tiers. A strip longer than a roll is joined with the same overlap as at its ends.
 */
final class LinerCutter {
    /** Overlap of a strip's ends and of two tiers; turned in at the bottom (common practice, no source). */
    private static final double OVERLAP_MM = 150;

    private static final double TURN_IN_MM = 100;

    private final LinerSpec spec;
    private final List<String> names = new ArrayList<>();
    private final List<Long> lengths = new ArrayList<>();
    private final List<Double> widths = new ArrayList<>();

    LinerCutter(LinerSpec spec) {
        this.spec = spec;
    }

    LinerPlan cut(List<Box> boxes) {
        double staples = 0;
        for (Box box : boxes) {
            double high = box.soilDepthMm() + TURN_IN_MM;
            int tiers = high <= spec.widthMm()
                    ? 1
                    : (int) Math.ceil((high - OVERLAP_MM) / (spec.widthMm() - OVERLAP_MM) - 1e-9);
            double width = tiers == 1 ? high : (high + (tiers - 1) * OVERLAP_MM) / tiers;
            for (int i = 0; i < box.inside().size(); i++) {
                double round = box.inside().get(i).perimeterMm();
                // A row under the rim and one at the bottom, and one between for each further tier.
                staples += (tiers + 1) * Math.ceil(round / spec.staplesMm());
                for (int tier = 0; tier < tiers; tier++) {
                    add(box.plan().planters().get(i), width, (long) Math.ceil(round + OVERLAP_MM));
                }
            }
        }
        return plan((int) staples);
    }

    private void add(String planter, double widthMm, long lengthMm) {
        for (long part : RollPacking.joined(lengthMm, (long) spec.lengthMm(), (long) OVERLAP_MM)) {
            names.add(planter);
            widths.add(widthMm);
            lengths.add(part);
        }
    }

    private LinerPlan plan(int staples) {
        double widest = widths.stream().mapToDouble(Double::doubleValue).max().orElse(spec.widthMm());
        int lanes = (int) Math.max(1, Math.floor(spec.widthMm() / widest + 1e-9));
        RollPacking packing = RollPacking.of(lengths, (long) spec.lengthMm());
        List<Strip> strips = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            int lane = packing.rolls().get(i);
            strips.add(new Strip(names.get(i), lengths.get(i), widths.get(i), lane / lanes + 1, lane % lanes + 1));
        }
        int rolls = (packing.count() + lanes - 1) / lanes;
        return new LinerPlan(strips, lanes, rolls, packing.proven(), staples);
    }
}
