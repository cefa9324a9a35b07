package borderwright.engine.layout;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.garden.RunSpec;
import borderwright.engine.geometry.Arc;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.geometry.Segment;
import borderwright.engine.layout.plan.DividerLine;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.layout.plan.Layout;
import borderwright.engine.layout.plan.LayoutRules;
import borderwright.engine.survey.Outline;
import borderwright.engine.survey.OutlineEdge;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** What every layout promises, checked with JTS from the layout's own words alone. */
public final class LayoutVerifier {
    private static final GeometryFactory JTS = new GeometryFactory();

    /** Clearances and the border are kept to within this, mm. */
    private static final double TOLERANCE_MM = 2e-6;

    /** A curve is taken as chords that stand off by less than this, mm. */
    private static final double CURVE_MM = 1e-3;

    private LayoutVerifier() {}

    public static void verify(Outline outline, Layout layout, LayoutRules rules, List<RunSpec> runs, String as) {
        Polygon border = border(outline);
        Set<String> names = new HashSet<>();
        List<Polygon> polygons = new ArrayList<>();
        for (FootprintPlan box : layout.boxes()) {
            Ring ring = box.outline();
            String at = as + " box " + box.name() + " " + ring;
            Polygon polygon = ring.toJts();
            polygons.add(polygon);
            assertThat(polygon.isSimple() && polygon.isValid())
                    .as("%s simple", at)
                    .isTrue();
            for (int i = 0; i < ring.size(); i++) {
                double degrees = StrictMath.toDegrees(ring.insideAngle(i));
                assertThat(degrees).as("%s angle %d", at, i).isBetween(45 - 1e-6, 315 + 1e-6);
                assertThat(ring.sideMm(i)).as("%s edge %d", at, i).isGreaterThanOrEqualTo(rules.leastEdgeMm() - 1e-6);
            }
            assertThat(border.covers(polygon.buffer(-2 * CURVE_MM)))
                    .as("%s inside the border", at)
                    .isTrue();
            box.planters()
                    .forEach(name -> assertThat(names.add(name))
                            .as("%s name %s", at, name)
                            .isTrue());
            dividers(box, rules, at);
            keepsClear(outline, box, runs, at);
        }
        for (int i = 0; i < polygons.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (polygons.get(i)
                        .getEnvelopeInternal()
                        .intersects(polygons.get(j).getEnvelopeInternal())) {
                    assertThat(OverlayNGRobust.overlay(polygons.get(i), polygons.get(j), OverlayNG.INTERSECTION)
                                    .getArea())
                            .as("%s overlap of boxes %d and %d", as, j, i)
                            .isLessThan(1e-3);
                }
            }
        }
        layout.unmet().forEach(p -> assertThat(p.code()).as("%s %s", as, p).doesNotStartWith("layout-overlap"));
        layout.openings().forEach(o -> {
            Polygon open = o.ring().toJts();
            assertThat(open.isValid()).as("%s opening %s", as, o).isTrue();
            polygons.forEach(p -> assertThat(OverlayNGRobust.overlay(p, open, OverlayNG.INTERSECTION)
                            .getArea())
                    .as("%s opening %s", as, o)
                    .isLessThan(1));
        });
    }

    private static void dividers(FootprintPlan box, LayoutRules rules, String at) {
        Polygon polygon = box.outline().toJts();
        List<LineString> lines = new ArrayList<>();
        for (DividerLine divider : box.dividers()) {
            Segment line = new Segment(divider.from(), divider.to());
            assertThat(box.outline().side(divider.fromSide()).distanceMm(divider.from()))
                    .as("%s from", at)
                    .isLessThan(1e-6);
            assertThat(box.outline().side(divider.toSide()).distanceMm(divider.to()))
                    .as("%s to", at)
                    .isLessThan(1e-6);
            double square = line.line().direction().dot(box.outline().direction(divider.fromSide()));
            assertThat(square).as("%s divider square", at).isBetween(-1e-9, 1e-9);
            for (int side : List.of(divider.fromSide(), divider.toSide())) {
                Point end = side == divider.fromSide() ? line.from() : line.to();
                for (int corner = side; corner <= side + 1; corner++) {
                    assertThat(box.outline().corner(corner).distanceMm(end))
                            .as("%s divider %s clear of corner %d", at, line, corner)
                            .isGreaterThanOrEqualTo(rules.leastEdgeMm() - 1e-3);
                }
            }
            LineString jts = JTS.createLineString(new Coordinate[] {at(line.from()), at(line.to())});
            assertThat(polygon.buffer(1e-3).covers(jts))
                    .as("%s divider inside", at)
                    .isTrue();
            lines.forEach(other -> assertThat(jts.distance(other))
                    .as("%s dividers apart", at)
                    .isGreaterThanOrEqualTo(rules.leastEdgeMm() - 1e-3));
            lines.add(jts);
        }
    }

    private static void keepsClear(Outline outline, FootprintPlan box, List<RunSpec> runs, String at) {
        RunSpec spec = runs.stream()
                .filter(r -> r.name().equals(box.run()))
                .findFirst()
                .orElseThrow();
        if (spec.gaps().back().isPresent()
                || spec.gaps().start().isPresent()
                || spec.gaps().end().isPresent()) {
            return;
        }
        for (int e = 0; e < outline.ring().size(); e++) {
            OutlineEdge edge = outline.edges().get(e);
            double distance = edge.riseMm() == 0
                    ? box.outline().toJts().distance(JTS.createLineString(new Coordinate[] {
                        at(outline.ring().corner(e)), at(outline.ring().corner(e + 1))
                    }))
                    : box.outline().toJts().distance(arc(outline, e));
            double tolerance = edge.riseMm() == 0 ? TOLERANCE_MM : CURVE_MM + TOLERANCE_MM;
            assertThat(distance)
                    .as("%s clear of edge %d %s", at, e, edge)
                    .isGreaterThanOrEqualTo(edge.clearanceMm() - tolerance);
        }
    }

    public static Polygon border(Outline outline) {
        List<Coordinate> shell = new ArrayList<>();
        for (int e = 0; e < outline.ring().size(); e++) {
            if (outline.edges().get(e).riseMm() == 0) {
                shell.add(at(outline.ring().corner(e)));
            } else {
                Coordinate[] points = arc(outline, e).getCoordinates();
                shell.addAll(List.of(points).subList(0, points.length - 1));
            }
        }
        shell.add(shell.get(0));
        return JTS.createPolygon(shell.toArray(new Coordinate[0]));
    }

    private static LineString arc(Outline outline, int e) {
        Segment chord = outline.ring().side(e);
        Arc arc = new Arc(chord.from(), chord.to(), outline.edges().get(e).riseMm());
        int count = (int) Math.ceil(Math.abs(arc.sweep()) / (2 * StrictMath.acos(1 - CURVE_MM / arc.radiusMm())));
        Coordinate[] points = new Coordinate[count + 1];
        for (int i = 0; i <= count; i++) {
            points[i] = at(arc.at(i / (double) count));
        }
        points[0] = at(chord.from());
        points[count] = at(chord.to());
        return JTS.createLineString(points);
    }

    private static Coordinate at(Point p) {
        return new Coordinate(p.xMm(), p.yMm());
    }
}
