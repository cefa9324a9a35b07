package borderwright.engine.buildup;

import borderwright.engine.buildup.Box.Course;
import borderwright.engine.garden.BuildRules;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Prism;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.FootprintPlan;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.problem.Problem;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** A box while it is being built: what is settled, what has been placed, and what there is to say. */
final class Draft {
    final FootprintPlan plan;
    final BuildRules rules;
    final BuildMeans means;
    final BracingScheme scheme;
    final Sections sections;
    final CourseStack stack;
    final List<SideFrame> sides;
    final List<DividerStrip> dividers;
    final List<Ring> inside;
    final LengthFormat format;
    final SawBench bench;
    final CutWords words;
    final ScrewRules screws;
    final Labels labels = new Labels();
    final Clearance clearance = new Clearance();
    final FixingTally fixings = new FixingTally();
    private final List<Piece> pieces = new ArrayList<>();
    private final Set<String> notes = new LinkedHashSet<>();
    private final List<Problem> unmet = new ArrayList<>();

    Draft(
            FootprintPlan plan,
            BuildRules rules,
            BuildMeans means,
            BracingScheme scheme,
            Sections sections,
            CourseStack stack,
            List<SideFrame> sides,
            List<DividerStrip> dividers,
            List<Ring> inside) {
        this.plan = plan;
        this.rules = rules;
        this.means = means;
        this.scheme = scheme;
        this.sections = sections;
        this.stack = stack;
        this.sides = sides;
        this.dividers = dividers;
        this.inside = inside;
        this.format = new LengthFormat(means.units());
        this.bench = new SawBench(means.saws(), format);
        this.words = new CutWords(bench, format);
        this.screws = new ScrewRules(means.units());
    }

    double wallMm() {
        return sections.walls().thickness().mm();
    }

    List<Course> courses() {
        return stack.courses();
    }

    /** Name of the planter that a point lies in, or the nearest. */
    String planterAt(Point p) {
        return plan.planters().get(PlanterRings.at(inside, p));
    }

    /** The whole height of the wall over a plan. */
    Prism wallHigh(Ring ring) {
        return new Prism(ring, stack.bottomMm(), stack.topMm());
    }

    void add(Piece piece) {
        pieces.add(piece);
    }

    void note(String sentence) {
        notes.add(sentence);
    }

    void cannot(Problem problem) {
        unmet.add(problem);
    }

    Box box(double soilDepthMm) {
        return new Box(
                plan, stack.courses(), pieces, fixings.fixings(), inside, soilDepthMm, List.copyOf(notes), unmet);
    }
}
