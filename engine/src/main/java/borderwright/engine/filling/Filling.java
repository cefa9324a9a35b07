package borderwright.engine.filling;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.filling.FillMessage.Shape;
import borderwright.engine.garden.FillingSpec;
import borderwright.engine.garden.Garden;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.vocabulary.ground.GroundSurface;
import borderwright.engine.geometry.Ring;
import borderwright.engine.ground.GroundPlan;
import borderwright.engine.ground.GroundPlan.StandsOver;
import borderwright.engine.message.Message;
import borderwright.engine.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** From boxes as built to what fills and covers them: the one question that this stage answers. */
public final class Filling {
    /** What one person lifts, kg (common practice: a screening figure, not a safe limit). */
    public static final double LIFT_KG = 25;

    /** Share of a roof's limit that is used at most (common practice: a tenth in hand). */
    private static final double ROOF_SHARE = 0.9;

    private static final double TURN_UP_MM = 100;
    private static final double MM2_PER_M2 = 1e6;

    private final Garden garden;
    private final FillingSpec spec;
    private final Map<String, SectionSpec> sections = new TreeMap<>();

    private Filling(Garden garden) {
        this.garden = garden;
        this.spec = garden.filling();
        garden.sections().forEach(s -> sections.put(s.name(), s));
    }

    /**
     * The filling of some boxes.
     *
     * @param garden soil, filling and sections
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
                new Layers(garden.soil(), spec).of(planters, ground.spoil().looseM3());
        double filled = planters.stream().mapToDouble(SoilVolume::filledM3).sum();
        double growing = planters.stream().mapToDouble(SoilVolume::growingM2).sum();
        List<BoxWeight> weights =
                Weights.of(boxes, planters, sections, garden.soil().soakedKgPerM3(), LIFT_KG);
        List<Message> notes = new ArrayList<>();
        List<Problem> unmet = new ArrayList<>();
        roof(weights, notes, unmet);
        heavy(weights, notes);
        standsOver(weights, ground.standsOver(), notes);
        return new FillPlan.Builder(
                        planters,
                        materials,
                        Settlement.of(garden.soil().settlement(), garden.soil().loose(filled), growing),
                        new Brushwork(sections, spec.finish()).of(boxes))
                .floorFabric(floorFabricM2(boxes))
                .liner(spec.liner().map(liner -> new LinerCutter(liner).cut(boxes)))
                .weights(weights)
                .notes(notes, unmet)
                .build();
    }

    private void roof(List<BoxWeight> weights, List<Message> notes, List<Problem> unmet) {
        if (garden.ground().surface() != GroundSurface.ROOF) {
            return;
        }
        OptionalDouble limit = garden.ground().loadLimit();
        BoxWeight worst = weights.stream()
                .max((a, b) -> Double.compare(a.kgPerM2(), b.kgPerM2()))
                .orElseThrow();
        double reached = worst.kgPerM2();
        if (limit.isEmpty()) {
            unmet.add(new Problem("ground.load limit", FillMessage.ROOF_LIMIT_MISSING.of(worst.box(), reached)));
            return;
        }
        double borne = AreaLoad.in(garden.units()).toKgPerM2(limit.getAsDouble());
        if (reached > ROOF_SHARE * borne) {
            unmet.add(new Problem("ground.load limit", FillMessage.ROOF_OVERLOADED.of(worst.box(), reached, borne)));
        } else {
            notes.add(FillMessage.ROOF_BEARS.of(worst.box(), reached, borne));
        }
    }

    private static void standsOver(List<BoxWeight> weights, List<StandsOver> over, List<Message> notes) {
        for (StandsOver one : over) {
            double kgPerM2 = weights.stream()
                    .filter(weight -> weight.box().equals(one.box()))
                    .mapToDouble(BoxWeight::kgPerM2)
                    .findFirst()
                    .orElseThrow();
            notes.add(FillMessage.STANDS_OVER_SERVICE.of(
                    one.box(),
                    one.service(),
                    one.lengthMm() > 0 ? Shape.LENGTH : Shape.POINT,
                    one.lengthMm(),
                    kgPerM2));
        }
    }

    private static void heavy(List<BoxWeight> weights, List<Message> notes) {
        List<BoxWeight> two =
                weights.stream().filter(w -> w.heaviestKg() > LIFT_KG).toList();
        if (!two.isEmpty()) {
            BoxWeight worst = two.get(0);
            notes.add(FillMessage.HEAVY_PIECE.of(
                    worst.heaviestPiece(), worst.heaviestKg(), LIFT_KG, Weights.people(worst.heaviestKg(), LIFT_KG)));
        }
        int inPlace = (int) weights.stream().filter(w -> w.carriers() > 2).count();
        if (inPlace > 0) {
            double heaviest =
                    weights.stream().mapToDouble(BoxWeight::woodKg).max().orElse(0);
            int people = Weights.people(heaviest, LIFT_KG);
            notes.add(
                    inPlace == weights.size()
                            ? FillMessage.EVERY_BOX_TOO_HEAVY_TO_CARRY.of(inPlace, heaviest, people)
                            : FillMessage.BOXES_TOO_HEAVY_TO_CARRY.of(inPlace, weights.size(), heaviest, people));
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
