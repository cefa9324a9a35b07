package borderwright.app.cut;

import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.decimal;
import static borderwright.engine.message.Slot.money;
import static borderwright.engine.message.Slot.number;
import static borderwright.engine.message.Slot.percent;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** The lines of the table of {@code cut}. Where a list names no sections or suppliers, the name is empty and its count 0. */
enum CutReportMessage implements MessageCode {
    /** Heard while boards are sought. */
    CUT_SEEKING(count("better")),
    CUT_EXPLAINING,
    CUT_COST_PROVEN(money("cost")),
    CUT_COST_BOUNDED(money("cost"), money("bound"), percent("gap", 3)),
    CUT_ORDER_DELIVERED(
            text("supplier"), count("suppliers"), money("total"), money("goods"), money("charge"), money("tax")),
    CUT_ORDER_FETCHED(
            text("supplier"), count("suppliers"), money("total"), money("goods"), money("charge"), money("tax")),
    CUT_ORDER_LINE(count("count"), text("section"), count("sections"), decimal("length"), money("price")),
    CUT_ORDER_PACKS(
            count("packs"), count("count"), text("section"), count("sections"), decimal("length"), money("price")),
    CUT_BOARDS_HEADING,
    CUT_BOARD(
            count("count"),
            text("section"),
            count("sections"),
            decimal("length"),
            text("supplier"),
            count("suppliers"),
            text("pieces")),
    CUT_WHY_HEADING,
    CUT_SOLVED_IN(number("seconds", 3));

    private final List<Slot> slots;

    CutReportMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
