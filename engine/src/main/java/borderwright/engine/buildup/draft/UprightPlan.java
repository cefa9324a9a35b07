package borderwright.engine.buildup.draft;

import borderwright.engine.buildup.parts.Piece.Rip;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The plan of an upright piece inside the walls, and how it is ripped.
 *
 * @param plan its outline
 * @param section what it is cut from
 * @param rip bevel along it, null for none
 * @param bearsOnBoth whether it bears on both faces of the corner that it stands in
 */
public record UprightPlan(
        Ring plan, SectionSpec section, @Nullable Rip rip, boolean bearsOnBoth) {
    /** One that bears on a single board. */
    public static UprightPlan onOneFace(Ring plan, SectionSpec section) {
        return new UprightPlan(plan, section, null, false);
    }

    /** One that bears on both faces of its corner as it is. */
    public static UprightPlan onBothFaces(Ring plan, SectionSpec section) {
        return new UprightPlan(plan, section, null, true);
    }

    /** One that bears on both faces of its corner once it is ripped. */
    public static UprightPlan ripped(Ring plan, SectionSpec section, Rip rip) {
        return new UprightPlan(plan, section, rip, true);
    }

    /**
     * Which way round a section stands against a board.
     *
     * @param faceMm width of its face on the board
     * @param depthMm how far it stands into the box
     */
    public record Stance(double faceMm, double depthMm) {
        /** A narrower face would leave a screw less than 3 diameters of wood on either side. */
        private static final double NARROWEST_FACE_MM = 35;

        /** On its narrow face, deep and so stiff, where that face takes screws; else flat. */
        public static Stance of(SectionSpec section) {
            double thin =
                    StrictMath.min(section.thickness().mm(), section.width().mm());
            double wide =
                    StrictMath.max(section.thickness().mm(), section.width().mm());
            return thin >= NARROWEST_FACE_MM ? new Stance(thin, wide) : new Stance(wide, thin);
        }

        /** On its wide face. */
        public Stance wide() {
            return new Stance(StrictMath.max(faceMm, depthMm), StrictMath.min(faceMm, depthMm));
        }

        public boolean isStout() {
            return StrictMath.min(faceMm, depthMm) >= NARROWEST_FACE_MM;
        }
    }

    /**
     * A plan corner between two upright faces: the wall that an upright stands against, and another one.
     *
     * @param apex where the faces meet
     * @param along unit vector along the wall's face, away from the apex
     * @param inwards unit vector off the wall's face, into the box
     * @param angle between the two faces, radians, below pi
     */
    public record Nook(Point apex, Point along, Point inwards, double angle) {
        Point at(double x, double y) {
            return apex.plus(along.times(x)).plus(inwards.times(y));
        }

        /** How far along the wall an upright of a depth must start to clear the other face. */
        public double clearMm(double depthMm) {
            return StrictMath.max(0, depthMm * cot(angle));
        }

        /** A rectangle against the wall's face. */
        public Ring rectangle(double fromMm, Stance stance) {
            return ring(List.of(
                    at(fromMm, 0),
                    at(fromMm + stance.faceMm, 0),
                    at(fromMm + stance.faceMm, stance.depthMm),
                    at(fromMm, stance.depthMm)));
        }

        /** A rectangle with the edge towards the other face ripped away so that it lies on that face. */
        public Ring ripped(Stance stance) {
            Bearing bearing = bearing(stance);
            double lean = bearing.otherMm * StrictMath.cos(angle);
            double rise = bearing.otherMm * StrictMath.sin(angle);
            double end = bearing.wallMm;
            return rise >= stance.depthMm - 1e-9
                    ? ring(List.of(at(0, 0), at(end, 0), at(end, stance.depthMm), at(lean, stance.depthMm)))
                    : ring(List.of(
                            at(0, 0), at(end, 0), at(end, stance.depthMm), at(lean, stance.depthMm), at(lean, rise)));
        }

        /**
         * How much of a ripped upright lies on each face. Below a right angle the rip takes the whole depth. Above, it is
         * a chamfer that leaves both faces alike where the depth allows: of a face of 50 mm in a corner of 127 degrees
         * 31 mm on either.
         */
        public Bearing bearing(Stance stance) {
            double whole = stance.depthMm / StrictMath.sin(angle);
            if (angle <= StrictMath.PI / 2) {
                return new Bearing(stance.faceMm, whole);
            }
            double lean = -StrictMath.cos(angle);
            double other = StrictMath.min(whole, stance.faceMm / (1 + lean));
            return new Bearing(stance.faceMm - other * lean, other);
        }

        private static Ring ring(List<Point> corners) {
            if (Ring.signedAreaMm2(corners) > 0) {
                return new Ring(corners);
            }
            List<Point> turned = new ArrayList<>(corners);
            Collections.reverse(turned);
            return new Ring(turned);
        }
    }

    /**
     * What bears in a corner, mm along each face.
     *
     * @param wallMm on the face that the upright stands against
     * @param otherMm on the other face
     */
    public record Bearing(double wallMm, double otherMm) {}

    public static double cot(double angle) {
        return StrictMath.cos(angle) / StrictMath.sin(angle);
    }
}
