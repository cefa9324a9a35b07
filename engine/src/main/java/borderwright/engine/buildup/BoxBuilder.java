package borderwright.engine.buildup;

import borderwright.engine.buildup.draft.CourseStack;
import borderwright.engine.buildup.draft.DividerStrip;
import borderwright.engine.buildup.draft.Draft;
import borderwright.engine.buildup.draft.PieceMaker;
import borderwright.engine.buildup.draft.PlanterRings;
import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.buildup.draft.Supports;
import borderwright.engine.buildup.floor.FalseFloor;
import borderwright.engine.buildup.joints.JointMaker;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Box.Course;
import borderwright.engine.buildup.parts.BracingScheme;
import borderwright.engine.buildup.parts.BuildMeans;
import borderwright.engine.buildup.parts.BuildMessage;
import borderwright.engine.buildup.parts.FixingMessage;
import borderwright.engine.buildup.parts.PartSections;
import borderwright.engine.buildup.parts.PostHole;
import borderwright.engine.buildup.uprights.Braces;
import borderwright.engine.buildup.uprights.CornerPosts;
import borderwright.engine.buildup.uprights.Dividers;
import borderwright.engine.buildup.uprights.NookUprights;
import borderwright.engine.buildup.uprights.Ties;
import borderwright.engine.buildup.uprights.UprightBuilder;
import borderwright.engine.buildup.walls.Capping;
import borderwright.engine.buildup.walls.WallBoards;
import borderwright.engine.garden.BuildSpec;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Builds a box up: every piece with its cuts and its place, from the plan of its outer faces. */
public final class BoxBuilder {
    /** What a bag of dry concrete fills (common practice, no source: 2 t of mix to the cubic metre; 0.375 cubic feet). */
    private static final double BAG_25_KG_MM3 = 12.5e6;

    private static final double BAG_50_LB_MM3 = 10.6e6;

    private BoxBuilder() {}

    /** With the spacings of the rules. */
    public static Box build(FootprintPlan plan, BuildSpec rules, BuildMeans means) {
        return build(plan, rules, means, BracingScheme.of(rules));
    }

    /**
     * Builds one box.
     *
     * @param laid where the box stands
     * @param rules which section for what, corner style, faces, screws
     * @param means sections as measured, saws, longest pieces, units
     * @param scheme how closely it is braced and tied
     * @throws IllegalArgumentException where the rules name a section that {@code means} lacks
     */
    public static Box build(FootprintPlan laid, BuildSpec rules, BuildMeans means, BracingScheme scheme) {
        FootprintPlan plan = means.steps().isFinest()
                ? laid
                : laid.inWholeSteps(means.steps().length().mm());
        PartSections sections = PartSections.of(rules, means);
        List<SideFrame> sides = SideFrame.of(plan.outline());
        CourseStack stack = CourseStack.of(plan, sections.walls(), sections.capping());
        double wallMm = sections.walls().thickness().mm();
        Optional<Ring> inside = PlanterRings.inside(sides, wallMm);
        List<DividerStrip> dividers = DividerStrip.of(
                plan.dividers(), sides, wallMm, sections.dividers().thickness().mm());
        if (inside.isEmpty()) {
            return notBuilt(plan, stack, sections);
        }
        List<Ring> planters = PlanterRings.of(inside.get(), dividers);
        return build(new Draft(
                new Draft.Order(plan, rules, means, scheme),
                sections,
                new Draft.Shell(stack, sides, dividers, planters)));
    }

    private static Box build(Draft draft) {
        SectionSpec walls = draft.sections.walls();
        draft.note(draft.stack.note(draft.plan, walls));
        draft.stack.unmet(draft.plan, walls).forEach(draft::cannot);
        PieceMaker maker = new PieceMaker(draft);
        WallBoards courses = new WallBoards(draft);
        for (SideFrame side : draft.sides) {
            draft.clearance.take(draft.wallHigh(courses.strip(1, side).outline()));
        }
        Supports supports = new Supports(draft.sides, draft.wallMm());
        UprightBuilder uprights = new UprightBuilder(draft, supports, maker);
        NookUprights nooks = new NookUprights(draft.bench);
        Dividers dividers = new Dividers(draft, uprights, nooks);
        dividers.reserve();
        new CornerPosts(draft, uprights, nooks).build();
        dividers.standFirst();
        Ties ties = new Ties(draft, uprights, nooks, dividers);
        ties.place();
        Braces braces = new Braces(draft, supports, uprights, dividers);
        List<List<List<Double>>> joints = new ArrayList<>();
        for (SideFrame side : draft.sides) {
            joints.add(braces.build(side, courses));
        }
        for (Course course : draft.courses()) {
            for (SideFrame side : draft.sides) {
                courses.build(maker, side, course, joints.get(side.side()).get(course.number() - 1));
            }
        }
        courses.fixLaps();
        dividers.build(maker);
        ties.build(maker);
        double floorMm = new FalseFloor(draft).build(maker);
        if (draft.plan.capped()) {
            new Capping(draft, supports).build(maker);
        }
        pour(draft);
        new BoxCautions(draft).add();
        return draft.box(new JointMaker(draft).joints(), draft.stack.wallMm() - floorMm);
    }

    /** Concrete for the posts that are let into the ground, by the bag. */
    private static void pour(Draft draft) {
        double concreteMm3 = PostHole.of(draft.pieces(), draft.stack.bottomMm()).stream()
                .mapToDouble(PostHole::concreteMm3)
                .sum();
        if (concreteMm3 > 0) {
            boolean imperial = draft.means.units() == UnitSystem.IMPERIAL;
            double bagMm3 = imperial ? BAG_50_LB_MM3 : BAG_25_KG_MM3;
            draft.fixings.addPlain(
                    imperial ? "concrete, 50 lb bag" : "concrete, 25 kg bag",
                    Box.Hold.OTHER,
                    FixingMessage.CONCRETE_ROUND_UPRIGHTS.of(),
                    (int) Math.ceil(concreteMm3 / bagMm3));
        }
    }

    private static Box notBuilt(FootprintPlan plan, CourseStack stack, PartSections sections) {
        Problem tooNarrow = new Problem(
                "",
                BuildMessage.WALLS_MEET.of(
                        plan.name(), sections.walls().thickness().mm()));
        List<Ring> none = new ArrayList<>();
        plan.planters().forEach(planter -> none.add(plan.outline()));
        return Box.builder()
                .plan(plan)
                .courses(stack.courses())
                .pieces(List.of())
                .fixings(List.of())
                .inside(none)
                .soilDepthMm(0)
                .unmet(List.of(tooNarrow))
                .build();
    }
}
