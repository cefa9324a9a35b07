package borderwright.engine.buying.why;

import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.decimal;
import static borderwright.engine.message.Slot.length;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.money;
import static borderwright.engine.message.Slot.percent;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/**
 * Why a basket is what it is. Amounts are as quoted, before any tax that is added; {@code proven} is {@code yes} where nothing
 * can be cheaper than the basket, {@code exact} where a price is the highest that changes the basket.
 */
public enum BasketMessage implements MessageCode {
    /** A supplier or a section. */
    PLAIN_NAME(text("name")),
    NAMELESS_SUPPLIER,
    NAMELESS_SECTION,
    BOARD_ON_OFFER(length("length"), message("section"), count("pack"), count("least")),
    BOARD_OF_SUPPLIER(message("board"), text("supplier")),

    ALONE_IMPOSSIBLE(message("supplier")),
    BASKET_OF_ONE_SUPPLIER(message("supplier")),
    ALONE_COSTS_THE_SAME(message("supplier")),
    ALONE_COSTS_MORE(message("supplier"), money("cost"), money("more")),
    ALONE_BEST_FOUND(message("supplier"), money("cost"), money("more"), money("bound")),
    ALONE_AT_LEAST(message("supplier"), money("bound")),

    SUPPLIER_WOULD_WIN(message("supplier"), percent("less", 1)),
    BOARD_WOULD_WIN(message("board"), money("price"), count("pack"), money("quoted"), text("exact")),

    DEARER_LENGTH_NEEDED(message("board"), message("cheaper")),
    DEARER_LENGTH_SAVES(message("board"), message("cheaper"), money("more")),
    DEARER_LENGTH_SAVES_WASTE(message("board"), message("cheaper"), money("more"), length("waste")),

    DELIVERY_FREE(message("supplier")),
    DELIVERY_COSTS(message("supplier"), money("charge")),
    DELIVERY_FREE_FROM(message("supplier"), money("goods"), text("proven")),
    DELIVERY_CHEAPER_FROM(message("supplier"), money("goods"), money("charge"), text("proven")),
    DELIVERY_INSTEAD(message("supplier"), money("charge")),
    ORDER_FETCHED_FREE(message("supplier")),
    ORDER_FETCHED(message("supplier"), money("cost")),
    FETCHING_INSTEAD(message("supplier"), money("cost"), text("proven")),
    FETCHING_LIMIT(message("supplier"), length("longest")),

    BOARDS_NOT_CUT(message("board"), count("boards"), money("value")),
    STANDS_IN(message("board"), text("section"), money("worth")),
    OFFCUTS_COUNT(money("worth")),
    BOARD_KEPT_WHOLE(message("board"), money("price")),
    OWN_BOARD_KEPT_WHOLE(length("length"), text("section"), text("place")),
    NESTING_SAVES(money("saved")),

    BOARDS_SELDOM_SHORT(decimal("rejects"), count("boards"), text("section"), percent("chance", 1), count("spares")),
    BOARDS_MAY_RUN_SHORT(
            decimal("rejects"),
            count("boards"),
            text("section"),
            percent("chance", 1),
            count("wanted"),
            length("length"),
            percent("risk", 0),
            count("spares"));

    private final List<Slot> slots;

    BasketMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
