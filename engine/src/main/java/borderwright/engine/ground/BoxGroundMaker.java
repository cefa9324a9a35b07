package borderwright.engine.ground;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.PostHole;
import borderwright.engine.garden.GroundSpec;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.ground.BoxGround.CornerLevel;
import borderwright.engine.ground.BoxGround.Foot;
import borderwright.engine.ground.BoxGround.SideLevel;
import borderwright.engine.survey.GroundHeights;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Works out the ground of one box. */
final class BoxGroundMaker {
    private static final double LONGEST_FACET_MM = 500;
    private static final double LAYER_MM = 100;
    private static final double SAMPLE_MM = 250;
    private static final double SAME_MM = 1e-6;
    private static final double MM2_PER_M2 = 1e6;
    private static final double MM3_PER_M3 = 1e9;

    private final GroundHeights ground;
    private final GroundSpec spec;

    BoxGroundMaker(GroundHeights ground, GroundSpec spec) {
        this.ground = ground;
        this.spec = spec;
    }

    BoxGround make(Box box, Geometry area, Geometry dugArea) {
        double bed = box.plan().bedMm();
        boolean hard = spec.surface().isHard();
        double gravel = hard ? 0 : spec.gravelMm(box.plan().heightMm());
        double dugTo = bed - gravel;
        // Where only the walls stand on gravel the ground inside is left as it is, its turf stripped.
        CutAndFill dug = hard ? CutAndFill.NONE : mesh(dugArea).against(dugTo, spec.turfMm());
        double holesMm3 = hard
                ? 0
                : PostHole.of(box.pieces(), bed).stream()
                        .mapToDouble(PostHole::dugMm3)
                        .sum();
        double gravelMm3 = gravel > 0 ? dugArea.getArea() * gravel + dug.fillMm3() : 0;
        return new BoxGround.Builder(box.plan().name())
                .area(area.getArea() / MM2_PER_M2)
                .levels(bed, dugTo)
                .taken(hard ? 0 : area.getArea() * spec.turfMm() / MM3_PER_M3, (dug.cutMm3() + holesMm3) / MM3_PER_M3)
                .gravel(
                        gravelMm3 / MM3_PER_M3,
                        dug.fillMm3() / MM3_PER_M3,
                        gravel > 0 ? (int) Math.ceil(gravel / LAYER_MM - SAME_MM) : 0)
                .left(hard ? 0 : leftMm3(area, dugArea, bed) / MM3_PER_M3)
                .stands(corners(box.plan().outline(), dugTo), sides(box))
                .feet(hard ? feet(box.plan().outline(), bed) : List.of())
                .build();
    }

    private double leftMm3(Geometry area, Geometry dugArea, double bed) {
        Geometry undug = OverlayNGRobust.overlay(area, dugArea, OverlayNG.DIFFERENCE);
        if (undug.getArea() < MM2_PER_M2 * SAME_MM) {
            return 0;
        }
        CutAndFill left = mesh(undug).against(bed, spec.turfMm());
        return left.cutMm3() - left.fillMm3();
    }

    private SurfaceMesh mesh(Geometry area) {
        return SurfaceMesh.over(area, ground::heightMm, LONGEST_FACET_MM);
    }

    private List<CornerLevel> corners(Ring outline, double dugTo) {
        boolean hard = spec.surface().isHard();
        List<CornerLevel> levels = new ArrayList<>();
        for (Point corner : outline.corners()) {
            double level = ground.heightMm(corner);
            levels.add(new CornerLevel(level, hard ? 0 : Math.max(0, level - dugTo), Math.max(0, dugTo - level)));
        }
        return levels;
    }

    private List<SideLevel> sides(Box box) {
        Ring outline = box.plan().outline();
        List<SideLevel> sides = new ArrayList<>();
        double top = box.topMm();
        for (int i = 0; i < outline.size(); i++) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            int steps = (int) Math.max(1, Math.ceil(outline.sideMm(i) / SAMPLE_MM));
            for (int k = 0; k <= steps; k++) {
                double level = ground.heightMm(outline.corner(i).towards(outline.corner(i + 1), k / (double) steps));
                low = Math.min(low, level);
                high = Math.max(high, level);
            }
            int buried = 0;
            int part = 0;
            for (Box.Course course : box.courses()) {
                if (course.topMm() <= low + SAME_MM) {
                    buried++;
                } else if (course.bottomMm() < high - SAME_MM) {
                    part++;
                }
            }
            sides.add(new SideLevel(i, low, high, top - low, top - high, buried, part));
        }
        return sides;
    }

    /** A foot at each corner and no farther apart than given between. */
    private List<Foot> feet(Ring outline, double bed) {
        List<Foot> feet = new ArrayList<>();
        for (int i = 0; i < outline.size(); i++) {
            double side = outline.sideMm(i);
            int spans = (int) Math.max(1, Math.ceil(side / spec.feet().spacingMm() - SAME_MM));
            for (int k = 0; k < spans; k++) {
                Point at = outline.corner(i).towards(outline.corner(i + 1), k / (double) spans);
                feet.add(new Foot(i, side * k / spans, bed - ground.heightMm(at)));
            }
        }
        return feet;
    }
}
