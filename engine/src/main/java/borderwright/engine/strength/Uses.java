package borderwright.engine.strength;

/**
 * What the search for a cure asks of a box.
 *
 * @param bowMm greatest final bow, mm
 * @param worst greatest of the bow over its limit and of all uses; at most 1 holds
 */
public record Uses(double bowMm, double worst) {}
