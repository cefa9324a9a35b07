package borderwright.app.plan;

import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.decimal;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.money;
import static borderwright.engine.message.Slot.semicolons;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What {@code estimate} writes besides the engine's messages. */
enum EstimateReportMessage implements MessageCode {
    PLANTERS_OUT_OF_RANGE(count("given"), count("least"), count("most")),
    ESTIMATE_CURRENCY_UNKNOWN(text("given")),
    PRICE_OUT_OF_RANGE(decimal("given"), decimal("most")),

    ESTIMATE_HEADING,
    ESTIMATE_MONEY_RANGE(money("low"), money("high")),
    ESTIMATE_MONEY(money("money")),
    ESTIMATE_TOTAL(message("money")),
    ESTIMATE_SIMPLE_COUNT(message("count")),
    ESTIMATE_LEFT_OUT_HEADING,
    ESTIMATE_ASSUMED_PRICES(semicolons("prices")),
    ESTIMATE_CAUTION;

    private final List<Slot> slots;

    EstimateReportMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
