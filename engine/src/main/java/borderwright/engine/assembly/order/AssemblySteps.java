package borderwright.engine.assembly.order;

import borderwright.engine.assembly.AssemblyMessage;
import borderwright.engine.assembly.BenchWords;
import borderwright.engine.assembly.BoxBench;
import borderwright.engine.assembly.FixingLine;
import borderwright.engine.assembly.WallBench;
import borderwright.engine.assembly.order.AssemblyStep.Kind;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.buildup.parts.PieceLabels;
import borderwright.engine.filling.Filling;
import borderwright.engine.filling.Weights;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.message.Message;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Works the steps of a box out: every piece is added in one step, every fixing driven in one. */
final class AssemblySteps {
    /** Lengths across a box that agree with the plan this well are good enough to build on, mm (common practice, no source). */
    private static final double SQUARE_WITHIN_MM = 5;

    private final BoxBench bench;
    private final List<WallBench> walls;
    private final List<Diagonal> diagonals;
    private final Surroundings around;
    private final WallOrder order;
    private final StepList steps;
    private boolean isAloneTold;

    AssemblySteps(BoxBench bench, List<SectionSpec> all, List<Diagonal> diagonals, Surroundings around) {
        this.bench = bench;
        this.diagonals = diagonals;
        this.walls = bench.walls().stream()
                .filter(wall -> wall.kind() == WallBench.Kind.WALL)
                .toList();
        this.around = around;
        this.steps = new StepList(bench, all);
        this.order = new WallOrder(walls, steps.pieces());
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
        return steps.steps();
    }

    private void lay(WallBench wall) {
        List<Message> details = new ArrayList<>();
        List<Message> packs = BenchWords.packs(wall);
        if (!packs.isEmpty()) {
            details.add(AssemblyMessage.LAY_WALL_PACKS.of(packs));
        }
        double foot = footMm(wall);
        if (foot < 0) {
            details.add(AssemblyMessage.LAY_WALL_FOOTINGS.of(-foot));
        }
        List<FixingLine> lines = wall.fixings().stream()
                .filter(line -> order.isAtBench(wall, line))
                .toList();
        steps.add(
                Kind.LAY_WALL,
                AssemblyMessage.LAY_WALL.of(wall.mark(), wall.carried().size()),
                details,
                pieces(wall),
                lines);
    }

    /** How far the lowest foot of a wall's uprights stands above its bottom edge, mm: below 0 where they are set in the ground. */
    private static double footMm(WallBench wall) {
        return wall.carried().stream()
                .mapToDouble(upright -> upright.height().fromMm())
                .min()
                .orElse(0);
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
        if (turn == 0 && !around.nearWalls().isEmpty()) {
            details.addAll(clearOfWall());
        }
        double kg = steps.kg(all);
        int people = 1;
        if (whole && kg > Filling.LIFT_KG) {
            // A side that is stood up where it lies rests on its bottom edge; a later one is carried.
            people = Weights.people(turn == 0 ? kg / 2 : kg, Filling.LIFT_KG);
            details.add(AssemblyMessage.PEOPLE_FOR_WALL.of(people, kg, turn == 0 ? "stand" : "carry"));
            if (!isAloneTold) {
                isAloneTold = true;
                details.add(AssemblyMessage.ALONE_BOARD_BY_BOARD.of());
            }
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
        steps.add(turn == 0 ? Kind.STAND_WALL : Kind.JOIN_WALL, what, details, all, lines, people);
    }

    /** Sides with a wall close behind them are screwed and brushed some way off. */
    private List<Message> clearOfWall() {
        List<String> sides =
                around.nearWalls().stream().map(PieceLabels::letter).toList();
        List<Message> details = new ArrayList<>();
        details.add(AssemblyMessage.STAND_CLEAR_OF_WALL.of(sides, sides.size(), Surroundings.DRILL_ROOM_MM));
        if (around.areSidesBrushedFirst()) {
            details.add(AssemblyMessage.BRUSH_BEFORE_MOVING.of(sides, sides.size()));
        }
        return details;
    }

    /** Walls that were built clear of their place are moved into it first. */
    private void square() {
        int corners = bench.box().plan().outline().size();
        String shape = corners == 3 ? "triangle" : corners == 4 ? "four" : "more";
        Message check = AssemblyMessage.SQUARE_BOX.of(shape);
        List<Message> details = new ArrayList<>();
        boolean isMoved = !around.nearWalls().isEmpty();
        int people = 1;
        if (isMoved) {
            double kg = steps.placedKg();
            people = Weights.people(kg, Filling.LIFT_KG);
            details.add(AssemblyMessage.WALLS_WEIGH.of(kg, people));
            details.add(AssemblyMessage.BRACE_BEFORE_MOVING.of());
            details.add(check);
        }
        for (Diagonal diagonal : diagonals) {
            details.add(
                    AssemblyMessage.DIAGONAL_LENGTH.of(diagonal.from() + 1, diagonal.to() + 1, diagonal.lengthMm()));
        }
        details.add(AssemblyMessage.SQUARE_BY_PUSHING.of(SQUARE_WITHIN_MM, isMoved ? "on" : "none"));
        steps.add(Kind.SQUARE, isMoved ? moved() : check, details, List.of(), List.of(), people);
    }

    private Message moved() {
        boolean areFeetInHoles = walls.stream().anyMatch(wall -> footMm(wall) < 0);
        return AssemblyMessage.MOVE_WALLS.of(
                areFeetInHoles ? "lift" : around.bed() == Surroundings.Bed.HARD ? "slide" : "bridge");
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
        added.addAll(steps.waiting(Role.BRACE));
        steps.add(
                Kind.DIVIDERS,
                AssemblyMessage.FIT_DIVIDERS.of(
                        dividers.size(),
                        dividers.get(0).index() + 1,
                        dividers.get(dividers.size() - 1).index() + 1),
                List.of(),
                added,
                Stream.concat(
                                dividers.stream().flatMap(d -> d.fixings().stream()),
                                walls.stream()
                                        .flatMap(w -> w.fixings().stream())
                                        .filter(order::isAtDivider))
                        .toList());
    }

    private void ties() {
        List<String> ties = steps.labels(Role.TIE);
        if (ties.isEmpty()) {
            return;
        }
        double up = walls.stream()
                .flatMap(wall -> wall.parts().crosspieces().stream())
                .filter(cross -> cross.role() == Role.TIE)
                .findFirst()
                .map(cross -> cross.height().fromMm())
                .orElse(0.0);
        steps.add(
                Kind.TIES,
                AssemblyMessage.FIT_TIES.of(ties.size()),
                List.of(AssemblyMessage.TIES_LEVEL.of(up)),
                ties,
                wallLines(Box.Hold.TIE_TO_BRACE, Box.Hold.TIE_BRACKET));
    }

    private void floor() {
        List<String> bearers = steps.labels(Role.BEARER);
        if (!bearers.isEmpty()) {
            List<String> legs = steps.labels(Role.LEG);
            List<String> added = new ArrayList<>(legs);
            added.addAll(bearers);
            Message what = AssemblyMessage.LAY_BEARERS.of(bearers.size(), legs.size());
            steps.add(Kind.BEARERS, what, List.of(), added, floorLines(line -> legs.contains(line.into())));
        }
        List<String> slats = steps.labels(Role.SLAT);
        if (!slats.isEmpty()) {
            steps.add(
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
        List<String> caps = steps.labels(Role.CAPPING);
        if (!caps.isEmpty()) {
            steps.add(
                    Kind.CAPPING,
                    AssemblyMessage.LAY_CAPPING.of(caps.size()),
                    List.of(),
                    caps,
                    wallLines(Box.Hold.CAPPING_TO_WALL));
        }
    }

    private void line() {
        if (around.lining() == Surroundings.Lining.LINER) {
            steps.add(Kind.LINING, AssemblyMessage.LINE_BOX.of(), List.of(), List.of(), List.of());
        }
    }

    private List<FixingLine> wallLines(Box.Hold... holds) {
        List<Box.Hold> wanted = List.of(holds);
        return walls.stream()
                .flatMap(wall -> wall.fixings().stream())
                .filter(line -> wanted.contains(line.hold()))
                .toList();
    }
}
