package borderwright.engine.layout;

import borderwright.engine.garden.RunSpec;
import borderwright.engine.garden.resolve.SurveyResolver;
import borderwright.engine.garden.vocabulary.CornerTurn;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.survey.GroundHeights;
import borderwright.engine.survey.Outline;
import borderwright.engine.survey.OutlineEdge;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Borders and requests of every kind, from a seed. */
public final class RandomBorders {
    private final Random random;

    public RandomBorders(long seed) {
        random = new Random(seed);
    }

    private double between(double from, double to) {
        return from + (to - from) * random.nextDouble();
    }

    /** Star-shaped or stepped, turned any way, some edges curved, level or sloping. */
    public Outline outline(boolean curved) {
        while (true) {
            List<Point> corners = random.nextBoolean() ? star() : skyline();
            Ring ring = new Ring(turned(corners));
            List<OutlineEdge> edges = new ArrayList<>();
            for (int i = 0; i < ring.size(); i++) {
                EdgeKind kind = EdgeKind.values()[random.nextInt(EdgeKind.values().length)];
                double rise = curved && random.nextInt(3) == 0
                        ? ring.sideMm(i) * between(0.02, 0.35) * (random.nextBoolean() ? 1 : -1)
                        : 0;
                double lean = random.nextInt(4) == 0 ? between(0, 30) : 0;
                edges.add(new OutlineEdge(kind, SurveyResolver.gap(kind).mm(), lean, rise));
            }
            Outline outline = Borders.of(ring, edges, ground(ring));
            if (LayoutVerifier.border(outline).isValid()) {
                return outline;
            }
        }
    }

    private List<Point> star() {
        while (true) {
            int size = 3 + random.nextInt(7);
            List<Double> bearings = new ArrayList<>();
            for (int i = 0; i < size; i++) {
                bearings.add(2 * Math.PI * (i + between(-0.35, 0.35)) / size);
            }
            double least = between(800, 6000);
            List<Point> corners = new ArrayList<>();
            for (double bearing : bearings) {
                double radius = between(least, 7000);
                corners.add(new Point(radius * StrictMath.cos(bearing), radius * StrictMath.sin(bearing)));
            }
            if (Ring.signedAreaMm2(corners) > 1e6
                    && new Ring(corners).toJts().isValid()
                    && edgesAtLeast(corners, 300)) {
                return corners;
            }
        }
    }

    private static boolean edgesAtLeast(List<Point> corners, double mm) {
        for (int i = 0; i < corners.size(); i++) {
            if (corners.get(i).distanceMm(corners.get((i + 1) % corners.size())) < mm) {
                return false;
            }
        }
        return true;
    }

    /** Square corners only: columns of different heights on one base line. */
    private List<Point> skyline() {
        int columns = 1 + random.nextInt(4);
        List<Point> top = new ArrayList<>();
        double x = 0;
        for (int i = 0; i < columns; i++) {
            double height = between(900, 6000);
            top.add(new Point(x, height));
            x += between(900, 4000);
            top.add(new Point(x, height));
        }
        List<Point> corners = new ArrayList<>(List.of(new Point(0, 0), new Point(x, 0)));
        for (int i = top.size() - 1; i >= 0; i--) {
            corners.add(top.get(i));
        }
        return corners;
    }

    private List<Point> turned(List<Point> corners) {
        double angle = between(0, 2 * Math.PI);
        double cos = StrictMath.cos(angle);
        double sin = StrictMath.sin(angle);
        return corners.stream()
                .map(p -> new Point(p.xMm() * cos - p.yMm() * sin, p.xMm() * sin + p.yMm() * cos))
                .toList();
    }

    private GroundHeights ground(Ring ring) {
        if (random.nextInt(3) == 0) {
            return GroundHeights.LEVEL;
        }
        double slope = between(0, 0.2);
        List<GroundHeights.Spot> spots = new ArrayList<>();
        for (Point corner : ring.corners()) {
            spots.add(new GroundHeights.Spot("g", corner, slope * corner.xMm() + between(-20, 20), 3));
        }
        return new GroundHeights(spots);
    }

    public List<RunSpec> runs(Outline outline) {
        List<RunSpec> runs = new ArrayList<>();
        int count = 1 + random.nextInt(3);
        for (int i = 0; i < count; i++) {
            runs.add(run(outline, "run " + (char) ('a' + i)));
        }
        return runs;
    }

    private RunSpec run(Outline outline, String name) {
        int size = outline.ring().size();
        int first = random.nextInt(size);
        int edges = 1 + random.nextInt(size);
        List<String> corners = new ArrayList<>();
        boolean backwards = random.nextBoolean();
        for (int i = 0; i <= edges; i++) {
            corners.add(outline.cornerNames().get(Math.floorMod(first + (backwards ? -i : i), size)));
        }
        RunRequests spec = RunRequests.along(String.join(" ", corners))
                .name(name)
                .depth(between(200, 900))
                .height(450);
        switch (random.nextInt(3)) {
            case 0 -> spec.planters(1 + random.nextInt(8));
            case 1 -> spec.length(1000, 1000);
            default -> spec.length(700, 1500);
        }
        if (random.nextBoolean()) {
            spec.separate(between(0, 60));
        }
        spec.turn(CornerTurn.values()[random.nextInt(3)]);
        if (random.nextBoolean()) {
            spec.turn(corners.get(random.nextInt(corners.size())), CornerTurn.values()[random.nextInt(3)]);
        }
        if (random.nextBoolean()) {
            spec.stepped();
        }
        spec.reach(between(400, 900)).sag(between(5, 80));
        return spec.spec();
    }
}
