package borderwright.pack.bench;

import borderwright.engine.assembly.FixingLine;
import borderwright.engine.assembly.FixingLine.Mark;
import borderwright.engine.buildup.parts.Box;
import borderwright.pack.figures.PrintedFigures;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** The fixings of a wall or floor, as lines of text: those that are spread alike share a line. */
final class ScrewRows {
    private static final double SAME_MM = 0.5;

    private final PrintedFigures f;
    private final List<Box.Course> courses;

    /** @param courses of the box, to tell in which of them a line has screws */
    ScrewRows(PrintedFigures f, List<Box.Course> courses) {
        this.f = f;
        this.courses = courses;
    }

    /** Of a wall or divider: screw lines upright, those of the capping along it. */
    List<ScrewRow> ofWall(List<FixingLine> lines) {
        return rows(lines, true);
    }

    /** Of a floor, seen from above. */
    List<ScrewRow> ofFloor(List<FixingLine> lines) {
        return rows(lines, false);
    }

    private List<ScrewRow> rows(List<FixingLine> lines, boolean wall) {
        Map<String, List<FixingLine>> groups = new LinkedHashMap<>();
        for (FixingLine line : lines) {
            String key = line.fixing() + "|" + (wall ? onWall(line) : onFloor(line));
            groups.computeIfAbsent(key, k -> new ArrayList<>()).add(line);
        }
        List<ScrewRow> rows = new ArrayList<>();
        for (List<FixingLine> group : groups.values()) {
            FixingLine first = group.get(0);
            rows.add(new ScrewRow(
                    holes(first.fixing()),
                    wall ? onWall(first) : onFloor(first),
                    group.stream().map(line -> place(line, wall)).toList(),
                    group.stream().mapToInt(FixingLine::count).sum()));
        }
        return rows;
    }

    private String holes(Box.Fixing fixing) {
        return fixing.diameterMm() > 0
                ? fixing.item() + ": pilot " + f.drill(fixing.pilotMm()) + ", clearance "
                        + f.drill(fixing.clearanceMm()) + ", countersink " + f.drill(fixing.countersinkMm())
                : fixing.item();
    }

    private String onWall(FixingLine line) {
        return switch (line.hold()) {
            case WALL_TO_UPRIGHT, DIVIDER_TO_UPRIGHT ->
                "two in every board, " + f.length(line.edgeMm()) + " from either edge";
            case LAP -> "two in each lapping board, " + f.length(line.edgeMm()) + " from either edge";
            case CAPPING_TO_WALL ->
                "in a line " + f.length(line.edgeMm()) + " from the nearer edge, down into the wall";
            case TIE_TO_BRACE -> "sideways through the tie, evenly up it, " + f.length(line.endMm()) + " from its end";
            default -> "at the corner, from inside, at heights " + heights(line);
        };
    }

    private String onFloor(FixingLine line) {
        return "two at each place, " + f.length(line.edgeMm()) + " from the nearer edge";
    }

    private String place(FixingLine line, boolean wall) {
        String into = line.into().isEmpty() ? "" : " into " + line.into();
        return switch (line.hold()) {
            case WALL_TO_UPRIGHT, DIVIDER_TO_UPRIGHT -> alongs(line) + into + " (" + line.count() + ")";
            case LAP -> alongs(line) + " in " + courses(line) + " (" + line.count() + ")";
            case CAPPING_TO_WALL -> line.through() + " at " + alongs(line) + " (" + line.count() + ")";
            case TIE_TO_BRACE, TIE_BRACKET -> line.through() + into + " (" + line.count() + ")";
            case OTHER -> line.through() + into + " at " + alongs(line) + " (" + line.count() + ")";
            default -> line.through() + into + " (" + line.count() + ")";
        };
    }

    private String courses(FixingLine line) {
        List<String> found = new ArrayList<>();
        double bottom = courses.get(0).bottomMm();
        for (Box.Course course : courses) {
            boolean has = line.marks().stream()
                    .anyMatch(m -> m.upMm() > course.bottomMm() - bottom && m.upMm() < course.topMm() - bottom);
            if (has) {
                found.add(Integer.toString(course.number()));
            }
        }
        return (found.size() == 1 ? "course " : "courses ") + String.join(", ", found);
    }

    private String alongs(FixingLine line) {
        return written(line.marks().stream().map(Mark::xMm).toList());
    }

    private String heights(FixingLine line) {
        return written(line.marks().stream().map(Mark::upMm).toList());
    }

    private String written(List<Double> distances) {
        TreeSet<Double> distinct = new TreeSet<>((a, b) -> StrictMath.abs(a - b) < SAME_MM ? 0 : Double.compare(a, b));
        distinct.addAll(distances);
        return String.join(", ", distinct.stream().map(f::length).toList());
    }
}
