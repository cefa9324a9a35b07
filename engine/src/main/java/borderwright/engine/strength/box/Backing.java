package borderwright.engine.strength.box;

/**
 * The fill behind one node of a wall: it stands against what comes in, and holds nothing that goes out.
 *
 * @param spring index of its contact
 * @param planter index of the planter whose fill it is
 */
public record Backing(int spring, int planter) {}
