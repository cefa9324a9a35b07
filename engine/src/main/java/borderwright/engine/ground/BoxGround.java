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

    /** Depth of the gravel under the bottom course, mm compacted; 0 where none is laid. */
    public double gravelMm() {
        return bedMm - dugToMm;
    }

    /** What the ground of a box comes to, set one by one; what is left out is nought or empty. */
    static final class Builder {
        private final String box;
        private double areaM2;
        private double bedMm;
        private double dugToMm;
        private double turfM3;
        private double dugM3;
        private double gravelM3;
        private double madeUpM3;
        private double leftM3;
        private int layers;
        private List<CornerLevel> corners = List.of();
        private List<SideLevel> sides = List.of();
        private List<Foot> feet = List.of();

        Builder(String box) {
            this.box = box;
        }

        Builder area(double m2) {
            areaM2 = m2;
            return this;
        }

        /** Levels of the bed and of the ground as dug, mm. */
        Builder levels(double bed, double dugTo) {
            bedMm = bed;
            dugToMm = dugTo;
            return this;
        }

        /** Turf and earth taken away, m3. */
        Builder taken(double turf, double earth) {
            turfM3 = turf;
            dugM3 = earth;
            return this;
        }

        /** All gravel and the part of it that makes up hollows, m3, and the layers it is compacted in. */
        Builder gravel(double m3, double makesUpM3, int inLayers) {
            gravelM3 = m3;
            madeUpM3 = makesUpM3;
            layers = inLayers;
            return this;
        }

        Builder left(double m3) {
            leftM3 = m3;
            return this;
        }

        Builder stands(List<CornerLevel> atCorners, List<SideLevel> alongSides) {
            corners = atCorners;
            sides = alongSides;
            return this;
        }

        Builder feet(List<Foot> under) {
            feet = under;
            return this;
        }

        BoxGround build() {
            return new BoxGround(
                    box, areaM2, bedMm, dugToMm, turfM3, dugM3, gravelM3, madeUpM3, leftM3, layers, corners, sides,
                    feet);
        }
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
     * @param shownMostMm wall above the lowest ground, mm, capping included
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
