package borderwright.app.document;

import borderwright.engine.garden.given.GardenDocument;
import java.util.List;

/** What became of a document. */
public sealed interface DocumentAnswer {

    /** All of it is sound. */
    record Sound(GardenDocument document) implements DocumentAnswer {}

    /**
     * It has faults.
     *
     * @param faults at least one, in the order of the document
     */
    record Faulty(List<LocatedProblem> faults) implements DocumentAnswer {
        public Faulty {
            faults = List.copyOf(faults);
            if (faults.isEmpty()) {
                throw new IllegalArgumentException("a faulty document has at least one fault");
            }
        }
    }
}
