package borderwright.pack;

import borderwright.engine.effort.Budget;
import borderwright.engine.garden.Garden;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.plan.Plan;
import borderwright.engine.plan.PlanAnswer;
import borderwright.engine.plan.Planner;

/** The plans of {@link SampleGarden}, each made by the engine once and shared by all tests of the pack. */
public final class SamplePlan {
    private static final long SEARCH_STEPS = 5_000;

    private SamplePlan() {}

    /** Joined planters with a mitred corner; two readings disagree and the budget is too small. */
    public static Plan metric() {
        return Metric.PLAN;
    }

    /** The same in feet and inches. */
    public static Plan imperial() {
        return Imperial.PLAN;
    }

    /** One of these two. */
    public static Plan in(UnitSystem units) {
        return units == UnitSystem.METRIC ? metric() : imperial();
    }

    /** A box on paving that does not hold. */
    public static Plan paved() {
        return Paved.PLAN;
    }

    /** Sixty boxes alike. */
    public static Plan field() {
        return Field.PLAN;
    }

    /** A plan of one small box, made anew. */
    public static Plan small(String name) {
        return plan(SampleGarden.small(name));
    }

    private static Plan plan(Garden garden) {
        PlanAnswer answer = Planner.plan(garden, Budget.ofSteps(SEARCH_STEPS));
        if (answer instanceof PlanAnswer.Planned planned) {
            return planned.plan();
        }
        throw new AssertionError(answer);
    }

    /** Holds a plan from when it is first asked for. */
    private static final class Metric {
        private static final Plan PLAN = plan(SampleGarden.bend(UnitSystem.METRIC));
    }

    private static final class Imperial {
        private static final Plan PLAN = plan(SampleGarden.bend(UnitSystem.IMPERIAL));
    }

    private static final class Paved {
        private static final Plan PLAN = plan(SampleGarden.paved());
    }

    private static final class Field {
        private static final Plan PLAN = plan(SampleGarden.field());
    }
}
