package borderwright.engine.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.ground.SurfaceMesh.Facet;
import borderwright.engine.survey.GroundHeights;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/**
 * Volumes against exact polyhedra in rational arithmetic, on 1,000 seeded terrains.
 *
 * <p>The reference shares nothing with the fast formula: it clips each triangle in space at the level by Sutherland and
 * Hodgman, closes the part above (below) with a floor and walls, and sums signed tetrahedra from the origin over every face
 * of that polyhedron, all without rounding.
 */
class ExactTerrainTest {
    private static final long SEED = 20260302;

    /** A point in homogeneous coordinates, (x/w, y/w, z/w): decimals hold every double as it is, and clipping divides nothing. */
    private record P3(BigDecimal x, BigDecimal y, BigDecimal z, BigDecimal w) {}

    @Test
    void cutAndFillAreThoseOfTheExactPolyhedra() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int n = 0; n < 1000; n++) {
            Ring ring = ring(random);
            GroundHeights ground = ground(random, ring);
            double level = -400 + random.nextInt(200);
            double strip = random.nextInt(3) * 25;
            SurfaceMesh mesh = SurfaceMesh.over(ring.toJts(), ground::heightMm, 1500);
            CutAndFill fast = mesh.against(level, strip);
            BigDecimal from = new BigDecimal(level + strip);
            BigFraction cut = BigFraction.ZERO;
            BigFraction fill = BigFraction.ZERO;
            for (Facet facet : mesh.facets()) {
                cut = cut.add(volume(facet, from, 1));
                fill = fill.add(volume(facet, from, -1));
            }
            String which = "terrain " + n + " of seed " + SEED;
            double scale = ring.areaMm2();
            assertThat(mesh.areaMm2()).as(which).isCloseTo(ring.areaMm2(), within(1e-9 * ring.areaMm2()));
            assertThat(fast.cutMm3()).as(which).isCloseTo(cut.doubleValue(), within(1e-9 * scale));
            assertThat(fast.fillMm3()).as(which).isCloseTo(fill.doubleValue(), within(1e-9 * scale));
        }
    }

    /** Volume of the part of the prism over a facet that lies above the level (sign 1) or below it (sign -1). */
    private static BigFraction volume(Facet facet, BigDecimal level, int sign) {
        List<P3> top = new ArrayList<>(List.of(
                point(facet.a(), facet.aMm(), level),
                point(facet.b(), facet.bMm(), level),
                point(facet.c(), facet.cMm(), level)));
        List<P3> kept = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            P3 here = top.get(i);
            P3 next = top.get((i + 1) % 3);
            int hereSign = sign * here.z.signum();
            int nextSign = sign * next.z.signum();
            if (hereSign >= 0) {
                kept.add(here);
            }
            if (hereSign * nextSign < 0) {
                kept.add(new P3(
                        crossing(here.x, here, next.x, next),
                        crossing(here.y, here, next.y, next),
                        BigDecimal.ZERO,
                        here.z.subtract(next.z)));
            }
        }
        if (kept.size() < 3) {
            return BigFraction.ZERO;
        }
        BigFraction six = BigFraction.ZERO;
        int size = kept.size();
        for (int i = 1; i + 1 < size; i++) {
            six = six.add(tetrahedron(kept.get(0), kept.get(i), kept.get(i + 1)));
            six = six.add(tetrahedron(floor(kept.get(0)), floor(kept.get(i + 1)), floor(kept.get(i))));
        }
        for (int i = 0; i < size; i++) {
            P3 a = kept.get(i);
            P3 b = kept.get((i + 1) % size);
            six = six.add(tetrahedron(floor(a), floor(b), b));
            six = six.add(tetrahedron(floor(a), b, a));
        }
        return six.divide(6).abs();
    }

    private static BigFraction tetrahedron(P3 a, P3 b, P3 c) {
        BigDecimal six = a.x.multiply(b.y.multiply(c.z).subtract(b.z.multiply(c.y)))
                .add(a.y.multiply(b.z.multiply(c.x).subtract(b.x.multiply(c.z))))
                .add(a.z.multiply(b.x.multiply(c.y).subtract(b.y.multiply(c.x))));
        return six.signum() == 0
                ? BigFraction.ZERO
                : quotient(six, a.w.multiply(b.w).multiply(c.w));
    }

    private static P3 floor(P3 p) {
        return new P3(p.x, p.y, BigDecimal.ZERO, p.w);
    }

    private static P3 point(Point p, double z, BigDecimal level) {
        return new P3(
                new BigDecimal(p.xMm()), new BigDecimal(p.yMm()), new BigDecimal(z).subtract(level), BigDecimal.ONE);
    }

    /** A coordinate, times w, of where the side between two corners crosses the level: w is how far their heights differ. */
    private static BigDecimal crossing(BigDecimal from, P3 here, BigDecimal to, P3 next) {
        return to.multiply(here.z).subtract(from.multiply(next.z));
    }

    private static BigFraction quotient(BigDecimal numerator, BigDecimal denominator) {
        int scale = Math.max(numerator.scale(), denominator.scale());
        return new BigFraction(
                numerator.setScale(scale).unscaledValue(),
                denominator.setScale(scale).unscaledValue());
    }

    private static Ring ring(SplittableRandom random) {
        double l = 600 + random.nextInt(3000);
        double w = 400 + random.nextInt(900);
        double turn = random.nextDouble(6.3);
        List<Point> corners = random.nextBoolean()
                ? List.of(new Point(0, 0), new Point(l, 0), new Point(l, w), new Point(0, w))
                : List.of(
                        new Point(0, 0),
                        new Point(l, 0),
                        new Point(l, w),
                        new Point(l / 3, w),
                        new Point(l / 3, 2 * w),
                        new Point(0, 2 * w));
        Point along = new Point(StrictMath.cos(turn), StrictMath.sin(turn));
        return new Ring(corners.stream()
                .map(p -> along.times(p.xMm()).plus(along.left().times(p.yMm())))
                .toList());
    }

    private static GroundHeights ground(SplittableRandom random, Ring ring) {
        List<GroundHeights.Spot> spots = new ArrayList<>();
        int count = 3 + random.nextInt(6);
        for (int i = 0; i < count; i++) {
            Point near = ring.corner(random.nextInt(ring.size()));
            Point at = near.plus(new Point(random.nextInt(-800, 800), random.nextInt(-800, 800)));
            spots.add(new GroundHeights.Spot("P" + i, at, -450 + random.nextInt(300), 3));
        }
        return new GroundHeights(spots);
    }
}
