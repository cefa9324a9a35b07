package borderwright.engine.buildup.draft;

import borderwright.engine.buildup.parts.Box.Course;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.problem.Problem;
import java.util.ArrayList;
import java.util.List;

/**
 * How many courses make the wished height, counting that boards which arrive wet shrink in width.
 *
 * <p><b>Rule.</b> Whole courses only; of the two counts about the wish the one whose <em>dried</em> height is nearer is
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
     * @param cappingMm thickness of the capping as it arrives; 0 for none
     * @param cappingWet whether it arrives wet
     */
    public static CourseStack of(FootprintPlan plan, SectionSpec walls, double cappingMm, boolean cappingWet) {
        double width = walls.width().mm();
        double dryWidth = walls.arrivesWet() ? width * (1 - SHRINKAGE) : width;
        double dryCap = cappingWet ? cappingMm * (1 - THICKNESS_SHRINKAGE) : cappingMm;
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

    /** What a builder should know of the height, with numbers. */
    public String note(FootprintPlan plan, SectionSpec walls, LengthFormat format) {
        int n = courses.size();
        double spread = n * walls.toleranceMm();
        String shrinks = walls.arrivesWet()
                ? ", and " + format.length(dryMm) + " when the boards have dried to 19 % moisture"
                : "";
        return "Wished " + format.length(plan.heightMm()) + " high: " + n + (n == 1 ? " course" : " courses") + " of "
                + format.piece(walls.width().mm()) + (plan.capped() ? " and the capping stand " : " stand ")
                + format.length(builtMm) + " as built" + shrinks + ". Boards measured to "
                + format.piece(walls.toleranceMm()) + " either way may make it " + format.length(builtMm - spread)
                + " to " + format.length(builtMm + spread) + ": sort boards of one width into one course.";
    }

    /** A fault when whole courses miss the wish by more than a quarter of a course. */
    public List<Problem> unmet(FootprintPlan plan, SectionSpec walls, LengthFormat format) {
        double off = dryMm - plan.heightMm();
        double width = walls.width().mm();
        if (StrictMath.abs(off) <= width / 4) {
            return List.of();
        }
        double dryWidth = walls.arrivesWet() ? width * (1 - SHRINKAGE) : width;
        double other = off < 0 ? dryMm + dryWidth : dryMm - dryWidth;
        return List.of(new Problem(
                "height-not-whole-courses",
                "",
                "Box " + plan.name() + " is wished " + format.length(plan.heightMm()) + " high, but whole courses of "
                        + walls.name() + " come to " + format.length(dryMm) + " when dry.",
                "Wish " + format.length(dryMm) + (other > 0 ? " or " + format.length(other) : "")
                        + ", or take boards of another width."));
    }
}
