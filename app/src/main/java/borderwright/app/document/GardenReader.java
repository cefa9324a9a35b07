package borderwright.app.document;

import borderwright.app.document.DocNode.Fields;
import borderwright.engine.garden.checks.GardenChecks;
import borderwright.engine.garden.given.GardenDocument;
import borderwright.engine.garden.given.GivenGarden;
import borderwright.engine.problem.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;

/**
 * Reads a garden document: all of it, or all of its faults. Time and memory are bounded by the document's size limits.
 *
 * <p>See docs/decisions/0003.
 */
public final class GardenReader {
    /** The key beside the garden's own under which its variants stand. */
    static final String VARIANTS = "variants";

    private static final RecordShape GARDEN = RecordShape.of(GivenGarden.class);

    private GardenReader() {}

    /**
     * Reads no more of {@code in} than a document may hold, and closes nothing.
     *
     * @throws IOException what {@code in} throws
     */
    public static DocumentAnswer read(InputStream in) throws IOException {
        return read(in.readNBytes(DocumentLimits.MOST_BYTES + 1));
    }

    /** Reads a whole document, YAML or JSON, in UTF-8. */
    public static DocumentAnswer read(byte[] bytes) {
        DocumentFaults faults = new DocumentFaults();
        Optional<GardenDocument> document = DocumentText.read(bytes, faults)
                .flatMap(text -> DocumentTree.read(text, faults))
                .flatMap(root -> group(root, faults))
                .map(root -> document(root, faults));
        return faults.isEmpty()
                ? new DocumentAnswer.Sound(document.orElseThrow())
                : new DocumentAnswer.Faulty(faults.inOrder());
    }

    private static Optional<Fields> group(DocNode root, DocumentFaults faults) {
        if (root instanceof Fields fields) {
            return Optional.of(fields);
        }
        if (!(root instanceof DocNode.Refused)) {
            faults.add(root.place(), DocumentMessage.DOCUMENT_NOT_A_GROUP.of());
        }
        return Optional.empty();
    }

    private static GardenDocument document(Fields root, DocumentFaults faults) {
        Fields fields = root.without(VARIANTS);
        GivenGarden garden = garden(fields, new Binder(faults), faults);
        Optional<DocNode> variants = root.value(VARIANTS).filter(node -> !isNothing(node));
        return new GardenDocument(
                garden,
                variants.map(node -> new VariantReader(fields, faults).read(node))
                        .orElse(List.of()));
    }

    private static boolean isNothing(DocNode node) {
        return node instanceof DocNode.Scalar scalar && scalar.isNothing();
    }

    /** The garden of a tree; blank where faulty, all its faults added. */
    static GivenGarden garden(Fields fields, Binder binder, DocumentFaults faults) {
        GivenGarden garden = (GivenGarden) binder.bind(GARDEN, fields, "");
        if (!faults.isFull()) {
            for (Problem problem : GardenChecks.check(garden)) {
                if (!binder.isDoubtful(problem.where())) {
                    Place place = binder.place(problem.where());
                    faults.add(place, problem.message());
                }
            }
        }
        return garden;
    }
}
