package borderwright.engine.plan;

import borderwright.engine.message.Message;

/** What the person does next: the first line of the brief. */
public final class NextStep {
    private NextStep() {}

    /** The one thing that all else waits for. */
    public static Message of(Plan plan) {
        if (plan.survey().suspects().separating().isPresent()) {
            return NextStepMessage.SETTLE_SURVEY.of(
                    plan.survey().suspects().separating().get());
        }
        if (!plan.shortfalls().isEmpty()) {
            return NextStepMessage.CHANGE_PLAN.of(plan.shortfalls().size());
        }
        if (plan.cutting().boards().isEmpty()) {
            return NextStepMessage.READ_ON.of();
        }
        if (!plan.cutting().done().isEmpty()) {
            return NextStepMessage.CUT_ON.of(plan.cutting().done().size());
        }
        return plan.basket().orders().isEmpty()
                ? NextStepMessage.SET_OUT.of()
                : NextStepMessage.ORDER.of(plan.basket().orders().size());
    }
}
