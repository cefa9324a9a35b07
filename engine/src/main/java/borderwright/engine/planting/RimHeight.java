package borderwright.engine.planting;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.ground.BoxGround;
import borderwright.engine.layout.plan.SidePlan;
import borderwright.engine.message.Message;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Heights of one box, or of several alike, as built: the figures that every sheet gives.
 *
 * <p>Boards as they arrive, capping included. Wet boards shrink later; a note of the box says how far.
 *
 * @param boxes their names
 * @param requestedMm height of the wall above its bed as requested, mm
 * @param wallMm height of the wall above its bed as built, mm
 * @param rim the top of the wall above the ground along the front
 * @param soilMm depth of soil, from the bed or floor to where it stays below the rim, mm
 * @param courseMm height of one course, mm
 * @param suits whether all of the rim lies in the range for the gardener
 */
public record RimHeight(
        List<String> boxes,
        double requestedMm,
        double wallMm,
        AboveGround rim,
        double soilMm,
        double courseMm,
        boolean suits) {
    /** Whole courses come to within half a course; what is farther off than half of that is worth a word. */
    private static final double TOLERANCE_OF_A_COURSE = 0.25;

    public RimHeight {
        boxes = List.copyOf(boxes);
    }

    /**
     * A height above ground that may fall along a side.
     *
     * @param leastMm above the highest ground, mm
     * @param mostMm above the lowest, mm
     */
    public record AboveGround(double leastMm, double mostMm) {
        private static final double LEVEL_MM = 1;

        static AboveGround of(List<BoxGround.SideLevel> sides) {
            return new AboveGround(
                    sides.stream()
                            .mapToDouble(BoxGround.SideLevel::shownLeastMm)
                            .min()
                            .orElseThrow(),
                    sides.stream()
                            .mapToDouble(BoxGround.SideLevel::shownMostMm)
                            .max()
                            .orElseThrow());
        }

        /** Of a side. */
        public static AboveGround of(BoxGround.SideLevel side) {
            return of(List.of(side));
        }

        /** One figure where the ground is level, two where it falls. */
        public Message inWords() {
            return mostMm - leastMm < LEVEL_MM
                    ? PlantingMessage.RIM_LEVEL.of((leastMm + mostMm) / 2)
                    : PlantingMessage.RIM_FROM_TO.of(leastMm, mostMm);
        }
    }

    /** Of a box; its front sides count, or all where it stands free. */
    static RimHeight of(Box box, BoxGround ground, double soilMm, double leastSuits, double mostSuits) {
        List<BoxGround.SideLevel> fronts = ground.sides().stream()
                .filter(s -> box.plan().sides().get(s.side()).role() == SidePlan.Role.FRONT)
                .toList();
        AboveGround rim = AboveGround.of(fronts.isEmpty() ? ground.sides() : fronts);
        Box.Course course = box.courses().get(0);
        return new RimHeight(
                List.of(box.plan().name()),
                box.plan().heightMm(),
                box.builtMm(),
                rim,
                soilMm,
                course.topMm() - course.bottomMm(),
                rim.leastMm >= leastSuits && rim.mostMm <= mostSuits);
    }

    /** Whether wall or rim come out farther from the height requested than whole courses explain. */
    public boolean isOffRequest() {
        return Stream.of(wallMm, rim.leastMm, rim.mostMm)
                .anyMatch(mm -> StrictMath.abs(mm - requestedMm) > TOLERANCE_OF_A_COURSE * courseMm);
    }

    /** Whether wall and rim come out at the height requested, to the millimetre. */
    public boolean isAsRequested() {
        return Stream.of(wallMm, rim.leastMm, rim.mostMm).allMatch(mm -> StrictMath.abs(mm - requestedMm) < 1);
    }

    /** Boxes of one wall and one depth of soil put together, in the order of the first of each. */
    public static List<RimHeight> together(Collection<RimHeight> rims) {
        Map<List<Long>, RimHeight> alike = new LinkedHashMap<>();
        rims.forEach(r -> alike.merge(
                List.of(StrictMath.round(r.requestedMm), StrictMath.round(r.wallMm), StrictMath.round(r.soilMm)),
                r,
                RimHeight::with));
        return List.copyOf(alike.values());
    }

    private RimHeight with(RimHeight other) {
        List<String> all = new ArrayList<>(boxes);
        all.addAll(other.boxes);
        AboveGround both = new AboveGround(
                StrictMath.min(rim.leastMm, other.rim.leastMm), StrictMath.max(rim.mostMm, other.rim.mostMm));
        return new RimHeight(all, requestedMm, wallMm, both, soilMm, courseMm, suits && other.suits);
    }
}
