package borderwright.pack.bench;

import borderwright.engine.assembly.BenchBoard;
import borderwright.engine.assembly.FixingLine;
import borderwright.engine.assembly.FixingLine.Mark;
import borderwright.engine.assembly.Span;
import borderwright.pack.figures.PrintedFigures;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.DoubleFunction;

/** Heights of screws above the lower edge of the board that they go through: once for all courses where they are alike. */
final class BoardHeights {
    private static final double SAME_MM = 0.5;
    private static final String MM = " mm";

    private final PrintedFigures f;

    /** By course, from the bottom. */
    private final Map<Integer, Span> courses = new TreeMap<>();

    BoardHeights(PrintedFigures f, List<BenchBoard> boards) {
        this.f = f;
        boards.forEach(board -> courses.putIfAbsent(board.course(), board.height()));
    }

    /** Courses in which a line has screws. */
    List<Integer> courses(FixingLine line) {
        return List.copyOf(byCourse(line).keySet());
    }

    /** The heights that most courses have, and those of the courses that differ. */
    String written(FixingLine line) {
        Map<String, List<Integer>> alike = new LinkedHashMap<>();
        byCourse(line)
                .forEach((course, up) -> alike.computeIfAbsent(written(up, f::length), k -> new ArrayList<>())
                        .add(course));
        String usual = "";
        int most = 0;
        for (Map.Entry<String, List<Integer>> entry : alike.entrySet()) {
            if (entry.getValue().size() > most) {
                usual = entry.getKey();
                most = entry.getValue().size();
            }
        }
        List<String> parts = new ArrayList<>();
        parts.add(f.text(BenchMessage.ABOVE_LOWER_EDGE.of(usual)));
        for (Map.Entry<String, List<Integer>> entry : alike.entrySet()) {
            if (!entry.getKey().equals(usual)) {
                List<String> numbers = entry.getValue().stream()
                        .map(course -> Integer.toString(course))
                        .toList();
                parts.add(f.text(BenchMessage.ABOVE_LOWER_EDGE_IN.of(
                        numbers.size(), String.join(", ", numbers), entry.getKey())));
            }
        }
        return String.join(" ", parts);
    }

    private Map<Integer, List<Double>> byCourse(FixingLine line) {
        Map<Integer, List<Double>> up = new TreeMap<>();
        for (Mark mark : line.marks()) {
            courses.forEach((course, height) -> {
                if (mark.upMm() > height.fromMm() && mark.upMm() < height.toMm()) {
                    up.computeIfAbsent(course, k -> new ArrayList<>()).add(mark.upMm() - height.fromMm());
                }
            });
        }
        return up;
    }

    /** Distances in rising order, each once. */
    static String written(List<Double> distances, DoubleFunction<String> text) {
        TreeSet<Double> distinct = new TreeSet<>((a, b) -> StrictMath.abs(a - b) < SAME_MM ? 0 : Double.compare(a, b));
        distinct.addAll(distances);
        return oneUnit(String.join(", ", distinct.stream().map(text::apply).toList()));
    }

    /** Millimetres are named once. */
    static String oneUnit(String written) {
        return written.replace(MM + ",", ",");
    }
}
