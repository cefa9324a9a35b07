package borderwright.engine.estimate;

import static borderwright.engine.message.Slot.choice;
import static borderwright.engine.message.Slot.count;
import static borderwright.engine.message.Slot.length;
import static borderwright.engine.message.Slot.message;
import static borderwright.engine.message.Slot.money;
import static borderwright.engine.message.Slot.percent;
import static borderwright.engine.message.Slot.run;
import static borderwright.engine.message.Slot.site;
import static borderwright.engine.message.Slot.volume;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/** What a first estimate consists of and leaves open. */
enum EstimateMessage implements MessageCode {
    ESTIMATE_RUN(length("given"), length("least"), site("most")),
    ESTIMATE_DEPTH(length("given"), length("least"), length("most")),
    ESTIMATE_HEIGHT(length("given"), length("least"), length("most")),

    /** Heard while a design is braced. */
    ESTIMATING_DESIGN(choice("design"), count("tried")),

    /** Two lengths of board, or the one that both designs take. */
    LENGTH_RANGE(run("low"), run("high")),
    ONE_LENGTH(run("length")),
    NUMBER_RANGE(count("low"), count("high")),
    ONE_NUMBER(count("number")),

    ESTIMATED_BOARDS(message("length")),
    ESTIMATED_SCREWS(message("number")),
    ESTIMATED_DELIVERY,
    ESTIMATED_SOIL(volume("low"), volume("high")),

    SIMPLE_COUNT(run("boards")),
    COUNT_LEAVES_DIVIDERS(message("length")),
    COUNT_LEAVES_POSTS(message("length")),
    COUNT_LEAVES_TIES(message("length")),
    COUNT_LEAVES_STRENGTH,
    COUNT_LEAVES_BRACING_UNTRIED,
    COUNT_LEAVES_WASTE(message("pieces"), message("boards")),
    COUNT_LEAVES_REJECTS(percent("low", 0), percent("high", 0)),
    COUNT_LEAVES_SHRINKAGE(count("courses"), length("wet"), length("dry")),
    COUNT_LEAVES_SCREWS(message("number")),
    COUNT_LEAVES_SETTLEMENT(percent("low", 0), percent("high", 0), volume("extra")),
    COUNT_LEAVES_DELIVERY,
    ESTIMATE_LEAVES_OUT,

    ASSUMED_WOOD_PRICE(money("low"), money("high")),
    ASSUMED_SOIL_PRICE(money("low"), money("high")),
    ASSUMED_DELIVERY(money("low"), money("high")),
    ASSUMED_SCREW_PRICE(count("screws"), money("low"), money("high"));

    private final List<Slot> slots;

    EstimateMessage(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
