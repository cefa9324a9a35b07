package borderwright.engine.garden;

import borderwright.engine.garden.vocabulary.SawKind;
import borderwright.engine.garden.vocabulary.TiltSide;
import borderwright.engine.measure.Length;
import java.util.List;

/**
 * A saw at hand and what it can do.
 *
 * @param name of the saw
 * @param kind of saw
 * @param kerf width of its cut
 * @param range what it reaches
 * @param holds which pieces it can hold
 * @param abilities what it can do besides
 */
public record SawSpec(String name, SawKind kind, Length kerf, Range range, Holds holds, List<Ability> abilities) {
    /** What a scale shows (common practice, no source). */
    public static final double USUAL_ANGLE_STEP_DEG = 0.1;

    public SawSpec {
        abilities = List.copyOf(abilities);
    }

    /** What some saws can do: cut against a length stop, and rip along a board. */
    public enum Ability {
        STOP,
        RIP
    }

    /**
     * What a saw reaches.
     *
     * @param tiltDeg greatest blade tilt from square
     * @param tilts to which side the top of its blade leans when it is tilted
     * @param mitreDeg greatest fence or head angle from square
     * @param widestBoardMm widest board that it cuts across
     * @param thickestBoardMm thickest board that it cuts through, square
     * @param angleStepDeg the steps to which its angles can be set
     */
    public record Range(
            double tiltDeg,
            TiltSide tilts,
            double mitreDeg,
            double widestBoardMm,
            double thickestBoardMm,
            double angleStepDeg) {}

    /**
     * Which pieces a saw can hold.
     *
     * @param shortestPieceMm shortest piece that may be held safely
     * @param longestPieceMm longest piece that lies safely on it
     * @param heaviestPieceKg heaviest piece that lies safely on it
     * @param stopReachesMm the farthest from the blade that its length stop can be set; of no meaning without a stop
     */
    public record Holds(double shortestPieceMm, double longestPieceMm, double heaviestPieceKg, double stopReachesMm) {}

    /** The same saw with its cut as measured. */
    public SawSpec withKerf(Length measured) {
        return new SawSpec(name, kind, measured, range, holds, abilities);
    }

    public boolean hasStop() {
        return abilities.contains(Ability.STOP);
    }

    /** Whether its stop can be set to that length. */
    public boolean stopReaches(double lengthMm) {
        return hasStop() && lengthMm <= holds.stopReachesMm;
    }

    public boolean canRip() {
        return abilities.contains(Ability.RIP);
    }

    public double kerfMm() {
        return kerf.mm();
    }

    public double tiltDeg() {
        return range.tiltDeg();
    }

    public TiltSide tilts() {
        return range.tilts();
    }

    public double mitreDeg() {
        return range.mitreDeg();
    }

    public double angleStepDeg() {
        return range.angleStepDeg();
    }

    public double widestBoardMm() {
        return range.widestBoardMm();
    }

    public double thickestBoardMm() {
        return range.thickestBoardMm();
    }

    public double shortestPieceMm() {
        return holds.shortestPieceMm();
    }

    public double longestPieceMm() {
        return holds.longestPieceMm();
    }

    public double heaviestPieceKg() {
        return holds.heaviestPieceKg();
    }
}
