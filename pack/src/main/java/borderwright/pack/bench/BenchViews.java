package borderwright.pack.bench;

import borderwright.engine.assembly.AssemblyMessage;
import borderwright.engine.assembly.BenchWords;
import borderwright.engine.assembly.BoxBench;
import borderwright.engine.assembly.FloorBench;
import borderwright.engine.assembly.WallBench;
import borderwright.engine.assembly.order.AssemblyOrder;
import borderwright.engine.assembly.order.AssemblyStep;
import borderwright.engine.assembly.order.Surroundings;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.filling.FillPlan;
import borderwright.engine.measure.Length;
import borderwright.engine.message.Message;
import borderwright.engine.plan.Plan;
import borderwright.pack.alike.Alike;
import borderwright.pack.alike.AlikeBoxes;
import borderwright.pack.alike.PartLabels;
import borderwright.pack.drawings.PegDrawing;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Orientation;
import borderwright.pack.paper.PaperSize;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * All that the sheets "At the bench" show of a plan: long walls first, so that short ones share pages.
 *
 * @param walls each distinct wall and divider once
 * @param floors each distinct floor once
 * @param orders one for each group of boxes built alike
 */
public record BenchViews(List<WallView> walls, List<FloorView> floors, List<OrderView> orders) {
    private static final double PICTURE_WIDTH_MM = 50;
    private static final double PICTURE_HEIGHT_MM = 19;
    /** Of the width of a page: beside it stand the places of its pieces. */
    private static final double FLOOR_SHARE = 0.44;

    private static final double NARROW_SHARE = 0.42;

    public BenchViews {
        walls = List.copyOf(walls);
        floors = List.copyOf(floors);
        orders = List.copyOf(orders);
    }

    /** A wall or floor with the box that it belongs to. */
    private record Of<T>(Box box, T part) {}

    public static BenchViews of(Plan plan, PaperSize paper) {
        PrintedFigures f = PrintedFigures.in(plan.garden().units());
        Map<String, List<Of<WallBench>>> walls = new LinkedHashMap<>();
        Map<String, List<Of<FloorBench>>> floors = new LinkedHashMap<>();
        Map<String, BoxBench> benches = new HashMap<>();
        for (Box box : plan.boxes()) {
            BoxBench bench = BoxBench.of(box, plan.garden().sections());
            benches.put(box.plan().name(), bench);
            for (WallBench wall : bench.walls()) {
                walls.computeIfAbsent(print(box, wall, f), k -> new ArrayList<>())
                        .add(new Of<>(box, wall));
            }
            for (FloorBench floor : bench.floors()) {
                floors.computeIfAbsent(print(floor, f), k -> new ArrayList<>()).add(new Of<>(box, floor));
            }
        }
        double width = paper.roomWidthMm(Orientation.PORTRAIT);
        return new BenchViews(
                walls.values().stream()
                        .map(alike -> wall(alike, f, width))
                        .sorted(Comparator.comparing(WallView::isHalf))
                        .toList(),
                floors.values().stream().map(alike -> floor(alike, f, width)).toList(),
                orders(plan, benches, f, PegDrawing.turn(plan, width)));
    }

    /** All that is printed of a wall but names: rows come in the order of their places, so a mirror image reads otherwise. */
    private static String print(Box box, WallBench wall, PrintedFigures f) {
        StringBuilder out = new StringBuilder().append(wall.kind()).append(wall.hook());
        out.append(thickness(wall, f));
        if (wall.kind() == WallBench.Kind.WALL) {
            out.append(f.length(wall.face().x(box.plan().outline().corner(wall.index()))));
        }
        new WallRows(wall, f)
                .rows()
                .forEach(row -> out.append('\n').append(row.unnamed()).append(row.notes()));
        wall.fixings()
                .forEach(line -> out.append('\n')
                        .append(line.fixing().item())
                        .append(line.count())
                        .append(line.marks().stream()
                                .map(m -> f.length(m.xMm()) + "/" + f.length(m.upMm()))
                                .toList()));
        return out.toString();
    }

    private static String print(FloorBench floor, PrintedFigures f) {
        StringBuilder out = new StringBuilder(f.text(floor.hook()));
        new FloorRows(f)
                .rows(floor)
                .forEach(row -> out.append('\n').append(row.unnamed()).append(row.notes()));
        return out.toString();
    }

    private static WallView wall(List<Of<WallBench>> alike, PrintedFigures f, double widthMm) {
        WallBench wall = alike.get(0).part;
        Box box = alike.get(0).box;
        String name = name(wall, f);
        boolean narrow = WallExtent.isNarrow(wall);
        List<WallBench> others = alike.stream().skip(1).map(Of::part).toList();
        List<String> names = others.stream().map(other -> name(other, f)).toList();
        List<Message> told = new ArrayList<>(BenchWords.of(wall, box.plan().outline()));
        told.addAll(new AlikeLabels(wall, f).of(others, names));
        return new WallView(
                Character.toUpperCase(name.charAt(0)) + name.substring(1),
                names,
                told,
                thickness(wall, f),
                WallDrawing.draw(wall, f, narrow ? NARROW_SHARE * widthMm : widthMm),
                new WallRows(wall, f).rows(),
                ScrewRows.of(wall, f));
    }

    private static String name(WallBench wall, PrintedFigures f) {
        return f.text(BenchMessage.PART_OF_BOX.of(f.text(BenchWords.name(wall)), wall.box()));
    }

    private static String thickness(WallBench wall, PrintedFigures f) {
        return f.piece(Length.ofMm(wall.parts().thicknessMm()));
    }

    private static FloorView floor(List<Of<FloorBench>> alike, PrintedFigures f, double widthMm) {
        FloorBench floor = alike.get(0).part;
        return new FloorView(
                f.text(BenchMessage.FLOOR_OF.of(floor.planter())),
                alike.stream().skip(1).map(of -> of.part.planter()).toList(),
                List.of(AssemblyMessage.FLOOR_FACE_UP.of(), floor.hook()),
                FloorDrawing.draw(floor, f, FLOOR_SHARE * widthMm),
                new FloorRows(f).rows(floor),
                ScrewRows.of(floor, f));
    }

    private static List<OrderView> orders(Plan plan, Map<String, BoxBench> benches, PrintedFigures f, double turnRad) {
        List<OrderView> orders = new ArrayList<>();
        for (List<Box> pieces : AlikeBoxes.group(plan.boxes(), f)) {
            Map<Surroundings, List<Box>> byPlace = new LinkedHashMap<>();
            pieces.forEach(box -> byPlace.computeIfAbsent(around(plan, box), k -> new ArrayList<>())
                    .add(box));
            byPlace.forEach((around, alike) -> {
                String name = alike.get(0).plan().name();
                BoxBench bench = Objects.requireNonNull(benches.get(name), name);
                AssemblyOrder order = AssemblyOrder.of(bench, plan.garden().sections(), around);
                if (!order.steps().isEmpty()) {
                    orders.add(order(order, alike, f, turnRad));
                }
            });
        }
        return orders;
    }

    /** What about the place of a box changes the order in which it is built. */
    public static Surroundings around(Plan plan, Box box) {
        FillPlan filling = plan.site().filling();
        return new Surroundings(
                Surroundings.nearWalls(box.plan().outline(), plan.outline()),
                filling.finish().coats() > 0 ? Surroundings.Finish.BRUSHED : Surroundings.Finish.NONE,
                filling.liner().isPresent() ? Surroundings.Lining.LINER : Surroundings.Lining.NONE,
                plan.garden().ground().surface().isHard() ? Surroundings.Bed.HARD : Surroundings.Bed.DUG);
    }

    private static OrderView order(AssemblyOrder order, List<Box> alike, PrintedFigures f, double turnRad) {
        StepPictures pictures = new StepPictures(order, f, turnRad, PICTURE_WIDTH_MM, PICTURE_HEIGHT_MM);
        Set<String> ofWalls = order.bench().box().pieces().stream()
                .filter(piece -> piece.role() == Piece.Role.WALL)
                .map(Piece::label)
                .collect(Collectors.toSet());
        Set<String> laid = new HashSet<>();
        List<OrderView.Pictured> steps = new ArrayList<>();
        for (AssemblyStep step : order.steps()) {
            steps.add(
                    new OrderView.Pictured(step, pieces(step, laid, ofWalls, f), fixings(step, f), pictures.of(step)));
            laid.addAll(step.pieces());
        }
        return new OrderView(
                Alike.inShort(alike.stream().map(box -> box.plan().name()).toList()), holes(order, f), steps);
    }

    /** The pieces that a step adds; those of a wall stand on its drawing, and are not named again once it is built. */
    private static String pieces(AssemblyStep step, Set<String> laid, Set<String> ofWalls, PrintedFigures f) {
        return switch (step.kind()) {
            case LAY_WALL, STAND_WALL, JOIN_WALL -> {
                int boards =
                        (int) step.pieces().stream().filter(ofWalls::contains).count();
                yield laid.containsAll(step.pieces())
                        ? ""
                        : f.text(
                                AssemblyMessage.PIECES_AS_DRAWN.of(step.pieces().size() - boards, boards));
            }
            default -> String.join("; ", PartLabels.inShort(step.pieces()));
        };
    }

    /** How each kind of screw of the box is drilled for. */
    private static List<Message> holes(AssemblyOrder order, PrintedFigures f) {
        Map<String, Box.Fixing> byItem = new LinkedHashMap<>();
        for (AssemblyStep step : order.steps()) {
            step.fixings().stream()
                    .filter(one -> one.fixing().diameterMm() > 0)
                    .forEach(one -> byItem.putIfAbsent(one.fixing().item(), one.fixing()));
        }
        return byItem.values().stream()
                .map(one -> AssemblyMessage.DRILL_FOR.of(
                        one.item(), f.drill(one.pilotMm()), f.drill(one.clearanceMm()), f.drill(one.countersinkMm())))
                .toList();
    }

    private static List<String> fixings(AssemblyStep step, PrintedFigures f) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        step.fixings().forEach(one -> counts.merge(one.fixing().item(), one.count(), Integer::sum));
        List<String> lines = new ArrayList<>();
        counts.forEach((item, count) -> lines.add(f.text(BenchMessage.FIXINGS_OF.of(count, item))));
        return lines;
    }
}
