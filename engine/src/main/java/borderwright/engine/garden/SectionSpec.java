package borderwright.engine.garden;

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
 * @param mayBeTurned whether either face may go out, so that a board may be turned over
 * @param wood what it is made of
 */
public record SectionSpec(
        String name,
        Length thickness,
        Length width,
        double toleranceMm,
        BoardSurface surface,
        boolean mayBeTurned,
        Wood wood) {

    /**
     * What a board is made of.
     *
     * @param species if it is known
     * @param grade strength class or grade, if it is stamped
     * @param treated whether it is preservative treated
     * @param arrivesWet whether it arrives freshly sawn or treated
     * @param densityKgPerM3 as it arrives
     */
    public record Wood(
            Optional<String> species,
            Optional<String> grade,
            boolean treated,
            boolean arrivesWet,
            double densityKgPerM3) {}

    public Optional<String> grade() {
        return wood.grade();
    }

    public boolean isTreated() {
        return wood.treated();
    }

    public boolean arrivesWet() {
        return wood.arrivesWet();
    }

    public double densityKgPerM3() {
        return wood.densityKgPerM3();
    }
}
