package borderwright.app.document;

import borderwright.app.document.DocNode.Entry;
import borderwright.app.document.DocNode.Fields;
import borderwright.app.document.DocNode.Items;
import borderwright.app.document.DocNode.Refused;
import borderwright.app.document.DocNode.Scalar;
import borderwright.engine.garden.given.GardenDocument.Variant;
import borderwright.engine.garden.given.GivenGarden;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.problem.Problem;
import borderwright.pack.language.Language;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads the variants of a garden, each bound as a whole garden. */
final class VariantReader {
    static final String NAME = "name";
    static final String CHANGES = "changes";
    private static final String EXAMPLE = "`- {name: treated boards, changes: {build: {walls: treated 22 x 150}}}`";

    private final Fields garden;
    private final DocumentFaults faults;
    private final Set<String> names = new HashSet<>();

    VariantReader(Fields garden, DocumentFaults faults) {
        this.garden = garden;
        this.faults = faults;
    }

    List<Variant> read(DocNode node) {
        if (!(node instanceof Items list)) {
            if (!(node instanceof Refused)) {
                faults.add(node.place(), "kind", "Variants are a list.", "Write " + EXAMPLE + ".");
            }
            return List.of();
        }
        if (list.items().size() > DocumentLimits.MOST_VARIANTS) {
            faults.add(
                    list.place(),
                    "document-too-long",
                    list.items().size() + " variants stand here.",
                    "The most is " + DocumentLimits.MOST_VARIANTS + ".");
            return List.of();
        }
        List<Variant> variants = new ArrayList<>();
        list.items().forEach(item -> variant(item).ifPresent(variants::add));
        return variants;
    }

    private Optional<Variant> variant(DocNode node) {
        if (!(node instanceof Fields fields)) {
            if (!(node instanceof Refused)) {
                faults.add(node.place(), "kind", "A variant is a group of keys.", "Write " + EXAMPLE + ".");
            }
            return Optional.empty();
        }
        for (Entry entry : fields.entries()) {
            if (!List.of(NAME, CHANGES).contains(entry.key())) {
                String perhaps = DocumentFaults.perhaps(entry.key(), List.of(NAME, CHANGES));
                faults.add(
                        entry.keyPlace(),
                        "key-unknown",
                        DocumentFaults.quoted(entry.key()) + " is not a key of a variant.",
                        "Its keys are name, changes; what differs stands under `changes`." + perhaps);
            }
        }
        Optional<String> name = name(fields);
        Optional<Fields> changes = changes(fields);
        return changes.flatMap(c -> changed(c, name.orElse("")));
    }

    private Optional<String> name(Fields variant) {
        Optional<DocNode> node = variant.value(NAME);
        if (node.isEmpty()
                || !(node.get() instanceof Scalar scalar)
                || scalar.text().isBlank()) {
            faults.add(
                    node.map(DocNode::place).orElse(variant.place()),
                    "key-missing",
                    "This variant has no name.",
                    "Write `name: ` and what you call it.");
            return Optional.empty();
        }
        String name = scalar.text().strip();
        if (!names.add(name)) {
            faults.add(
                    scalar.place(),
                    "name-twice",
                    "Two variants are named " + DocumentFaults.quoted(name) + ".",
                    "Give each a name of its own.");
        }
        return Optional.of(name);
    }

    private Optional<Fields> changes(Fields variant) {
        Optional<DocNode> node = variant.value(CHANGES);
        if (node.isPresent() && node.get() instanceof Fields fields) {
            return Optional.of(fields);
        }
        if (node.isEmpty() || !(node.get() instanceof Refused)) {
            faults.add(
                    node.map(DocNode::place).orElse(variant.place()),
                    "key-missing",
                    "This variant changes nothing.",
                    "Write under `changes` the part of the garden that differs, such as `changes: {build: {walls: treated 22 x 150}}`.");
        }
        return Optional.empty();
    }

    /** The changed garden, read as if it had been written in full; only faults that the garden itself does not have are added. */
    private Optional<Variant> changed(Fields changes, String name) {
        Overlay overlay = new Overlay();
        Fields merged = overlay.lay(changes, garden, RecordShape.of(GivenGarden.class));
        DocumentFaults own = new DocumentFaults();
        GivenGarden changed = GardenReader.garden(merged, new Binder(own), own);
        for (LocatedProblem fault : own.found()) {
            if (!faults.contains(fault)) {
                faults.add(isWithin(fault, changes) ? fault : because(fault, changes));
            }
        }
        return own.isEmpty() ? Optional.of(new Variant(name, overlay.changed(), changed)) : Optional.empty();
    }

    private static boolean isWithin(LocatedProblem fault, Fields changes) {
        return fault.problem().where().startsWith(changes.place().path());
    }

    /** A fault in an unchanged part that only these changes make: it belongs to them. */
    private static LocatedProblem because(LocatedProblem fault, Fields changes) {
        Problem problem = fault.problem();
        return new LocatedProblem(
                changes.place().line(),
                changes.place().column(),
                new Problem(
                        problem.code(),
                        changes.place().path(),
                        "With these changes `" + problem.where() + "` in line " + fault.line() + " is at fault: "
                                + problem.what(Language.english().in(UnitSystem.METRIC)),
                        problem.right(Language.english().in(UnitSystem.METRIC))));
    }
}
