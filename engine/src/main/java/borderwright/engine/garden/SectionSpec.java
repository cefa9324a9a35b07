package borderwright.engine.garden;

import borderwright.engine.garden.vocabulary.BoardMoisture;
import borderwright.engine.garden.vocabulary.BoardSurface;
import borderwright.engine.measure.Length;
import java.util.Optional;

/**
 * A board's cross-section as measured, and what it is made of.
 *
 * @param name used in build, price lists and stock
 * @param thickness as measured
 * @param width as measured
 * @param toleranceMm how far a board may differ from these sizes, either way
 * @param surface of its faces
 * @param faces which of them may go out
 * @param wood what it is made of
 */
public record SectionSpec(
        String name, Length thickness, Length width, double toleranceMm, BoardSurface surface, Faces faces, Wood wood) {

    /** Which faces of a board may go out. */
    public enum Faces {
        EITHER,
        ONE
    }

    /** Whether wood is preservative treated. */
    public enum Treatment {
        TREATED,
        UNTREATED
    }

    /**
     * What a board is made of.
     *
     * @param species if it is known
     * @param grade strength class or grade, if it is stamped
     * @param treatment whether it is preservative treated
     * @param moisture how wet it arrives
     * @param densityKgPerM3 as it arrives
     */
    public record Wood(
            Optional<String> species,
            Optional<String> grade,
            Treatment treatment,
            BoardMoisture moisture,
            double densityKgPerM3) {}

    public Optional<String> grade() {
        return wood.grade();
    }

    /** Whether a board may be turned over. */
    public boolean mayBeTurned() {
        return faces == Faces.EITHER;
    }

    public boolean isTreated() {
        return wood.treatment() == Treatment.TREATED;
    }

    public boolean arrivesWet() {
        return wood.moisture() == BoardMoisture.WET;
    }

    public double densityKgPerM3() {
        return wood.densityKgPerM3();
    }
}
