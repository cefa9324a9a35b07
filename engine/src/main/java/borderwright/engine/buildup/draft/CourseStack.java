package borderwright.engine.buildup.draft;

import borderwright.engine.buildup.parts.Box.Course;
import borderwright.engine.buildup.parts.BuildMessage;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.message.Message;
import borderwright.engine.problem.Problem;
import java.util.ArrayList;
import java.util.List;

/**
 * How many courses make the requested height, counting that boards which arrive wet shrink in width.
 *
 * <p><b>Rule.</b> Whole courses only; of the two counts about the requested height the one whose <em>dried</em> height is nearer is
 * taken, the higher of two equally near. A capping counts towards the height. Dried means 19 % moisture, about what
 * timber outdoors comes to: width then shrinks by 6.031 - 0.215 x 19 = 1.946 % from green (Green 1989, FPL-RP-489).
 *
 * @param courses bottom first, heights above the datum
 * @param dryMm height of the dried wall above the bed, capping included, mm
 * @param builtMm height as built, capping included, mm
 */
public record CourseStack(List<Course> courses, double dryMm, double builtMm) {
    /** Shrinkage in width from green to 19 % moisture, as a fraction. */
    public static final double SHRINKAGE = (6.031 - 0.215 * 19) / 100;

    /** Shrinkage in thickness from green to 19 % moisture, as a fraction (same source). */
    static final double THICKNESS_SHRINKAGE = (5.062 - 0.181 * 19) / 100;

    public CourseStack {
        courses = List.copyOf(courses);
    }

    /**
     * Stacks the courses of a box.
     *
     * @param capping of a capped box; not used for a bare one
     */
    public static CourseStack of(FootprintPlan plan, SectionSpec walls, SectionSpec capping) {
        double width = walls.width().mm();
        double dryWidth = walls.arrivesWet() ? width * (1 - SHRINKAGE) : width;
        double cappingMm = plan.capped() ? capping.thickness().mm() : 0;
        double dryCap = capping.arrivesWet() ? cappingMm * (1 - THICKNESS_SHRINKAGE) : cappingMm;
        double wanted = plan.heightMm() - dryCap;
        long count = StrictMath.max(1, (long) StrictMath.floor(wanted / dryWidth + 0.5));
        List<Course> courses = new ArrayList<>();
        for (int n = 1; n <= count; n++) {
            courses.add(new Course(
                    n, plan.bedMm() + (n - 1) * width, plan.bedMm() + n * width, plan.bedMm() + n * dryWidth));
        }
        return new CourseStack(courses, count * dryWidth + dryCap, count * width + cappingMm);
    }

    public double bottomMm() {
        return courses.get(0).bottomMm();
    }

    public double topMm() {
        return courses.get(courses.size() - 1).topMm();
    }

    public double wallMm() {
        return topMm() - bottomMm();
    }

    /** What a builder should know of the height. */
    public Message note(FootprintPlan plan, SectionSpec walls) {
        double spread = courses.size() * walls.toleranceMm();
        String capped = plan.capped() ? "capped" : "bare";
        double width = walls.width().mm();
        return walls.arrivesWet()
                ? BuildMessage.COURSES_OF_WET_BOARDS.of(
                        plan.heightMm(),
                        courses.size(),
                        width,
                        capped,
                        builtMm,
                        dryMm,
                        walls.toleranceMm(),
                        builtMm - spread,
                        builtMm + spread)
                : BuildMessage.COURSES_OF_DRY_BOARDS.of(
                        plan.heightMm(),
                        courses.size(),
                        width,
                        capped,
                        builtMm,
                        walls.toleranceMm(),
                        builtMm - spread,
                        builtMm + spread);
    }

    /** A fault when whole courses miss the requested height by more than a quarter of a course. */
    public List<Problem> unmet(FootprintPlan plan, SectionSpec walls) {
        double off = dryMm - plan.heightMm();
        double width = walls.width().mm();
        if (StrictMath.abs(off) <= width / 4) {
            return List.of();
        }
        double dryWidth = walls.arrivesWet() ? width * (1 - SHRINKAGE) : width;
        double other = off < 0 ? dryMm + dryWidth : dryMm - dryWidth;
        return List.of(new Problem(
                "",
                BuildMessage.HEIGHT_NOT_WHOLE_COURSES.of(
                        plan.name(), plan.heightMm(), walls.name(), dryMm, other > 0 ? 2 : 1, other)));
    }
}
