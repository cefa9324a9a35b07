package borderwright.engine.garden;

import borderwright.engine.garden.vocabulary.SawKind;
import borderwright.engine.measure.Length;

/**
 * A saw at hand and what it can do.
 *
 * @param name of the saw
 * @param kind of saw
 * @param kerf width of its cut
 * @param range what it reaches
 * @param hasStop whether it has a length stop
 * @param canRip whether it may rip along a board
 */
public record SawSpec(String name, SawKind kind, Length kerf, Range range, boolean hasStop, boolean canRip) {

    /**
     * What a saw reaches.
     *
     * @param tiltDeg greatest blade tilt from square
     * @param mitreDeg greatest fence or head angle from square
     * @param crosscutMm widest board that it cuts across
     * @param depthMm thickest board that it cuts through, square
     * @param shortestMm shortest piece that may be held safely
     */
    public record Range(double tiltDeg, double mitreDeg, double crosscutMm, double depthMm, double shortestMm) {}

    /** The same saw with its cut as measured. */
    public SawSpec withKerf(Length measured) {
        return new SawSpec(name, kind, measured, range, hasStop, canRip);
    }

    public double kerfMm() {
        return kerf.mm();
    }

    public double tiltDeg() {
        return range.tiltDeg();
    }

    public double mitreDeg() {
        return range.mitreDeg();
    }

    public double crosscutMm() {
        return range.crosscutMm();
    }

    public double depthMm() {
        return range.depthMm();
    }

    public double shortestMm() {
        return range.shortestMm();
    }
}
