package borderwright.engine.cautions;

/**
 * What a piece weighs as it arrives, and who lifts it.
 *
 * @param piece its label
 * @param kg its weight, kg
 * @param people who lift it together
 */
public record PieceLift(String piece, double kg, int people) {}
