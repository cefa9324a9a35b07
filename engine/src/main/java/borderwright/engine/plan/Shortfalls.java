package borderwright.engine.plan;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.garden.Garden;
import borderwright.engine.layout.plan.Layout;
import borderwright.engine.message.Message;
import borderwright.engine.prices.PriceLists;
import borderwright.engine.problem.Problem;
import borderwright.engine.strength.StrengthReport;
import borderwright.engine.survey.checks.SurveyDisagreement;
import borderwright.engine.survey.checks.SurveyReport;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.Money;

/** What does not hold or cannot be met, in the order of the job. */
record Shortfalls(Garden garden, Taught taught) {

    List<Problem> of(
            SurveyReport survey,
            Layout layout,
            List<Box> boxes,
            List<StrengthReport> strength,
            SiteWork site,
            PriceLists prices,
            WoodStage.Bought wood) {
        List<Problem> found = new ArrayList<>();
        SurveyDisagreement.of(survey).ifPresent(found::add);
        found.addAll(layout.unmet());
        boxes.forEach(box -> found.addAll(box.unmet()));
        found.addAll(StrengthStage.shortfalls(strength, garden));
        found.addAll(taught.unmet(boxes, strength));
        found.addAll(site.ground().unmet());
        found.addAll(site.filling().unmet());
        found.addAll(prices.problems());
        found.addAll(wood.onSite());
        ShoppingAnswer answer = wood.answer();
        if (answer.status() != ShoppingAnswer.Status.FOUND) {
            answer.reasons().stream().limit(1).forEach(reason -> found.add(new Problem("suppliers", reason)));
        }
        if (!wood.boardsKeptWhole()) {
            found.add(new Problem("cutting.keep whole", ShortfallMessage.NO_BOARD_KEPT_WHOLE.of()));
        }
        wood.cutting().uncut().forEach(uncut -> found.add(new Problem("suppliers", uncut.why())));
        budget(wood, found);
        return found;
    }

    private void budget(WoodStage.Bought wood, List<Problem> found) {
        wood.costs()
                .overBudget()
                .filter(Money::isPositive)
                .ifPresent(over -> found.add(new Problem("budget", overBudget(wood.costs(), over))));
    }

    private static Message overBudget(Costs costs, Money over) {
        Money cost = costs.inAll().orElseThrow();
        return ShortfallMessage.OVER_BUDGET.of(cost, over, cost.minus(over));
    }
}
