package borderwright.app.language;

import borderwright.engine.message.Message;
import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import borderwright.words.Catalogue;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;

/** A message of every code, with invented values that suit the names of its slots. */
final class Examples {
    /** What stands in a slot for text, by the slot's name; a letter where none is given. */
    private static final Map<String, String> TEXTS = Map.ofEntries(
            Map.entry("run", "long border"),
            Map.entry("section", "larch 25 x 150"),
            Map.entry("name", "larch"),
            Map.entry("text", "1850"),
            Map.entry("unit", "mn"),
            Map.entry("key", "hight"),
            Map.entry("meant", "height"),
            Map.entry("meaning", "height of the finished wall"),
            Map.entry("example", "450 mm"),
            Map.entry("range", "{from: 1.2 m, to: 2.4 m}"),
            Map.entry("currency", "GBP"),
            Map.entry("supplier", "Alder"),
            Map.entry("piece", "F3 board 2"),
            Map.entry("box", "F3"),
            Map.entry("planter", "F3"),
            Map.entry("edge", "A-B"),
            Map.entry("side", "front"),
            Map.entry("corner", "C"),
            Map.entry("corners", "A B C D"),
            Map.entry("point", "P"),
            Map.entry("points", "A B"),
            Map.entry("from", "A"),
            Map.entry("to", "B"),
            Map.entry("line", "A-B"),
            Map.entry("price", "per metre"),
            Map.entry("end", "to"),
            Map.entry("path", "runs[0].along"),
            Map.entry("character", "@"),
            Map.entry("bracket", "]"),
            Map.entry("whole", "1850 mm"),
            Map.entry("decimal", "1.850 mm"),
            Map.entry("field", "length"));

    /** Which message stands in a slot for one, by the slot's name. */
    private static final Map<String, String> MESSAGES = Map.ofEntries(
            Map.entry("example", "length-example"),
            Map.entry("known", "names-only"),
            Map.entry("cure", "point-needs-two-measures"),
            Map.entry("write", "write-length"),
            Map.entry("limits", "limits-from-to"),
            Map.entry("least", "limit-length"),
            Map.entry("most", "limit-length"),
            Map.entry("opened", "opened-at"),
            Map.entry("shown", "layout-shows"),
            Map.entry("slip", "slip-hook"),
            Map.entry("reading", "reading-tape"),
            Map.entry("read", "read-length"),
            Map.entry("implied", "read-length"),
            Map.entry("separating", "separates-by-repeating"),
            Map.entry("measure", "next-tape"),
            Map.entry("perhaps", "perhaps-you-meant"),
            Map.entry("place", "nearby-at-edge"),
            Map.entry("fault", "corner-twice"));

    private Examples() {}

    static Message of(MessageCode code) {
        Map<String, String> choices = new HashMap<>();
        choices.putAll(Placeholders.firstChoices(Catalogue.english().pattern(code.key())));
        if (Catalogue.english().has(code.key() + ".right")) {
            choices.putAll(Placeholders.firstChoices(Catalogue.english().pattern(code.key() + ".right")));
        }
        List<Object> values = new ArrayList<>();
        for (Slot slot : code.slots()) {
            String choice = choices.get(slot.name());
            values.add(choice != null && slot.kind() == Slot.Kind.TEXT ? choice : value(slot, values.size()));
        }
        return new Message(code, values);
    }

    private static Object value(Slot slot, int place) {
        return switch (slot.kind()) {
            case TEXT -> TEXTS.getOrDefault(slot.name(), "ABCDEFGHIJ".substring(place, place + 1));
            case CHOICE -> Choice.OTHER;
            case MESSAGE, FAULT -> message(slot);
            case FURTHER -> Optional.of(message(slot));
            case LIST, COMMAS, SEMICOLONS -> List.of("A", "B", "C");
            case COUNT -> 2 + place;
            case MONEY -> Money.parse("GBP 12.30");
            case DECIMAL -> new BigDecimal("9.605");
            case LENGTH, PIECE, SITE, RUN -> 600.0 + 150 * place;
            case SMALL -> 3.0;
            case ANGLE, DEGREES -> 88.5;
            case FORCE -> 1200.0;
            case WEIGHT -> 60.0;
            case AREA_LOAD -> 700.0;
            case UNIT_WEIGHT -> 19.0 - place;
            case USE -> 1.2;
            case PERCENT -> 0.05;
            case AREA, VOLUME, NUMBER -> 1.5 + place;
        };
    }

    private static Message message(Slot slot) {
        String key = MESSAGES.get(slot.name());
        return key == null ? Unnamed.ANY.of("‹" + slot.name() + "›") : of(Codes.of(key));
    }

    /** The branch that every select has. */
    private enum Choice {
        OTHER
    }

    /** Stands for a message of which no example is given: the name of its slot. */
    private enum Unnamed implements MessageCode {
        ANY;

        @Override
        public String key() {
            return "read-length";
        }

        @Override
        public List<Slot> slots() {
            return List.of(Slot.text("length"));
        }
    }
}
