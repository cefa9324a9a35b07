package borderwright.engine.ground;

import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Strips of sheet from a roll that cover an area, side by side.
 *
 * <p>Strips number ceil((W - o) / (r - o)) over a width W, for a roll r wide and an overlap o. Each strip is only as long as
 * what it covers beyond the strip before; where that falls apart, each part has a strip of its own. Strips run along the side of
 * the box that gives fewest of them and so fewest seams, or along the one that needs least sheet.
 *
 * @param stripsMm lengths, whole mm rounded up, strip after strip
 * @param seamMm length of the seams between strips, mm
 */
record SheetStrips(List<Long> stripsMm, double seamMm) {
    private static final double SAME_MM = 1e-6;

    /** Strips of one band nearer together than this are cut as one. */
    private static final double NEAR_MM = 300;

    private static final GeometryFactory JTS = new GeometryFactory();

    /** What is best. */
    enum Aim {
        FEWEST_SEAMS,
        LEAST_SHEET
    }

    SheetStrips {
        stripsMm = List.copyOf(stripsMm);
    }

    /** Strips of {@code widthMm} that cover a width, overlapping by {@code overlapMm}: at least one. */
    static int across(double coverMm, double widthMm, double overlapMm) {
        return (int) Math.max(1, Math.ceil((coverMm - overlapMm) / (widthMm - overlapMm) - SAME_MM));
    }

    /**
     * The strips for an area under a box with that outline.
     *
     * @param aim what counts first
     */
    static SheetStrips over(Geometry area, Ring outline, double widthMm, double overlapMm, Aim aim) {
        Comparator<SheetStrips> count = Comparator.comparing(s -> s.stripsMm.size());
        Comparator<SheetStrips> length = Comparator.comparing(SheetStrips::sheetMm);
        Comparator<SheetStrips> order =
                aim == Aim.FEWEST_SEAMS ? count.thenComparing(length) : length.thenComparing(count);
        SheetStrips best = along(area, 0, outline, widthMm, overlapMm);
        for (int side = 1; side < outline.size(); side++) {
            SheetStrips other = along(area, side, outline, widthMm, overlapMm);
            best = order.compare(other, best) < 0 ? other : best;
        }
        return best;
    }

    long sheetMm() {
        return stripsMm.stream().mapToLong(Long::longValue).sum();
    }

    private static SheetStrips along(Geometry area, int side, Ring outline, double widthMm, double overlapMm) {
        double x = outline.direction(side).xMm();
        double y = outline.direction(side).yMm();
        Geometry turned = AffineTransformation.rotationInstance(-y, x).transform(area);
        Envelope all = turned.getEnvelopeInternal();
        int count = across(all.getHeight(), widthMm, overlapMm);
        List<Long> strips = new ArrayList<>();
        double seamMm = 0;
        for (int k = 0; k < count; k++) {
            double low = all.getMinY() + k * (widthMm - overlapMm);
            double covered = k == 0 ? low : low + overlapMm;
            Geometry band = JTS.toGeometry(new Envelope(all.getMinX() - 1, all.getMaxX() + 1, covered, low + widthMm));
            strips.addAll(lengths(OverlayNGRobust.overlay(turned, band, OverlayNG.INTERSECTION)));
            if (k > 0) {
                double middle = low + overlapMm / 2;
                seamMm += turned.intersection(JTS.createLineString(new Coordinate[] {
                            new Coordinate(all.getMinX() - 1, middle), new Coordinate(all.getMaxX() + 1, middle)
                        }))
                        .getLength();
            }
        }
        return new SheetStrips(strips, seamMm);
    }

    private static List<Long> lengths(Geometry within) {
        List<Envelope> parts = new ArrayList<>();
        for (int i = 0; i < within.getNumGeometries(); i++) {
            if (within.getGeometryN(i).getArea() > 0) {
                parts.add(within.getGeometryN(i).getEnvelopeInternal());
            }
        }
        parts.sort((a, b) -> Double.compare(a.getMinX(), b.getMinX()));
        List<Long> lengths = new ArrayList<>();
        for (int i = 0; i < parts.size(); ) {
            double from = parts.get(i).getMinX();
            double to = parts.get(i).getMaxX();
            for (i++; i < parts.size() && parts.get(i).getMinX() < to + NEAR_MM; i++) {
                to = Math.max(to, parts.get(i).getMaxX());
            }
            lengths.add((long) Math.ceil(to - from - SAME_MM));
        }
        return lengths;
    }
}
