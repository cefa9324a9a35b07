package borderwright.app.document;

import borderwright.app.document.DocNode.Entry;
import borderwright.app.document.DocNode.Fields;
import borderwright.app.document.DocNode.Items;
import borderwright.app.document.DocNode.Refused;
import borderwright.app.document.DocNode.Scalar;
import borderwright.engine.garden.given.GardenDocument.Variant;
import borderwright.engine.garden.given.GivenGarden;
import borderwright.engine.problem.Problem;
import borderwright.engine.spelling.NearestName;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reads the variants of a garden, each bound as a whole garden.
 *
 * <p>See docs/decisions/0004.
 */
final class VariantReader {
    static final String NAME = "name";
    static final String CHANGES = "changes";
    private static final String CHANGES_EXAMPLE = "changes: {build: {walls: treated 22 x 150}}";
    private static final String EXAMPLE = "- {name: treated boards, " + CHANGES_EXAMPLE + "}";

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
                faults.add(node.place(), DocumentMessage.VARIANTS_NOT_A_LIST.of(EXAMPLE));
            }
            return List.of();
        }
        if (list.items().size() > DocumentLimits.MOST_VARIANTS) {
            faults.add(
                    list.place(),
                    DocumentMessage.VARIANTS_TOO_MANY.of(list.items().size(), DocumentLimits.MOST_VARIANTS));
            return List.of();
        }
        List<Variant> variants = new ArrayList<>();
        list.items().forEach(item -> variant(item).ifPresent(variants::add));
        return variants;
    }

    private Optional<Variant> variant(DocNode node) {
        if (!(node instanceof Fields fields)) {
            if (!(node instanceof Refused)) {
                faults.add(node.place(), DocumentMessage.VARIANT_NOT_A_GROUP.of(EXAMPLE));
            }
            return Optional.empty();
        }
        for (Entry entry : fields.entries()) {
            if (!List.of(NAME, CHANGES).contains(entry.key())) {
                faults.add(
                        entry.keyPlace(),
                        DocumentMessage.VARIANT_KEY_UNKNOWN.of(
                                DocumentFaults.shortened(entry.key()),
                                NearestName.perhaps(entry.key(), List.of(NAME, CHANGES))));
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
            faults.add(node.map(DocNode::place).orElse(variant.place()), DocumentMessage.VARIANT_WITHOUT_NAME.of());
            return Optional.empty();
        }
        String name = scalar.text().strip();
        if (!names.add(name)) {
            faults.add(scalar.place(), DocumentMessage.VARIANT_NAME_TWICE.of(DocumentFaults.shortened(name)));
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
                    DocumentMessage.VARIANT_CHANGES_NOTHING.of(CHANGES_EXAMPLE));
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
                        changes.place().path(),
                        DocumentMessage.VARIANT_AT_FAULT.of(problem.where(), fault.line(), problem.message())));
    }
}
