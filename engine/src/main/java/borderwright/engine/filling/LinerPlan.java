package borderwright.engine.filling;

import java.util.List;

/**
 * How a liner is cut.
 *
 * @param strips one or more for each planter
 * @param lanes strips that lie side by side across a roll
 * @param rolls rolls needed
 * @param proven whether no fewer rolls hold these strips
 * @param staples staples in all
 */
public record LinerPlan(List<Strip> strips, int lanes, int rolls, boolean proven, int staples) {
    public LinerPlan {
        strips = List.copyOf(strips);
    }

    /**
     * A strip.
     *
     * @param planter the planter whose walls it lines
     * @param lengthMm round the inside of its walls and an overlap, whole mm
     * @param widthMm from the bottom to where it is stapled, mm
     * @param roll which roll it comes from, 1 first
     * @param lane which lane of that roll, 1 first
     */
    public record Strip(String planter, double lengthMm, double widthMm, int roll, int lane) {}

    public double lengthMm() {
        return strips.stream().mapToDouble(Strip::lengthMm).sum();
    }
}
