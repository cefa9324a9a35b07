package borderwright.engine.plan;

import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buying.list.GoodsNeed;
import borderwright.engine.buying.list.ShoppingAnswer;
import borderwright.engine.buying.list.ShoppingProblem;
import borderwright.engine.buying.nesting.HeldBoards;
import borderwright.engine.buying.nesting.NestedBasket;
import borderwright.engine.buying.why.Basket;
import borderwright.engine.buying.why.BasketMaker;
import borderwright.engine.buying.why.Explainer;
import borderwright.engine.buying.why.Explanation;
import borderwright.engine.cutting.BasketBoards;
import borderwright.engine.cutting.BoardNumbers;
import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.cutting.CuttingPlanner;
import borderwright.engine.cutting.PlaneVerifier;
import borderwright.engine.effort.Budget;
import borderwright.engine.effort.WorkListener;
import borderwright.engine.garden.Garden;
import borderwright.engine.measure.Length;
import borderwright.engine.prices.PriceLists;
import borderwright.engine.problem.Problem;
import borderwright.engine.shopping.ShoppingItem;
import borderwright.engine.sitelog.OnSite;
import borderwright.engine.stock.DemandMaker;
import borderwright.engine.stock.OffcutWorth;
import borderwright.engine.stock.row.BoardInHand;
import borderwright.engine.stock.row.CuttingJob;
import java.util.List;

/**
 * Buys what the pieces and the shopping list need, and cuts the pieces from it.
 *
 * @param garden the resolved garden
 * @param prices of its suppliers
 * @param budget work that the search for the basket may spend
 * @param listener called with each stage as it begins
 */
record WoodStage(Garden garden, PriceLists prices, Budget budget, WorkListener listener) {
    /** Work for asking again what would change a basket: a few seconds at most. */
    private static final long EXPLAINING_WORK = 250_000;

    /**
     * What was bought and how it is cut.
     *
     * @param answer the search's own, for its status and reasons
     * @param boardsKeptWhole whether every board that is to be kept whole could be
     * @param onSite faults of what was received and cut on site
     * @param costs what it costs, with what no supplier prices
     */
    record Bought(
            ShoppingAnswer answer,
            Basket basket,
            CuttingPlan cutting,
            boolean boardsKeptWhole,
            List<Problem> onSite,
            Costs costs) {}

    /** The basket with the reasons that the sheets show. */
    Bought explained(List<Piece> pieces, List<ShoppingItem> shopping) {
        OnSite here = OnSite.of(garden, pieces);
        HeldBoards.Bought held = buy(here, shopping);
        listener.begins(PlanStage.EXPLAINING.begins());
        NestedBasket.Bought bought = held.basket();
        return cut(
                here,
                held,
                Explainer.explain(held.full(), bought.bare(), bought.answer(), budget.separate(EXPLAINING_WORK)));
    }

    /** The basket without reasons, for a garden that is only compared. */
    Bought unexplained(List<Piece> pieces, List<ShoppingItem> shopping) {
        OnSite here = OnSite.of(garden, pieces);
        HeldBoards.Bought held = buy(here, shopping);
        listener.begins(PlanStage.EXPLAINING.begins());
        return cut(here, held, Explanation.NONE);
    }

    private HeldBoards.Bought buy(OnSite here, List<ShoppingItem> shopping) {
        listener.begins(PlanStage.BUYING.begins());
        return HeldBoards.buy(job(List.of(), here), problem(here, shopping), budget);
    }

    private Bought cut(OnSite here, HeldBoards.Bought held, Explanation why) {
        listener.begins(PlanStage.CUTTING.begins());
        ShoppingAnswer answer = held.basket().answer();
        CuttingJob job = job(BasketBoards.of(answer, garden.cutting().trim()), here);
        CuttingPlan cutting = BoardNumbers.asCut(PlaneVerifier.verified(job, CuttingPlanner.plan(job, budget)))
                .after(here.done());
        Basket basket = BasketMaker.of(
                answer,
                why.withNesting(held.basket().saved()),
                garden.currency(),
                garden.cutting().rejectsPercent());
        boolean boardsKeptWhole = held.met();
        return new Bought(answer, basket, cutting, boardsKeptWhole, here.problems(), Costs.of(garden, answer));
    }

    private CuttingJob job(List<BoardInHand> boards, OnSite here) {
        return new CuttingJob(boards, here.open(), garden.sections(), garden.saws(), garden.cutting());
    }

    private ShoppingProblem problem(OnSite here, List<ShoppingItem> shopping) {
        Length kerf = CuttingJob.widestKerf(garden.saws());
        List<GoodsNeed> needs = shopping.stream()
                .map(item -> new GoodsNeed(item.item(), item.quantity(), item.unit()))
                .toList();
        ShoppingProblem problem = ShoppingProblem.builder(DemandMaker.of(here.open(), garden.cutting(), kerf))
                .boards(prices.boards())
                .terms(prices.terms())
                .owned(here.stock())
                .needs(OnSite.stillNeeded(garden, needs))
                .goods(prices.goods())
                .kerfTicks(kerf.ticks())
                .trimTicks(garden.cutting().trim().ticks())
                .build();
        return problem.keeping(
                OffcutWorth.of(garden.cutting(), garden.currency().getDecimalPlaces()));
    }
}
