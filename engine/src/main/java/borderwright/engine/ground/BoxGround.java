package borderwright.engine.ground;

import java.util.List;

/**
 * The ground made ready for one box.
 *
 * @param box its name
 * @param areaM2 area made ready, m2
 * @param bedMm level of the bed under the bottom course, mm above the datum
 * @param dugToMm level dug to, mm above the datum: the bed less the gravel; on hard ground the bed
 * @param turfM3 turf stripped, m3
 * @param dugM3 earth dug below the turf, m3 in place
 * @param gravelM3 gravel, m3 compacted: its depth over its area, and what makes up hollows below the level dug to
 * @param madeUpM3 the part of it that makes up hollows, m3
 * @param leftM3 ground left standing inside the walls above the bed where it is not dug, m3, less the hollows there; soil
 *     need not fill it
 * @param layers layers in which the gravel is compacted, none over 100 mm; 0 without gravel
 * @param corners ground at each corner of the box, in the order of its outline
 * @param sides how each side stands in the ground, in the order of its outline
 * @param feet feet under it on hard ground; empty where it is dug in
 */
public record BoxGround(
        String box,
        double areaM2,
        double bedMm,
        double dugToMm,
        double turfM3,
        double dugM3,
        double gravelM3,
        double madeUpM3,
        double leftM3,
        int layers,
        List<CornerLevel> corners,
        List<SideLevel> sides,
        List<Foot> feet) {
    public BoxGround {
        corners = List.copyOf(corners);
        sides = List.copyOf(sides);
        feet = List.copyOf(feet);
    }

    /**
     * Ground at a corner.
     *
     * @param groundMm level of the ground, mm above the datum
     * @param cutMm from the ground down to the level dug to, mm; 0 where it lies lower
     * @param fillMm from the ground up to it, mm; 0 where it lies higher
     */
    public record CornerLevel(double groundMm, double cutMm, double fillMm) {}

    /**
     * A side in the ground, as seen from outside.
     *
     * @param side its number in the box's outline
     * @param lowMm lowest ground along it, mm above the datum
     * @param highMm highest ground along it, mm
     * @param shownMostMm wall above the lowest ground, mm; a capping is not counted
     * @param shownLeastMm wall above the highest ground, mm
     * @param buried courses below the ground all along it
     * @param partBuried courses that the ground meets somewhere along it
     */
    public record SideLevel(
            int side,
            double lowMm,
            double highMm,
            double shownMostMm,
            double shownLeastMm,
            int buried,
            int partBuried) {}

    /**
     * A foot.
     *
     * @param side number of the side that it stands under
     * @param alongMm distance from the side's first corner, mm
     * @param heightMm from the ground up to the bed, mm
     */
    public record Foot(int side, double alongMm, double heightMm) {}
}
