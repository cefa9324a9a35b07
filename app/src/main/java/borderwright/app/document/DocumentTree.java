package borderwright.app.document;

import borderwright.app.document.DocNode.Entry;
import borderwright.app.document.DocNode.Fields;
import borderwright.app.document.DocNode.Items;
import borderwright.app.document.DocNode.Refused;
import borderwright.app.document.DocNode.Scalar;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
    private final DocumentFaults faults;
    private final Iterator<Event> events;
    private final Set<String> refused = new HashSet<>();
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
                faults.add(
                        place(event, Place.START),
                        "document-several",
                        "A second document begins here.",
                        "Write one garden to a file; variants go under `variants`.");
                throw new StopReading();
            }
            if (event instanceof NodeEvent node && root == null) {
                root = node(node, place(node, Place.START));
            }
        }
        if (root == null) {
            faults.add(
                    Place.START,
                    "document-empty",
                    "The document is empty.",
                    "Begin with `name: ` and the name of the garden.");
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
            faults.add(
                    place,
                    "document-too-long",
                    "The document has more than " + DocumentLimits.MOST_NODES + " keys and values.",
                    "Split it, or leave out the price lines that are not needed.");
            throw new StopReading();
        }
    }

    private void deeper(Place place) throws StopReading {
        depth++;
        if (depth > DocumentLimits.MOST_DEPTH) {
            faults.add(
                    place,
                    "document-too-deep",
                    "More than " + DocumentLimits.MOST_DEPTH + " groups or lists stand within each other here.",
                    "A garden needs no more than nine; look for a bracket too many.");
            throw new StopReading();
        }
    }

    private boolean isRefused(NodeEvent event, Place place) {
        if (event instanceof AliasEvent || event.getAnchor().isPresent()) {
            refuse(
                    place,
                    "alias",
                    "Anchors (`&`) and aliases (`*`) are not read, here or further on.",
                    "Write the value out in each place, or put a text that begins so in quotes.");
            return true;
        }
        Optional<String> tag = event instanceof ScalarEvent scalar
                ? scalar.getTag()
                : event instanceof CollectionStartEvent start ? start.getTag() : Optional.empty();
        if (tag.isPresent()) {
            refuse(
                    place,
                    "tag",
                    "Tags (`!`) are not read, here or further on.",
                    "Leave it out, or put a text that begins so in quotes.");
            return true;
        }
        return false;
    }

    /** Reported where it is met first; later ones are refused in silence. */
    private void refuse(Place place, String code, String what, String right) {
        if (refused.add(code)) {
            faults.add(place, code, what, right);
        }
    }

    private DocNode scalar(ScalarEvent event, Place place) {
        String text = event.getValue();
        if (text.length() > DocumentLimits.MOST_TEXT) {
            faults.add(
                    place,
                    "text-too-long",
                    "A text of " + text.length() + " characters stands here.",
                    "The most is " + DocumentLimits.MOST_TEXT + ".");
            return new Refused(place);
        }
        return new Scalar(place, text, event.isPlain());
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
            faults.add(key.place(), "key", "A key must be a word or words.", "Write `key: value`.");
        }
        return false;
    }

    private boolean isFirst(String name, Place key, Place group, Map<String, Place> seen) throws StopReading {
        Place first = seen.putIfAbsent(name, key);
        if (first != null) {
            faults.add(
                    group.child(key.line(), key.column(), name),
                    "key-twice",
                    DocumentFaults.quoted(name) + " is written twice in one group, first in line " + first.line() + ".",
                    "Keep one of them.");
        } else if (seen.size() > DocumentLimits.MOST_KEYS) {
            faults.add(
                    key,
                    "document-too-long",
                    "A group of more than " + DocumentLimits.MOST_KEYS + " keys stands here.",
                    "No part of a garden has so many; look at its indentation.");
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
