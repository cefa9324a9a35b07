package borderwright.engine.strength;

/**
 * How far one side of a box ends up bowing.
 *
 * @param side index of the side; its letter is on its boards
 * @param letter of the side
 * @param finalMm greatest movement out of the box under the fill for good, after creep, slip of the screws included, mm
 * @param course course that moves so, from the bottom, 1 first
 * @param alongMm where, from the side's left corner seen from outside, mm
 * @param passingMm what the worst passing load adds at most, anywhere on the side, mm; comes back when it goes
 * @param holds whether {@code finalMm} keeps the limit
 */
public record SideBow(
        int side, String letter, double finalMm, int course, double alongMm, double passingMm, boolean holds) {}
