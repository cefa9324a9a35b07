package borderwright.engine.ground;

import java.util.List;

/**
 * How a sheet is cut from rolls.
 *
 * @param strips every strip, box by box
 * @param rolls rolls needed
 * @param proven whether no fewer rolls hold these strips
 * @param pins pins along edges and seams, and across the middle
 */
public record SheetPlan(List<Strip> strips, int rolls, boolean proven, int pins) {
    public SheetPlan {
        strips = List.copyOf(strips);
    }

    /**
     * One strip.
     *
     * @param box the box, or the planter, that it is for
     * @param lengthMm its length, whole mm
     * @param roll which roll it comes from, 1 first
     * @param widthMm its width, mm: the roll's, or a part of it
     */
    public record Strip(String box, double lengthMm, int roll, double widthMm) {}

    public double lengthMm() {
        return strips.stream().mapToDouble(Strip::lengthMm).sum();
    }
}
