package borderwright.pack.bench;

import borderwright.engine.assembly.BenchBoard;
import borderwright.engine.assembly.FixingLine;
import borderwright.engine.assembly.FixingLine.Mark;
import borderwright.engine.assembly.FloorBench;
import borderwright.engine.assembly.WallBench;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.message.Message;
import borderwright.pack.alike.Alike;
import borderwright.pack.figures.PrintedFigures;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The fixings of a wall or floor, as lines of text: those that are spread alike share a line. The holes of a screw are given
 * once.
 */
final class ScrewRows {
    /** Steel past the last hole of a strap's leg, mm (common practice, no source). */
    private static final double LEG_END_MM = 10;

    private final PrintedFigures f;
    private final BoardHeights boards;
    private final HookedTape tape;
    private final boolean wall;

    /** @param on what the tape hooks on: the end of a board of a wall or divider, or the corner of a floor */
    private ScrewRows(PrintedFigures f, List<BenchBoard> boards, HookedTape.On on) {
        this.f = f;
        this.boards = new BoardHeights(f, boards);
        this.tape = new HookedTape(f, on);
        this.wall = on == HookedTape.On.BOARD;
    }

    /** Of a wall or divider: screw lines upright, those of the capping along it. */
    static List<ScrewRow> of(WallBench wall, PrintedFigures f) {
        return new ScrewRows(f, wall.parts().boards(), HookedTape.On.BOARD).rows(wall.fixings());
    }

    /** Of a floor, seen from above. */
    static List<ScrewRow> of(FloorBench floor, PrintedFigures f) {
        return new ScrewRows(f, List.of(), HookedTape.On.CORNER).rows(floor.fixings());
    }

    private List<ScrewRow> rows(List<FixingLine> lines) {
        Map<String, List<FixingLine>> groups = new LinkedHashMap<>();
        for (FixingLine line : lines) {
            String key = line.fixing() + "|" + (wall ? onWall(line) : onFloor(line));
            groups.computeIfAbsent(key, k -> new ArrayList<>()).add(line);
        }
        List<ScrewRow> rows = new ArrayList<>();
        Set<String> drilled = new HashSet<>();
        for (List<FixingLine> group : groups.values()) {
            FixingLine first = group.get(0);
            String name = first.fixing().item();
            rows.add(new ScrewRow(
                    drilled.add(name) ? holes(first.fixing()) : name,
                    wall ? onWall(first) : onFloor(first),
                    wall ? group.stream().map(line -> place(line)).toList() : alike(group),
                    group.stream().mapToInt(FixingLine::count).sum()));
        }
        return rows;
    }

    /** Pieces that are screwed at the same places share a line. */
    private List<String> alike(List<FixingLine> group) {
        Map<String, List<FixingLine>> alike = new LinkedHashMap<>();
        group.forEach(line -> alike.computeIfAbsent(line.into() + "|" + alongs(line), k -> new ArrayList<>())
                .add(line));
        return alike.values().stream()
                .map(lines -> {
                    FixingLine first = lines.get(0);
                    String through = Alike.inShort(
                            lines.stream().map(FixingLine::through).toList());
                    int count = lines.stream().mapToInt(FixingLine::count).sum();
                    return f.text(
                            first.into().isEmpty()
                                    ? BenchMessage.SCREWS_THROUGH_AT.of(through, alongs(first), count)
                                    : BenchMessage.SCREWS_THROUGH_INTO_AT.of(
                                            through, first.into(), alongs(first), count));
                })
                .toList();
    }

    private String holes(Box.Fixing fixing) {
        return fixing.diameterMm() > 0
                ? BoardHeights.oneUnit(f.text(BenchMessage.SCREW_HOLES.of(
                        fixing.item(),
                        f.drill(fixing.pilotMm()),
                        f.drill(fixing.clearanceMm()),
                        f.drill(fixing.countersinkMm()))))
                : fixing.item();
    }

    private String onWall(FixingLine line) {
        return f.text(
                switch (line.hold()) {
                    case WALL_TO_UPRIGHT -> BenchMessage.TWO_IN_EVERY_BOARD.of(boards.written(line));
                    case DIVIDER_TO_UPRIGHT ->
                        BenchMessage.THROUGH_DIVIDER.of(
                                line.from(), line.through().isEmpty() ? "boards" : "upright", boards.written(line));
                    case UPRIGHTS_TOGETHER -> BenchMessage.BEFORE_THE_BOARDS.of(heights(line));
                    case LAP -> BenchMessage.TWO_IN_LAPPING_BOARDS.of(boards.written(line));
                    case CAPPING_TO_WALL -> BenchMessage.IN_A_LINE_DOWN.of(f.length(line.edgeMm()));
                    case TIE_TO_BRACE -> BenchMessage.SIDEWAYS_THROUGH_TIE.of(f.length(line.endMm()), heights(line));
                    default ->
                        line.edgeMm() > 0
                                ? BenchMessage.ROUND_THE_INNER_CORNER.of(
                                        line.edgeMm(), line.endMm(), line.endMm() + LEG_END_MM)
                                : BenchMessage.AT_THE_CORNER.of();
                });
    }

    private String onFloor(FixingLine line) {
        return f.text(BenchMessage.TWO_AT_EACH_PLACE.of(f.length(line.edgeMm())));
    }

    private String place(FixingLine line) {
        return f.text(
                switch (line.hold()) {
                    case WALL_TO_UPRIGHT -> into(alongs(line), line);
                    case DIVIDER_TO_UPRIGHT ->
                        line.through().isEmpty()
                                ? into(alongs(line), line)
                                : BenchMessage.SCREWS_THROUGH_AT.of(line.through(), alongs(line), line.count());
                    case LAP -> inCourses(line);
                    case CAPPING_TO_WALL ->
                        BenchMessage.SCREWS_THROUGH_AT.of(line.through(), alongs(line), line.count());
                    case CORNER_STRAP, STRAP_TO_UPRIGHT, TIE_BRACKET ->
                        BenchMessage.STRAP_OVER.of(line.through(), line.into(), heights(line), line.count());
                    case OTHER ->
                        line.into().isEmpty()
                                ? BenchMessage.SCREWS_THROUGH_AT.of(line.through(), alongs(line), line.count())
                                : BenchMessage.SCREWS_THROUGH_INTO_AT.of(
                                        line.through(), line.into(), alongs(line), line.count());
                    default -> into(line.through(), line);
                });
    }

    private static Message into(String place, FixingLine line) {
        return line.into().isEmpty()
                ? BenchMessage.SCREWS_AT.of(place, line.count())
                : BenchMessage.SCREWS_INTO.of(place, line.into(), line.count());
    }

    private Message inCourses(FixingLine line) {
        List<String> found = boards.courses(line).stream()
                .map(course -> Integer.toString(course))
                .toList();
        return BenchMessage.SCREWS_IN_COURSES.of(alongs(line), found.size(), String.join(", ", found), line.count());
    }

    private String alongs(FixingLine line) {
        return BoardHeights.written(line.marks().stream().map(Mark::xMm).toList(), tape::at);
    }

    private String heights(FixingLine line) {
        return BoardHeights.written(line.marks().stream().map(Mark::upMm).toList(), f::length);
    }
}
