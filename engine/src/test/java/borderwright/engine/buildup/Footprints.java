package borderwright.engine.buildup;

import borderwright.engine.buildup.parts.BuildMeans;
import borderwright.engine.garden.BuildSpec;
import borderwright.engine.garden.SawSpec;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.given.GivenBuild;
import borderwright.engine.garden.given.GivenSaw;
import borderwright.engine.garden.given.GivenSection;
import borderwright.engine.garden.resolve.BuildResolver;
import borderwright.engine.garden.resolve.WoodResolver;
import borderwright.engine.garden.vocabulary.BoardMoisture;
import borderwright.engine.garden.vocabulary.CornerStyle;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.garden.vocabulary.SawKind;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.DividerLine;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.layout.plan.SidePlan;
import borderwright.engine.measure.Angle;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

/** Footprints, sections and saws for tests, made up. */
public final class Footprints {
    public static final SectionSpec LARCH = section("larch 25 x 150", 25, 150, false);
    public static final SectionSpec BATTEN = section("batten 47 x 50", 47, 50, false);
    public static final SectionSpec POST = section("post 75 x 100", 75, 100, false);
    public static final SectionSpec TREATED = section("treated 47 x 200", 47, 200, true);
    public static final SectionSpec TREATED_BATTEN = section("treated batten 47 x 50", 47, 50, true);
    public static final List<SectionSpec> SECTIONS = List.of(LARCH, BATTEN, POST, TREATED, TREATED_BATTEN);

    private Footprints() {}

    public static SectionSpec section(String name, double thickness, double width, boolean treated) {
        return WoodResolver.section(GivenSection.builder(name, Length.ofMm(thickness), Length.ofMm(width))
                .species("larch")
                .treated(treated)
                .moisture(BoardMoisture.WET)
                .build());
    }

    public static SawSpec saw(SawKind kind, double tiltDeg, double mitreDeg) {
        return WoodResolver.saw(
                GivenSaw.builder(kind.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' '), kind)
                        .kerf(Length.ofMm(3))
                        .tilt(Angle.ofDegrees(tiltDeg))
                        .mitre(Angle.ofDegrees(mitreDeg))
                        .widestBoard(Length.ofMm(400))
                        .thickestBoard(Length.ofMm(90))
                        .shortestPiece(Length.ofMm(150))
                        .lengthStop(true)
                        .build());
    }

    public static BuildSpec rules(String walls, String braces, @Nullable CornerStyle corners) {
        return rules(walls, braces, corners, null);
    }

    public static BuildSpec rules(
            String walls, String braces, @Nullable CornerStyle corners, @Nullable Length tieSpacing) {
        return BuildResolver.build(GivenBuild.builder(walls)
                .braces(braces)
                .cornerJoint(corners)
                .tieSpacing(tieSpacing)
                .build());
    }

    public static BuildMeans means(double tiltDeg, Map<String, Double> longest) {
        return new BuildMeans(SECTIONS, List.of(saw(SawKind.TABLE_SAW, tiltDeg, 60)), longest, UnitSystem.METRIC);
    }

    public static FootprintPlan plan(Ring outline, double heightMm) {
        return plan(outline, List.of(), heightMm, 0, false);
    }

    public static FootprintPlan plan(
            Ring outline, List<DividerLine> dividers, double heightMm, double platformMm, boolean capped) {
        List<SidePlan> sides = new ArrayList<>();
        for (int i = 0; i < outline.size(); i++) {
            SidePlan.Role role =
                    i == 0 ? SidePlan.Role.FRONT : i == outline.size() / 2 ? SidePlan.Role.BACK : SidePlan.Role.END;
            sides.add(SidePlan.free(role, EdgeKind.OPEN, 0));
        }
        List<String> planters = new ArrayList<>();
        for (int i = 0; i <= dividers.size(); i++) {
            planters.add("F" + (i + 1));
        }
        String name = dividers.isEmpty() ? "F1" : "F1-F" + planters.size();
        FootprintPlan.Builder plan =
                FootprintPlan.builder().name(name).run("run").outline(outline).sides(sides);
        plan.dividers(dividers).planters(planters).bedMm(0).heightMm(heightMm);
        return plan.platformMm(platformMm).capped(capped).build();
    }

    /** A rectangle with its front as side 0 and dividers at the given distances from its left end. */
    public static FootprintPlan run(double lengthMm, double depthMm, double heightMm, double... dividersAt) {
        List<DividerLine> dividers = new ArrayList<>();
        for (int i = dividersAt.length - 1; i >= 0; i--) {
            dividers.add(new DividerLine(0, new Point(dividersAt[i], 0), 2, new Point(dividersAt[i], depthMm)));
        }
        return plan(Ring.rectangle(0, 0, lengthMm, depthMm), dividers, heightMm, 0, false);
    }

    public static Ring mirrored(Ring ring) {
        List<Point> corners = new ArrayList<>();
        for (int i = ring.size(); i > 0; i--) {
            Point p = ring.corner(i);
            corners.add(new Point(-p.xMm(), p.yMm()));
        }
        return new Ring(corners);
    }

    /** A random simple polygon with inside angles of 45 to 315 degrees and sides of at least 300 mm. */
    public static Ring random(RandomGenerator random) {
        while (true) {
            Optional<Ring> ring = switch (random.nextInt(5)) {
                case 0 -> turned(rectangle(random), random);
                case 1 -> around(random, 3 + random.nextInt(7), 0.95);
                case 2 -> around(random, 5 + random.nextInt(6), 0.35);
                case 3 -> bend(random);
                default -> turned(notched(random), random);
            };
            if (ring.isPresent() && isGood(ring.get())) {
                return ring.get();
            }
        }
    }

    public static boolean isGood(Ring ring) {
        for (int i = 0; i < ring.size(); i++) {
            double degrees = StrictMath.toDegrees(ring.insideAngle(i));
            if (degrees < 45 || degrees > 315 || ring.sideMm(i) < 300) {
                return false;
            }
        }
        return ring.toJts().isSimple();
    }

    private static List<Point> rectangle(RandomGenerator random) {
        double x = random.nextDouble(400, 6000);
        double y = random.nextDouble(400, 1500);
        return List.of(new Point(0, 0), new Point(x, 0), new Point(x, y), new Point(0, y));
    }

    /** A rectangle with one corner taken out, or a U. */
    private static List<Point> notched(RandomGenerator random) {
        double x = random.nextDouble(1500, 5000);
        double y = random.nextDouble(1500, 4000);
        double a = random.nextDouble(400, x - 500);
        double b = random.nextDouble(400, y - 500);
        if (random.nextBoolean()) {
            return List.of(
                    new Point(0, 0),
                    new Point(x, 0),
                    new Point(x, b),
                    new Point(a, b),
                    new Point(a, y),
                    new Point(0, y));
        }
        double c = random.nextDouble(500, x / 2 - 150);
        double d = x - random.nextDouble(500, x / 2 - 150);
        return List.of(
                new Point(0, 0),
                new Point(x, 0),
                new Point(x, y),
                new Point(d, y),
                new Point(d, b),
                new Point(c, b),
                new Point(c, y),
                new Point(0, y));
    }

    /** A strip that turns a corner, as round the bend of a border. */
    private static Optional<Ring> bend(RandomGenerator random) {
        double depth = random.nextDouble(400, 1200);
        double inside = StrictMath.toRadians(random.nextDouble(50, 179));
        double back = depth / StrictMath.tan(inside / 2);
        double a = random.nextDouble(500, 4000) + back;
        double b = random.nextDouble(500, 4000) + back;
        Point u = new Point(1, 0);
        Point v = new Point(StrictMath.cos(inside), StrictMath.sin(inside));
        Point elbow = new Point(back, depth);
        List<Point> corners = List.of(
                new Point(0, 0),
                u.times(a),
                u.times(a).plus(new Point(0, depth)),
                elbow,
                v.times(b).minus(v.left().times(depth)),
                v.times(b));
        return turned(corners, random);
    }

    /** Corners round a centre; {@code least} of the greatest radius is the smallest. */
    private static Optional<Ring> around(RandomGenerator random, int n, double least) {
        double radius = random.nextDouble(500, 2500);
        double squash = random.nextDouble(0.5, 1);
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double angle = 2 * StrictMath.PI * (i + random.nextDouble(-0.35, 0.35)) / n;
            double r = radius * random.nextDouble(least, 1);
            corners.add(new Point(r * StrictMath.cos(angle), squash * r * StrictMath.sin(angle)));
        }
        return turned(corners, random);
    }

    private static Optional<Ring> turned(List<Point> corners, RandomGenerator random) {
        double angle = random.nextInt(3) == 0 ? 0 : random.nextDouble(2 * StrictMath.PI);
        Point x = new Point(StrictMath.cos(angle), StrictMath.sin(angle));
        Point moved = new Point(random.nextDouble(-20_000, 20_000), random.nextDouble(-20_000, 20_000));
        List<Point> placed = corners.stream()
                .map(p -> x.times(p.xMm()).plus(x.left().times(p.yMm())).plus(moved))
                .toList();
        return Ring.signedAreaMm2(placed) > 0 ? Optional.of(new Ring(placed)) : Optional.empty();
    }

    /** Dividers between two sides of a ring that face each other, each well clear of corners and of the others. */
    public static List<DividerLine> dividers(Ring ring, RandomGenerator random) {
        for (int attempt = 0; attempt < 6; attempt++) {
            int from = random.nextInt(ring.size());
            int to = random.nextInt(ring.size());
            int count = 1 + random.nextInt(3);
            if (StrictMath.floorMod(from - to, ring.size()) < 2 || StrictMath.floorMod(to - from, ring.size()) < 2) {
                continue;
            }
            List<DividerLine> lines = between(ring, from, to, count, random);
            if (!lines.isEmpty()) {
                return lines;
            }
        }
        return List.of();
    }

    private static List<DividerLine> between(Ring ring, int from, int to, int count, RandomGenerator random) {
        List<DividerLine> lines = new ArrayList<>();
        for (int k = 1; k <= count; k++) {
            double share = k / (count + 1.0);
            double a = share + random.nextDouble(-0.05, 0.05);
            double b = share + random.nextDouble(-0.05, 0.05);
            Point start = ring.corner(from).towards(ring.corner(from + 1), 1 - a);
            Point end = ring.corner(to).towards(ring.corner(to + 1), b);
            boolean clear = ring.sideMm(from) / (count + 1) > 300
                    && ring.sideMm(to) / (count + 1) > 300
                    && angleDeg(end.minus(start), ring.direction(from)) > 45
                    && angleDeg(end.minus(start), ring.direction(to)) > 45
                    && crossesNothing(ring, start, end);
            if (!clear) {
                return List.of();
            }
            lines.add(new DividerLine(from, start, to, end));
        }
        return lines;
    }

    /** The line with 200 mm either side lies in the ring. */
    private static boolean crossesNothing(Ring ring, Point start, Point end) {
        Point along = end.minus(start).unit();
        Point side = along.left().times(200);
        Ring strip = new Ring(List.of(
                start.minus(side).plus(along.times(150)),
                end.minus(side).minus(along.times(150)),
                end.plus(side).minus(along.times(150)),
                start.plus(side).plus(along.times(150))));
        return start.distanceMm(end) > 500 && ring.toJts().covers(strip.toJts());
    }

    private static double angleDeg(Point a, Point b) {
        return StrictMath.toDegrees(StrictMath.atan2(StrictMath.abs(a.cross(b)), StrictMath.abs(a.dot(b))));
    }
}
