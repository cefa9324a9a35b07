package borderwright.engine.sequence;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.filling.FillPlan;
import borderwright.engine.filling.LinerPlan;
import borderwright.engine.filling.SoilVolume;
import borderwright.engine.garden.GroundSpec;
import borderwright.engine.garden.WorkSpec.Pace;
import borderwright.engine.ground.BoxGround;
import borderwright.engine.sequence.WorkTask.Kind;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Person-hours for one box, by pace.
 *
 * @param box its name
 * @param byKind hours of each kind of task; set-ups of saws are counted for the garden
 */
record BoxHours(String box, Map<Kind, Double> byKind) {
    private static final double MINUTES = 60;
    private static final double MM2_PER_M2 = 1e6;

    /** Minutes for the mark of a corner or a foot, and hours to plant a square metre (common practice, no source). */
    private static final double PEG_MINUTES = 5;

    private static final double FOOT_MINUTES = 4;
    private static final double PLANT_HOURS_FOR_M2 = 0.25;

    static BoxHours of(Box box, BoxGround ground, FillPlan filling, GroundSpec spec, Pace pace) {
        List<SoilVolume> planters = filling.planters().stream()
                .filter(p -> p.box().equals(box.plan().name()))
                .toList();
        double screws = box.fixings().stream().mapToInt(Box.Fixing::count).sum();
        double sheet = spec.membrane().isEmpty() || spec.surface().isHard() ? 0 : ground.areaM2();
        double ordered = planters.stream().mapToDouble(SoilVolume::orderedM3).sum();
        double growing = planters.stream().mapToDouble(SoilVolume::growingM2).sum();
        Map<Kind, Double> hours = new EnumMap<>(Kind.class);
        hours.put(Kind.SET_OUT, box.plan().outline().size() * PEG_MINUTES / MINUTES);
        hours.put(
                Kind.DIG,
                (ground.turfM3() > 0 ? ground.areaM2() / pace.turfM2AnHour() : 0)
                        + ground.dugM3() * pace.digHoursForM3());
        hours.put(
                Kind.BED,
                sheet / pace.sheetM2AnHour()
                        + ground.gravelM3() * pace.gravelHoursForM3()
                        + ground.feet().size() * FOOT_MINUTES / MINUTES);
        hours.put(Kind.CUT, box.pieces().size() * pace.cutMinutes() / MINUTES);
        hours.put(Kind.BUILD, (box.pieces().size() * pace.placeMinutes() + screws * pace.screwMinutes()) / MINUTES);
        hours.put(
                Kind.LINE,
                lined(planters, filling) / pace.sheetM2AnHour()
                        + (box.plan().platformMm() > 0 ? growing / pace.sheetM2AnHour() : 0));
        hours.put(Kind.FILL, ordered * pace.fillHoursForM3());
        hours.put(Kind.PLANT, growing * PLANT_HOURS_FOR_M2);
        return new BoxHours(box.plan().name(), hours);
    }

    /** Hours of a kind of task. */
    double of(Kind kind) {
        return byKind.getOrDefault(kind, 0.0);
    }

    double cut() {
        return of(Kind.CUT);
    }

    double build() {
        return of(Kind.BUILD);
    }

    /** The same with only that share of the cutting and building. */
    BoxHours withShare(double share) {
        Map<Kind, Double> hours = new EnumMap<>(byKind);
        hours.put(Kind.CUT, cut() * share);
        hours.put(Kind.BUILD, build() * share);
        return new BoxHours(box, hours);
    }

    private static double lined(List<SoilVolume> planters, FillPlan filling) {
        List<String> names = planters.stream().map(SoilVolume::planter).toList();
        return filling.liner()
                .map(liner -> liner.strips().stream()
                        .filter(strip -> names.contains(strip.planter()))
                        .mapToDouble((LinerPlan.Strip s) -> s.lengthMm() * s.widthMm() / MM2_PER_M2)
                        .sum())
                .orElse(0.0);
    }
}
