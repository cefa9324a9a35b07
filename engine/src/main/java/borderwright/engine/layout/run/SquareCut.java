package borderwright.engine.layout.run;

/**
 * A square cut across a run: where a planter ends and the next begins.
 *
 * @param leg index of the leg in its run
 * @param stationMm station on it, mm: the middle of the divider, or of the gap
 */
public record SquareCut(int leg, double stationMm) {}
