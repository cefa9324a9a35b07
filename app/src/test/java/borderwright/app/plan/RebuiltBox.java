package borderwright.app.plan;

import static borderwright.app.plan.PrintedBench.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.assembly.BoxBench;
import borderwright.engine.assembly.WallBench;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.geometry.Point;
import borderwright.engine.plan.Plan;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A box put together from what is printed. */
final class RebuiltBox {
    /** Half a millimetre for the place of the hook and half for the distance from it. */
    static final double TO_1_MM = 1.0 + 1e-6;

    private static final Pattern FAR =
            Pattern.compile("(?:edges away from the boards|(?:inner|unmarked) face|inner edge) (L) to (L)"
                    .replace("L", PrintedBench.LENGTH));
    private static final String UPRIGHT = "brace";
    /** Lengths are printed to whole steps, of which the finest is a sixteenth of an inch. */
    private static final double SAME_MM = 0.1;

    private static final Set<Piece.Role> CUT_ALONG = Set.of(Piece.Role.WALL, Piece.Role.DIVIDER, Piece.Role.CAPPING);
    private static final Set<String> CROSSING = Set.of("tie", "divider board");

    private final List<PrintedBench> pages;
    private final Box box;
    private final Map<String, List<String>> labelsOf = new HashMap<>();
    private final List<WallBench> walls;
    private final Map<String, Piece> pieces = new HashMap<>();
    private final Map<String, List<Point>> crossing = new HashMap<>();
    private final Set<String> found = new HashSet<>();

    RebuiltBox(Plan plan, List<PrintedBench> pages, Box box) {
        this.pages = pages;
        this.box = box;
        walls = BoxBench.of(box, plan.garden().sections()).walls();
        plan.boxes().stream()
                .flatMap(one -> BoxBench.of(one, plan.garden().sections()).walls().stream())
                .forEach(wall -> labelsOf.put(name(wall), labels(wall)));
        box.pieces().forEach(piece -> pieces.put(piece.label(), piece));
    }

    /** How many pieces were found where the plan has them. */
    int compared() {
        walls.forEach(this::wall);
        crossing.forEach((label, corners) -> {
            for (Point corner : pieces.get(label).place().plan().corners()) {
                double off =
                        corners.stream().mapToDouble(corner::distanceMm).min().orElseThrow();
                assertThat(off).as(label).isLessThan(Math.sqrt(2) * TO_1_MM);
            }
            found.add(label);
        });
        return found.size();
    }

    private void wall(WallBench wall) {
        String name = name(wall);
        PrintedBench page = pages.stream()
                .filter(one -> one.title().equalsIgnoreCase(name) || one.alike().contains(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError(name + " is on no page"));
        List<String> standing = labelsOf.get(page.title().substring(0, 1).toLowerCase(Locale.ROOT)
                + page.title().substring(1));
        Map<String, String> own = new HashMap<>();
        Map<String, String> swaps = swaps(page, name, wall.box());
        for (String label : standing) {
            String planter = label.substring(0, label.indexOf('-'));
            own.put(
                    label,
                    swaps.getOrDefault(
                            label, swaps.getOrDefault(planter, planter) + label.substring(planter.length())));
        }
        assertThat(standing.stream().map(own::get))
                .as("labels read for " + name)
                .containsExactlyElementsOf(labelsOf.get(name));
        int lines = 0;
        for (PrintedBench.Line line : page.lines()) {
            List<Piece> stack = line.labels().stream()
                    .map(label -> pieces.get(own.get(label)))
                    .toList();
            lines += stack.size();
            place(page, wall, line, stack);
        }
        assertThat(lines).as("pieces printed of " + name).isEqualTo(standing.size());
    }

    /** What the page says is read for a label of its drawing, or for the planter's name in it, on a wall like it. */
    private static Map<String, String> swaps(PrintedBench page, String name, String box) {
        Map<String, String> swaps = new HashMap<>();
        if (page.title().equalsIgnoreCase(name)) {
            return swaps;
        }
        Matcher own = Pattern.compile("has the name of its own box for (\\S+) in its labels")
                .matcher(page.told());
        if (own.find()) {
            swaps.put(own.group(1), box);
        }
        Matcher there =
                Pattern.compile("On " + Pattern.quote(name) + " read (.+?)\\.").matcher(page.told());
        if (there.find()) {
            for (String swap : there.group(1).split(", ")) {
                String[] labels = swap.split(" for ");
                swaps.put(labels[1], labels[0]);
            }
        }
        return swaps;
    }

    private void place(PrintedBench page, WallBench wall, PrintedBench.Line line, List<Piece> stack) {
        double thick = mm(page.told().replaceAll(".*Boards are ", ""));
        boolean isWall = wall.kind() == WallBench.Kind.WALL;
        Point along = isWall
                ? box.plan().outline().direction(wall.index())
                : wall.face().rightwards();
        Point hook = isWall
                ? box.plan().outline().corner(wall.index()).minus(along.times(cornerMm(page.told())))
                : wall.face().hook();
        if (line.what().endsWith("post") || line.what().equals(UPRIGHT)) {
            if (line.notes().contains("neighbouring") || !isWall) {
                return;
            }
        }
        double bottom = box.courses().get(0).bottomMm();
        assertThat(line.bottomMm())
                .as(
                        "%s: %s, here %s",
                        page.title(), line, stack.stream().map(Piece::label).toList())
                .isCloseTo(stack.get(0).place().bottomMm() - bottom, within(TO_1_MM));
        assertThat(line.topMm())
                .as(
                        "%s: %s, here %s",
                        page.title(), line, stack.stream().map(Piece::label).toList())
                .isCloseTo(stack.get(stack.size() - 1).place().topMm() - bottom, within(TO_1_MM));
        for (Piece piece : stack) {
            if (isWall && CROSSING.contains(line.what())) {
                crossing.computeIfAbsent(piece.label(), k -> new ArrayList<>())
                        .addAll(List.of(at(hook, along, line.fromMm(), thick), at(hook, along, line.toMm(), thick)));
            } else {
                for (Point corner : corners(line, hook, along, thick)) {
                    assertThat(nearest(piece, corner, along))
                            .as("%s of %s: %s", piece.label(), page.title(), line)
                            .isLessThanOrEqualTo(TO_1_MM);
                }
                found.add(piece.label());
                if (CUT_ALONG.contains(piece.role())) {
                    assertThat(lengthMm(line))
                            .as("%s of %s is cut as long as it is drawn: %s", piece.label(), page.title(), line)
                            .isCloseTo(piece.length().mm(), within(SAME_MM));
                }
            }
        }
    }

    /** From the first to the last point of a board, as its distances on both faces or edges are printed. */
    private static double lengthMm(PrintedBench.Line line) {
        double from = line.fromMm();
        double to = line.toMm();
        Matcher far = FAR.matcher(line.notes());
        if (far.find()) {
            double[] ends = PrintedBench.range(far.group(1), far.group(2));
            from = Math.min(from, ends[0]);
            to = Math.max(to, ends[1]);
        }
        return to - from;
    }

    /** Those corners of a piece that a line gives. */
    private static List<Point> corners(PrintedBench.Line line, Point hook, Point along, double thick) {
        double near = 0;
        double deep = thick;
        if (line.what().equals("corner post") || line.what().equals(UPRIGHT)) {
            near = thick;
            deep = thick + mm(line.notes().substring(0, line.notes().indexOf(" deep")));
        } else if (line.what().equals("capping")) {
            near = -mm(line.notes().replaceAll(".*outer edge (.*?) outside.*", "$1"));
            deep = Double.NaN;
        }
        List<Point> corners =
                new ArrayList<>(List.of(at(hook, along, line.fromMm(), near), at(hook, along, line.toMm(), near)));
        if (!Double.isNaN(deep)) {
            Matcher far = FAR.matcher(line.notes());
            boolean isBevelled = far.find();
            double[] ends = isBevelled
                    ? PrintedBench.range(far.group(1), far.group(2))
                    : new double[] {line.fromMm(), line.toMm()};
            corners.add(at(hook, along, ends[0], deep));
            corners.add(at(hook, along, ends[1], deep));
        }
        return corners;
    }

    private static String name(WallBench wall) {
        return (wall.kind() == WallBench.Kind.WALL ? "side " : "divider ") + wall.mark() + " of " + wall.box();
    }

    /** In the order in which the rows are printed: uprights, ties and dividers from left to right, boards, capping. */
    private static List<String> labels(WallBench wall) {
        List<String> labels = new ArrayList<>();
        wall.parts().uprights().forEach(upright -> labels.add(upright.label()));
        wall.parts().crosspieces().forEach(cross -> labels.add(cross.label()));
        wall.parts().boards().forEach(board -> labels.add(board.label()));
        wall.parts().caps().forEach(cap -> labels.add(cap.label()));
        return labels;
    }

    static Point at(Point hook, Point along, double x, double behind) {
        return hook.plus(along.times(x)).plus(along.left().times(behind));
    }

    /** Greater of the distances along and across the wall to the nearest corner of a piece. */
    static double nearest(Piece piece, Point corner, Point along) {
        return asCut(piece, along).stream()
                .mapToDouble(p -> Math.max(
                        Math.abs(p.minus(corner).dot(along)),
                        Math.abs(p.minus(corner).dot(along.left()))))
                .min()
                .orElseThrow();
    }

    /** The corners of a piece on the plan; a board that is cut to whole steps ends so much sooner at its right end. */
    private static List<Point> asCut(Piece piece, Point along) {
        List<Point> corners = piece.place().plan().corners();
        if (!CUT_ALONG.contains(piece.role())) {
            return corners;
        }
        double from = corners.stream().mapToDouble(p -> p.dot(along)).min().orElseThrow();
        double to = corners.stream().mapToDouble(p -> p.dot(along)).max().orElseThrow();
        Point less = along.times(Math.max(0, to - from - piece.length().mm()));
        return corners.stream()
                .map(p -> p.dot(along) > (from + to) / 2 ? p.minus(less) : p)
                .toList();
    }

    private static double cornerMm(String told) {
        if (told.contains("corner of the box is there")) {
            return 0;
        }
        Matcher lies = Pattern.compile(
                        "corner of the box lies (L) (left|right) of it".replace("L", PrintedBench.LENGTH))
                .matcher(told);
        assertThat(lies.find()).as(told).isTrue();
        return lies.group(2).equals("right") ? mm(lies.group(1)) : -mm(lies.group(1));
    }
}
