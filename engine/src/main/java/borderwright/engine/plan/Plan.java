package borderwright.engine.plan;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buying.why.Basket;
import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.garden.Garden;
import borderwright.engine.layout.plan.Layout;
import borderwright.engine.message.Message;
import borderwright.engine.problem.Problem;
import borderwright.engine.sequence.WorkPlan;
import borderwright.engine.shopping.ShoppingItem;
import borderwright.engine.strength.StrengthReport;
import borderwright.engine.survey.Outline;
import borderwright.engine.survey.checks.SurveyReport;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * All that follows from a garden.
 *
 * @param garden what the person said
 * @param outline the border as adjusted
 * @param survey how well the measures agree
 * @param layout boxes on the plan
 * @param boxes every box with its pieces, in the order of {@code layout.boxes()}
 * @param strength what the strength of all boxes comes to
 * @param strengthReports what is known of the strength of each box, in the order of {@code boxes}
 * @param site ground and what else is done to the site
 * @param shopping everything to buy that is not a board
 * @param basket what to buy where
 * @param cutting which piece comes from which board
 * @param work tasks, hours and days of work
 * @param totals figures for the brief
 * @param shortfalls what does not hold or cannot be met, the reason first; empty when all is well
 */
public record Plan(
        Garden garden,
        Outline outline,
        SurveyReport survey,
        Layout layout,
        List<Box> boxes,
        Message strength,
        List<StrengthReport> strengthReports,
        SiteWork site,
        List<ShoppingItem> shopping,
        Basket basket,
        CuttingPlan cutting,
        WorkPlan work,
        Totals totals,
        List<Problem> shortfalls) {
    public Plan {
        boxes = List.copyOf(boxes);
        strengthReports = List.copyOf(strengthReports);
        shopping = List.copyOf(shopping);
        shortfalls = List.copyOf(shortfalls);
    }

    /**
     * Figures for the brief; each is a sum over the plan.
     *
     * @param planters number of planters
     * @param pieces number of pieces
     * @param pieceMetres length of all pieces, m
     * @param boardMetres length of all boards cut into, bought or owned, m
     * @param timberM3 volume of all pieces, m3
     * @param timberKg weight of all pieces as they arrive, kg
     * @param growingM2 area inside the walls, m2
     * @param soilM3 soil to fill them, settlement included, m3
     * @param boardsAndFixings cost of the basket
     * @param overBudget how far the basket is over the budget, negative when under; empty when there is no budget
     */
    public record Totals(
            int planters,
            int pieces,
            double pieceMetres,
            double boardMetres,
            double timberM3,
            double timberKg,
            double growingM2,
            double soilM3,
            Money boardsAndFixings,
            Optional<Money> overBudget) {}
}
