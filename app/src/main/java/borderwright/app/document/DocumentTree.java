package borderwright.app.document;

import borderwright.app.document.DocNode.Entry;
import borderwright.app.document.DocNode.Fields;
import borderwright.app.document.DocNode.Items;
import borderwright.app.document.DocNode.Refused;
import borderwright.app.document.DocNode.Scalar;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionEndEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * From text to a tree, straight from the parser's events, so that depth and number of items are bounded before anything
 * is built from them.
 *
 * <p>Aliases, anchors and tags are refused: a garden needs none, and an alias can stand for more than any memory holds.
 */
final class DocumentTree {
    /** A name is one line, on paper and in every list. */
    private static final Pattern LINE_BREAK = Pattern.compile("\\s*[\\n\\r\\u000B\\f\\u0085\\u2028\\u2029]\\s*");

    private final DocumentFaults faults;
    private final Iterator<Event> events;
    private final Set<DocumentMessage> refused = EnumSet.noneOf(DocumentMessage.class);
    private int nodes;
    private int depth;

    /** Thrown where reading cannot go on; the fault is already added. */
    private static final class StopReading extends Exception {
        StopReading() {
            super(null, null, false, false);
        }
    }

    private DocumentTree(String text, DocumentFaults faults) {
        this.faults = faults;
        // one buffer for the whole text: the parser fails on a character of two units that lies across two buffers
        this.events = new Parse(LoadSettings.builder()
                        .setCodePointLimit(DocumentLimits.MOST_BYTES + 1)
                        .setBufferSize(text.length() + 2)
                        .build())
                .parseString(text)
                .iterator();
    }

    /** The document's root, unless reading had to stop at a fault. */
    static Optional<DocNode> read(String text, DocumentFaults faults) {
        DocumentTree tree = new DocumentTree(text, faults);
        try {
            return tree.document();
        } catch (YamlEngineException e) {
            SyntaxWords.report(e, faults);
        } catch (StopReading e) {
            // reported where it was found
        }
        return Optional.empty();
    }

    private Optional<DocNode> document() throws StopReading {
        DocNode root = null;
        while (events.hasNext()) {
            Event event = events.next();
            if (event instanceof DocumentStartEvent && root != null) {
                faults.add(place(event, Place.START), DocumentMessage.DOCUMENT_SEVERAL.of());
                throw new StopReading();
            }
            if (event instanceof NodeEvent node && root == null) {
                root = node(node, place(node, Place.START));
            }
        }
        if (root == null) {
            faults.add(Place.START, DocumentMessage.DOCUMENT_EMPTY.of());
        }
        return Optional.ofNullable(root);
    }

    /** The node that begins with {@code event}; recursion is bounded by the greatest depth. */
    private DocNode node(NodeEvent event, Place place) throws StopReading {
        count(place);
        boolean refused = isRefused(event, place);
        DocNode node;
        if (event instanceof ScalarEvent scalar) {
            node = scalar(scalar, place);
        } else if (event instanceof CollectionStartEvent) {
            deeper(place);
            node = event instanceof MappingStartEvent ? fields(place) : items(place);
            depth--;
        } else {
            node = new Refused(place);
        }
        return refused ? new Refused(place) : node;
    }

    private void count(Place place) throws StopReading {
        nodes++;
        if (nodes > DocumentLimits.MOST_NODES) {
            faults.add(place, DocumentMessage.DOCUMENT_TOO_LONG.of(DocumentLimits.MOST_NODES));
            throw new StopReading();
        }
    }

    private void deeper(Place place) throws StopReading {
        depth++;
        if (depth > DocumentLimits.MOST_DEPTH) {
            faults.add(place, DocumentMessage.DOCUMENT_TOO_DEEP.of(DocumentLimits.MOST_DEPTH));
            throw new StopReading();
        }
    }

    private boolean isRefused(NodeEvent event, Place place) {
        if (event instanceof AliasEvent || event.getAnchor().isPresent()) {
            refuse(place, DocumentMessage.ALIAS);
            return true;
        }
        Optional<String> tag = event instanceof ScalarEvent scalar
                ? scalar.getTag()
                : event instanceof CollectionStartEvent start ? start.getTag() : Optional.empty();
        if (tag.isPresent()) {
            refuse(place, DocumentMessage.TAG);
            return true;
        }
        return false;
    }

    /** Reported where it is met first; later ones are refused in silence. */
    private void refuse(Place place, DocumentMessage what) {
        if (refused.add(what)) {
            faults.add(place, what.of());
        }
    }

    private DocNode scalar(ScalarEvent event, Place place) {
        String text = event.getValue();
        if (text.length() > DocumentLimits.MOST_TEXT) {
            faults.add(place, DocumentMessage.TEXT_TOO_LONG.of(text.length(), DocumentLimits.MOST_TEXT));
            return new Refused(place);
        }
        OptionalInt wrong =
                text.codePoints().filter(DocumentTree::isDirectionOrControl).findFirst();
        if (wrong.isPresent()) {
            faults.add(place, DocumentMessage.CONTROL_CHARACTER.of(String.format("U+%04X", wrong.getAsInt())));
            return new Refused(place);
        }
        return new Scalar(place, LINE_BREAK.matcher(text.strip()).replaceAll(" "), event.isPlain());
    }

    /** Marks that turn the direction of what is printed after them, and escaped controls: no name needs them. */
    private static boolean isDirectionOrControl(int c) {
        boolean turns = (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069) || c == 0x200E || c == 0x200F;
        return turns || (Character.isISOControl(c) && !Character.isWhitespace(c));
    }

    private Items items(Place place) throws StopReading {
        List<DocNode> items = new ArrayList<>();
        Event event = events.next();
        while (!(event instanceof CollectionEndEvent)) {
            items.add(node((NodeEvent) event, item(event, place, items.size())));
            event = events.next();
        }
        return new Items(place, items);
    }

    private Fields fields(Place place) throws StopReading {
        Map<String, Place> seen = new HashMap<>();
        List<Entry> entries = new ArrayList<>();
        Event event = events.next();
        while (!(event instanceof CollectionEndEvent)) {
            DocNode key = node((NodeEvent) event, place(event, place));
            Event valueEvent = events.next();
            String name = key instanceof Scalar scalar ? scalar.text() : "";
            DocNode value = node((NodeEvent) valueEvent, child(valueEvent, place, name));
            if (isGoodKey(key) && isFirst(name, key.place(), place, seen)) {
                Place keyPlace = place.child(key.place().line(), key.place().column(), name);
                entries.add(new Entry(name, keyPlace, value));
            }
            event = events.next();
        }
        return new Fields(place, entries, List.of());
    }

    private boolean isGoodKey(DocNode key) {
        if (key instanceof Scalar scalar && !scalar.isNothing()) {
            return true;
        }
        if (!(key instanceof Refused)) {
            faults.add(key.place(), DocumentMessage.KEY_NOT_A_WORD.of());
        }
        return false;
    }

    private boolean isFirst(String name, Place key, Place group, Map<String, Place> seen) throws StopReading {
        Place first = seen.putIfAbsent(name, key);
        if (first != null) {
            faults.add(
                    group.child(key.line(), key.column(), name),
                    DocumentMessage.KEY_TWICE.of(DocumentFaults.shortened(name), first.line()));
        } else if (seen.size() > DocumentLimits.MOST_KEYS) {
            faults.add(key, DocumentMessage.GROUP_TOO_LONG.of(DocumentLimits.MOST_KEYS));
            throw new StopReading();
        }
        return first == null;
    }

    private static Place place(Event event, Place parent) {
        return mark(event)
                .map(m -> new Place(m.getLine() + 1, m.getColumn() + 1, parent.path()))
                .orElse(parent);
    }

    private static Place child(Event event, Place parent, String key) {
        Place at = place(event, parent);
        return parent.child(at.line(), at.column(), key);
    }

    private static Place item(Event event, Place parent, int index) {
        Place at = place(event, parent);
        return parent.item(at.line(), at.column(), index);
    }

    private static Optional<Mark> mark(Event event) {
        return event.getStartMark();
    }
}
