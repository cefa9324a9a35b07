package borderwright.engine.filling;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.garden.FillingSpec;
import borderwright.engine.garden.Garden;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.vocabulary.ground.GroundSurface;
import borderwright.engine.geometry.Ring;
import borderwright.engine.ground.GroundPlan;
import borderwright.engine.ground.GroundPlan.StandsOver;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** From boxes as built to what fills and covers them: the one question that this stage answers. */
public final class Filling {
    /** What one person lifts, kg (common practice: a filter, not a safe limit). */
    public static final double LIFT_KG = 25;

    /** Share of a roof's limit that is used at most (common practice: a tenth in hand). */
    private static final double ROOF_SHARE = 0.9;

    private static final double TURN_UP_MM = 100;
    private static final double MM2_PER_M2 = 1e6;

    private final Garden garden;
    private final FillingSpec wish;
    private final LengthFormat format;
    private final Map<String, SectionSpec> sections = new TreeMap<>();

    private Filling(Garden garden) {
        this.garden = garden;
        this.wish = garden.filling();
        this.format = new LengthFormat(garden.units());
        garden.sections().forEach(s -> sections.put(s.name(), s));
    }

    /**
     * The filling of some boxes.
     *
     * @param garden what was said of soil, filling and sections
     * @param boxes as built up
     * @param ground made ready for the same boxes, in the same order
     */
    public static FillPlan plan(Garden garden, List<Box> boxes, GroundPlan ground) {
        return new Filling(garden).plan(boxes, ground);
    }

    private FillPlan plan(List<Box> boxes, GroundPlan ground) {
        List<SoilVolume> planters = new ArrayList<>();
        for (int i = 0; i < boxes.size(); i++) {
            double left = boxes.get(i).plan().platformMm() > 0
                    ? 0
                    : ground.boxes().get(i).leftM3();
            planters.addAll(SoilVolume.of(boxes.get(i), garden.soil(), left));
        }
        List<Material> materials =
                new Layers(garden.soil(), wish).of(planters, ground.spoil().looseM3());
        double filled = planters.stream().mapToDouble(SoilVolume::filledM3).sum();
        double growing = planters.stream().mapToDouble(SoilVolume::growingM2).sum();
        List<BoxWeight> weights =
                Weights.of(boxes, planters, sections, garden.soil().soakedKgPerM3(), LIFT_KG);
        List<String> notes = new ArrayList<>();
        List<Problem> unmet = new ArrayList<>();
        roof(weights, notes, unmet);
        heavy(weights, notes);
        standsOver(weights, ground.standsOver(), notes);
        return new FillPlan(
                planters,
                materials,
                Settlement.of(garden.soil().settlement(), filled, growing),
                floorFabricM2(boxes),
                wish.liner().map(liner -> new LinerCutter(liner).cut(boxes)),
                new Brushwork(sections, wish.finish()).of(boxes),
                weights,
                notes,
                unmet);
    }

    private void roof(List<BoxWeight> weights, List<String> notes, List<Problem> unmet) {
        if (garden.ground().surface() != GroundSurface.ROOF) {
            return;
        }
        OptionalDouble limit = garden.ground().loadLimit();
        BoxWeight worst = weights.stream()
                .max((a, b) -> Double.compare(a.kgPerM2(), b.kgPerM2()))
                .orElseThrow();
        AreaLoad load = AreaLoad.in(garden.units());
        double reached = load.ofKgPerM2(worst.kgPerM2());
        String said = "Filled and soaked, " + worst.box() + " loads the roof with " + load.words(reached)
                + ", people and snow not counted";
        if (limit.isEmpty()) {
            unmet.add(new Problem(
                    "roof-limit-missing",
                    "ground.load limit",
                    said + "; what the roof may carry is not said.",
                    "Get its limit in writing from the building's engineer and say `load limit`."));
        } else if (reached > ROOF_SHARE * limit.getAsDouble()) {
            unmet.add(new Problem(
                    "roof-overloaded",
                    "ground.load limit",
                    said + "; its limit is " + load.words(limit.getAsDouble()) + ", of which a tenth is kept in hand.",
                    "Wish a platform, a lighter filling or lower walls; the building's engineer decides."));
        } else {
            notes.add(said + ", under nine tenths of its limit of " + load.words(limit.getAsDouble()) + ".");
        }
    }

    private void standsOver(List<BoxWeight> weights, List<StandsOver> over, List<String> notes) {
        AreaLoad load = AreaLoad.in(garden.units());
        for (StandsOver one : over) {
            double kgPerM2 = weights.stream()
                    .filter(weight -> weight.box().equals(one.box()))
                    .mapToDouble(BoxWeight::kgPerM2)
                    .findFirst()
                    .orElseThrow();
            notes.add("Not shown to hold: " + one.box() + " stands over "
                    + (one.lengthMm() > 0 ? format.site(one.lengthMm()) + " of " : "") + one.service()
                    + " and presses on the ground with " + load.words(load.ofKgPerM2(kgPerM2))
                    + ", filled and soaked; its owner may have to dig it up. Ask before you build.");
        }
    }

    private void heavy(List<BoxWeight> weights, List<String> notes) {
        List<BoxWeight> two =
                weights.stream().filter(w -> w.heaviestKg() > LIFT_KG).toList();
        if (!two.isEmpty()) {
            BoxWeight worst = two.get(0);
            notes.add("Piece " + worst.heaviestPiece() + " weighs " + format.weight(worst.heaviestKg())
                    + ": two people, over " + format.weight(LIFT_KG) + ".");
        }
        int inPlace = (int) weights.stream().filter(w -> w.carriers() > 2).count();
        if (inPlace > 0) {
            double heaviest =
                    weights.stream().mapToDouble(BoxWeight::woodKg).max().orElse(0);
            notes.add((inPlace == weights.size() ? "Every box" : inPlace + " of " + weights.size() + " boxes")
                    + " would take three people or more to carry, the heaviest " + format.weight(heaviest)
                    + " empty: build in place.");
        }
    }

    private static double floorFabricM2(List<Box> boxes) {
        double sum = 0;
        for (Box box : boxes) {
            if (box.plan().platformMm() > 0) {
                for (Ring inside : box.inside()) {
                    sum += (inside.areaMm2() + inside.perimeterMm() * TURN_UP_MM) / MM2_PER_M2;
                }
            }
        }
        return sum;
    }
}
