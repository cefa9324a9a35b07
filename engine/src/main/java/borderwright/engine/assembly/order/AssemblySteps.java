package borderwright.engine.assembly.order;

import borderwright.engine.assembly.AssemblyMessage;
import borderwright.engine.assembly.BenchWords;
import borderwright.engine.assembly.BoxBench;
import borderwright.engine.assembly.FixingLine;
import borderwright.engine.assembly.WallBench;
import borderwright.engine.assembly.order.AssemblyStep.Kind;
import borderwright.engine.assembly.order.AssemblyStep.StepFixing;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.buildup.parts.PieceLabels;
import borderwright.engine.filling.Filling;
import borderwright.engine.filling.Weights;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.message.Message;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;

/** Works the steps of a box out: every piece is added in one step, every fixing driven in one. */
final class AssemblySteps {
    private final BoxBench bench;
    private final List<WallBench> walls;
    private final List<Diagonal> diagonals;
    private final AssemblyOrder.Lining lining;
    private final Map<String, SectionSpec> sections = new TreeMap<>();
    private final Map<String, Piece> pieces = new HashMap<>();
    private final WallOrder order;
    private final List<AssemblyStep> steps = new ArrayList<>();
    private final Set<String> placed = new HashSet<>();

    AssemblySteps(BoxBench bench, List<SectionSpec> all, List<Diagonal> diagonals, AssemblyOrder.Lining lining) {
        this.bench = bench;
        this.diagonals = diagonals;
        this.walls = bench.walls().stream()
                .filter(wall -> wall.kind() == WallBench.Kind.WALL)
                .toList();
        this.lining = lining;
        all.forEach(section -> sections.put(section.name(), section));
        bench.box().pieces().forEach(piece -> pieces.put(piece.label(), piece));
        this.order = new WallOrder(walls, pieces);
    }

    List<AssemblyStep> steps() {
        if (walls.isEmpty()) {
            return List.of();
        }
        walls.stream()
                .filter(wall -> !wall.carried().isEmpty())
                .sorted(Comparator.comparingInt(wall -> order.turn(wall.index())))
                .forEach(this::lay);
        for (int turn = 0; turn < walls.size(); turn++) {
            join(turn);
        }
        square();
        dividers();
        ties();
        floor();
        capping();
        line();
        return steps;
    }

    private void lay(WallBench wall) {
        List<Message> details = new ArrayList<>();
        List<Message> packs = BenchWords.packs(wall);
        if (!packs.isEmpty()) {
            details.add(AssemblyMessage.LAY_WALL_PACKS.of(packs));
        }
        double foot = wall.carried().stream()
                .mapToDouble(upright -> upright.height().fromMm())
                .min()
                .orElse(0);
        if (foot < 0) {
            details.add(AssemblyMessage.LAY_WALL_FOOTINGS.of(-foot));
        }
        List<FixingLine> lines = wall.fixings().stream()
                .filter(line -> order.isAtBench(wall, line))
                .toList();
        add(
                Kind.LAY_WALL,
                AssemblyMessage.LAY_WALL.of(wall.mark(), wall.carried().size()),
                details,
                pieces(wall),
                lines);
    }

    /** Labels of what a wall is built of at the bench. */
    private static List<String> pieces(WallBench wall) {
        List<String> all = new ArrayList<>();
        wall.parts().boards().forEach(board -> all.add(board.label()));
        wall.carried().forEach(upright -> all.add(upright.label()));
        return all;
    }

    private void join(int turn) {
        WallBench wall = order.wall(turn);
        boolean whole = !wall.carried().isEmpty();
        List<String> all = pieces(wall);
        List<Message> details = new ArrayList<>();
        double kg = all.stream().mapToDouble(this::kg).sum();
        int people = 1;
        if (whole && kg > Filling.LIFT_KG) {
            people = 2;
            details.add(AssemblyMessage.TWO_PEOPLE_FOR_WALL.of(kg));
            details.add(AssemblyMessage.ALONE_BOARD_BY_BOARD.of());
        }
        List<String> others =
                order.joinedBy(turn).stream().map(PieceLabels::letter).toList();
        Message what = turn == 0 || others.isEmpty()
                ? AssemblyMessage.STAND_WALL.of(wall.mark())
                : AssemblyMessage.JOIN_WALL.of(wall.mark(), whole ? "whole" : "boards", others);
        List<FixingLine> lines = new ArrayList<>();
        for (WallBench any : walls) {
            any.fixings().stream()
                    .filter(line -> order.joinTurn(any, line) == turn)
                    .forEach(lines::add);
        }
        add(turn == 0 ? Kind.STAND_WALL : Kind.JOIN_WALL, what, details, all, lines, people);
    }

    private void square() {
        int corners = bench.box().plan().outline().size();
        List<Message> details = new ArrayList<>();
        for (Diagonal diagonal : diagonals) {
            details.add(
                    AssemblyMessage.DIAGONAL_LENGTH.of(diagonal.from() + 1, diagonal.to() + 1, diagonal.lengthMm()));
        }
        details.add(AssemblyMessage.SQUARE_BY_PUSHING.of());
        String shape = corners == 3 ? "triangle" : corners == 4 ? "four" : "more";
        add(Kind.SQUARE, AssemblyMessage.SQUARE_BOX.of(shape), details, List.of(), List.of());
    }

    private void dividers() {
        List<WallBench> dividers = bench.walls().stream()
                .filter(wall -> wall.kind() == WallBench.Kind.DIVIDER)
                .toList();
        if (dividers.isEmpty()) {
            return;
        }
        List<String> added = new ArrayList<>();
        for (WallBench divider : dividers) {
            divider.parts().boards().forEach(board -> added.add(board.label()));
        }
        // Uprights that bear on no wall, if there are any, stand beside a divider.
        labels(Role.BRACE).stream().filter(label -> !placed.contains(label)).forEach(added::add);
        add(
                Kind.DIVIDERS,
                AssemblyMessage.FIT_DIVIDERS.of(dividers.size()),
                List.of(),
                added,
                dividers.stream().flatMap(d -> d.fixings().stream()).toList());
    }

    private void ties() {
        List<String> ties = labels(Role.TIE);
        if (ties.isEmpty()) {
            return;
        }
        double up = walls.stream()
                .flatMap(wall -> wall.parts().crosspieces().stream())
                .filter(cross -> cross.role() == Role.TIE)
                .findFirst()
                .map(cross -> cross.height().fromMm())
                .orElse(0.0);
        add(
                Kind.TIES,
                AssemblyMessage.FIT_TIES.of(ties.size()),
                List.of(AssemblyMessage.TIES_LEVEL.of(up)),
                ties,
                wallLines(Box.Hold.TIE_TO_BRACE, Box.Hold.TIE_BRACKET));
    }

    private void floor() {
        List<String> bearers = labels(Role.BEARER);
        if (!bearers.isEmpty()) {
            List<String> legs = labels(Role.LEG);
            List<String> added = new ArrayList<>(legs);
            added.addAll(bearers);
            Message what = AssemblyMessage.LAY_BEARERS.of(bearers.size(), legs.size());
            add(Kind.BEARERS, what, List.of(), added, floorLines(line -> legs.contains(line.into())));
        }
        List<String> slats = labels(Role.SLAT);
        if (!slats.isEmpty()) {
            add(
                    Kind.SLATS,
                    AssemblyMessage.LAY_SLATS.of(slats.size()),
                    List.of(AssemblyMessage.FABRIC_ON_SLATS.of()),
                    slats,
                    floorLines(line -> slats.contains(line.through())));
        }
    }

    private List<FixingLine> floorLines(Predicate<FixingLine> wanted) {
        return bench.floors().stream()
                .flatMap(floor -> floor.fixings().stream())
                .filter(wanted)
                .toList();
    }

    private void capping() {
        List<String> caps = labels(Role.CAPPING);
        if (!caps.isEmpty()) {
            add(
                    Kind.CAPPING,
                    AssemblyMessage.LAY_CAPPING.of(caps.size()),
                    List.of(),
                    caps,
                    wallLines(Box.Hold.CAPPING_TO_WALL));
        }
    }

    private void line() {
        if (lining == AssemblyOrder.Lining.LINER) {
            add(Kind.LINING, AssemblyMessage.LINE_BOX.of(), List.of(), List.of(), List.of());
        }
    }

    private List<String> labels(Role role) {
        return bench.box().pieces().stream()
                .filter(piece -> piece.role() == role)
                .map(Piece::label)
                .toList();
    }

    private List<FixingLine> wallLines(Box.Hold... holds) {
        List<Box.Hold> wanted = List.of(holds);
        return walls.stream()
                .flatMap(wall -> wall.fixings().stream())
                .filter(line -> wanted.contains(line.hold()))
                .toList();
    }

    private double kg(String label) {
        return Weights.pieceKg(Objects.requireNonNull(pieces.get(label), label), sections);
    }

    private void add(Kind kind, Message what, List<Message> details, List<String> involved, List<FixingLine> lines) {
        add(kind, what, details, involved, lines, 1);
    }

    private void add(
            Kind kind,
            Message what,
            List<Message> details,
            List<String> involved,
            List<FixingLine> lines,
            int atLeast) {
        List<Message> all = new ArrayList<>(details);
        int people = atLeast;
        String heaviest =
                involved.stream().max(Comparator.comparingDouble(this::kg)).orElse("");
        if (atLeast == 1 && !heaviest.isEmpty() && kg(heaviest) > Filling.LIFT_KG) {
            people = 2;
            all.add(AssemblyMessage.TWO_PEOPLE_FOR_PIECE.of(heaviest, kg(heaviest)));
        }
        List<String> added = involved.stream().filter(placed::add).toList();
        List<String> shown = kind == Kind.STAND_WALL || kind == Kind.JOIN_WALL ? involved : added;
        steps.add(new AssemblyStep(steps.size() + 1, kind, what, all, shown, counted(lines), people));
    }

    private static List<StepFixing> counted(List<FixingLine> lines) {
        Map<Box.Fixing, Integer> counts = new LinkedHashMap<>();
        lines.forEach(line -> counts.merge(line.fixing(), line.count(), Integer::sum));
        return counts.entrySet().stream()
                .map(entry -> new StepFixing(entry.getKey(), entry.getValue()))
                .toList();
    }
}
