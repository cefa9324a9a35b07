package borderwright.engine.plan;

import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.money;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What the costs of a plan cover, how they stand to the budget, and what is proven of them. */
public enum CostMessage implements MessageCode {
    NO_BASKET,
    COVERS_LISTED,
    COVERS_LISTED_AND_USUAL(money("listed"), money("usual")),
    COVERS_NOT_ALL(count("left"), message("covered")),
    USUAL_PRICES_PUT_OFF(count("left")),
    NO_USUAL_PRICES(text("currency"), count("left")),
    BUDGET_JUST_MET,
    BUDGET_EXCEEDED(money("over")),
    BUDGET_KEPT(money("under")),
    BUDGET_KEPT_SO_FAR(count("left"), money("under")),
    NOTHING_PROVEN,
    BASKET_PROVEN_CHEAPEST,
    BASKET_BEST_FOUND(money("bound"));

    private final List<Slot> slots;

    CostMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
