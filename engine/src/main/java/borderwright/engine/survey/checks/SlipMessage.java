package borderwright.engine.survey.checks;

import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.degrees;
import static borderwright.engine.message.Slot.number;
import static borderwright.engine.message.Slot.text;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** Likely slips behind a reading. Numbers are in millimetres unless the name gives another unit. */
enum SlipMessage implements MessageCode {
    SLIP_NOT_STRAIGHT,
    SLIP_CHAIN_ALONG_A_CURVE,
    /** {@code step} is {@code hundred} or {@code inch}. */
    SLIP_TAPE_HELD_AT(text("step")),
    SLIP_HOOK,
    SLIP_ABOVE_FOR_BELOW,
    /** {@code step} is {@code metre}, {@code hundred}, {@code ten}, {@code foot} or {@code inch}. */
    SLIP_STEP(text("step"), text("way")),
    SLIP_SUPPLEMENT(degrees("read")),
    SLIP_COMPLEMENT(degrees("read")),
    SLIP_OTHER_SIDE(degrees("read")),
    SLIP_TEN_DEGREES(text("way")),
    SLIP_DEGREES_SWAPPED(degrees("read"), degrees("meant")),
    SLIP_DIGITS_SWAPPED(number("read", 0), number("meant", 0)),
    SLIP_DIGITS_SWAPPED_IN_METRES(number("read", 2), number("meant", 2)),
    SLIP_DIGIT_MISREAD(number("read", 0), number("meant", 0)),
    SLIP_DIGIT_MISREAD_IN_METRES(number("read", 2), number("meant", 2)),
    /** One part of so many of an inch. */
    SLIP_INCH_FRACTION(count("parts"), text("way")),
    /** Heard while slips are sought. */
    LEAVING_OUT(count("number"));

    private final List<Slot> slots;

    SlipMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
