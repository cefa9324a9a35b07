package borderwright.engine.sequence;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.filling.FillPlan;
import borderwright.engine.filling.LinerPlan;
import borderwright.engine.filling.SoilVolume;
import borderwright.engine.garden.GroundSpec;
import borderwright.engine.garden.WorkSpec.Pace;
import borderwright.engine.ground.BoxGround;
import java.util.List;

/**
 * Person-hours for one box, by pace.
 *
 * @param box its name
 * @param pegs setting its pegs
 * @param dig turf and earth
 * @param bed membrane and gravel, or feet
 * @param cut pieces; set-ups of saws are counted for the garden
 * @param build placing and screwing
 * @param line liner and floor fabric
 * @param fill soil
 * @param plant planting and watering in
 */
record BoxHours(
        String box,
        double pegs,
        double dig,
        double bed,
        double cut,
        double build,
        double line,
        double fill,
        double plant) {
    private static final double MINUTES = 60;
    private static final double MM2_PER_M2 = 1e6;

    /** Minutes for a peg or a foot, and hours to plant a square metre (common practice, no source). */
    private static final double PEG_MINUTES = 5;

    private static final double FOOT_MINUTES = 4;
    private static final double PLANT_HOURS_FOR_M2 = 0.25;

    static BoxHours of(Box box, BoxGround ground, FillPlan filling, GroundSpec wish, Pace pace) {
        List<SoilVolume> planters = filling.planters().stream()
                .filter(p -> p.box().equals(box.plan().name()))
                .toList();
        double screws = box.fixings().stream().mapToInt(Box.Fixing::count).sum();
        double sheet = wish.membrane().isEmpty() || wish.surface().isHard() ? 0 : ground.areaM2();
        double ordered = planters.stream().mapToDouble(SoilVolume::orderedM3).sum();
        double growing = planters.stream().mapToDouble(SoilVolume::growingM2).sum();
        return new BoxHours(
                box.plan().name(),
                box.plan().outline().size() * PEG_MINUTES / MINUTES,
                (ground.turfM3() > 0 ? ground.areaM2() / pace.turfM2AnHour() : 0)
                        + ground.dugM3() * pace.digHoursForM3(),
                sheet / pace.sheetM2AnHour()
                        + ground.gravelM3() * pace.gravelHoursForM3()
                        + ground.feet().size() * FOOT_MINUTES / MINUTES,
                box.pieces().size() * pace.cutMinutes() / MINUTES,
                (box.pieces().size() * pace.placeMinutes() + screws * pace.screwMinutes()) / MINUTES,
                lined(planters, filling) / pace.sheetM2AnHour()
                        + (box.plan().platformMm() > 0 ? growing / pace.sheetM2AnHour() : 0),
                ordered * pace.fillHoursForM3(),
                growing * PLANT_HOURS_FOR_M2);
    }

    /** The same with only that share of the cutting and building. */
    BoxHours withShare(double share) {
        return new BoxHours(box, pegs, dig, bed, cut * share, build * share, line, fill, plant);
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
