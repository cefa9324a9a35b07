package borderwright.engine.assembly.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.assembly.BoxBench;
import borderwright.engine.assembly.FixingLine;
import borderwright.engine.assembly.WallBench;
import borderwright.engine.buildup.Footprints;
import borderwright.engine.buildup.SeededBoxes;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.ScrewLine;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/** The steps of random boxes, and the diagonals that square them. */
class AssemblyOrderTest {
    /** Faces nearer than this bear once the screws are tight, as the builder has it. */
    private static final double BEARS_MM = 2.2;

    private static final Surroundings AROUND =
            new Surroundings(List.of(0), Surroundings.Finish.BRUSHED, Surroundings.Lining.LINER, Surroundings.Bed.DUG);

    /** The 3-4-5 triangle of every set square. */
    @Test
    void theDiagonalsOfARectangleAreThoseOfPythagoras() {
        List<Diagonal> diagonals = Diagonal.of(Ring.rectangle(10, 20, 4010, 3020));

        assertThat(diagonals)
                .hasSize(2)
                .allSatisfy(d -> assertThat(d.lengthMm()).isCloseTo(5000, within(1e-9)));
        assertThat(diagonals.get(0).to() - diagonals.get(0).from()).isEqualTo(2);
    }

    /** The law of cosines with the sides and the inside angle between them; also where that is more than 180 degrees. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void aDistanceAcrossACornerFollowsFromItsSidesAndAngle(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 200; i++) {
            Ring ring = Footprints.random(random);
            List<Diagonal> diagonals = Diagonal.of(ring);
            assertThat(diagonals).hasSize(ring.size() == 3 ? 0 : ring.size() == 4 ? 2 : ring.size());
            for (Diagonal diagonal : diagonals) {
                int corner = diagonal.from() + 1;
                double a = ring.sideMm(diagonal.from());
                double b = ring.sideMm(corner);
                double squared = a * a + b * b - 2 * a * b * StrictMath.cos(ring.insideAngle(corner));
                assertThat(diagonal.lengthMm()).isCloseTo(StrictMath.sqrt(squared), within(1e-6));
            }
        }
    }

    /** Where a box turns inwards its corner posts stand away from the corner, and the straps lie on the boards. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {24, 25})
    void aStrapNamesTheTwoPiecesThatItLiesOn(long seed) {
        Set<Piece.Role> roles = new HashSet<>();
        for (Box box : SeededBoxes.of(seed, 60)) {
            for (WallBench wall : BoxBench.of(box, Footprints.SECTIONS).walls()) {
                for (FixingLine line : wall.fixings()) {
                    if (line.hold() == Box.Hold.STRAP_TO_UPRIGHT) {
                        List<Piece> named = box.pieces().stream()
                                .filter(piece ->
                                        Set.of(line.through(), line.into()).contains(piece.label()))
                                .toList();
                        named.forEach(piece -> roles.add(piece.role()));
                        assertThat(headsOf(box, wall, line))
                                .hasSize(line.count())
                                .allSatisfy(head -> assertThat(named)
                                        .anyMatch(piece ->
                                                piece.place().plan().toJts().distance(at(head)) < BEARS_MM
                                                        && head.zMm()
                                                                > piece.place().bottomMm()
                                                        && head.zMm()
                                                                < piece.place().topMm()));
                    }
                }
            }
        }
        assertThat(roles).contains(Piece.Role.WALL, Piece.Role.POST);
    }

    private static List<ScrewLine> headsOf(Box box, WallBench wall, FixingLine line) {
        return box.joints().stream()
                .filter(joint -> joint.hold() == line.hold() && joint.side() == wall.index())
                .flatMap(joint -> joint.screws().stream())
                .filter(screw -> line.marks().stream()
                        .anyMatch(mark ->
                                StrictMath.abs(mark.xMm() - wall.face().x(screw.head())) < 1e-6
                                        && StrictMath.abs(mark.upMm()
                                                        - screw.zMm()
                                                        + wall.face().bottomMm())
                                                < 1e-6))
                .toList();
    }

    private static org.locationtech.jts.geom.Point at(ScrewLine screw) {
        return new GeometryFactory()
                .createPoint(new Coordinate(screw.head().xMm(), screw.head().yMm()));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {21, 22, 23})
    void everyPieceIsAddedAndEveryFixingDrivenOnce(long seed) {
        for (Box box : SeededBoxes.of(seed, 60)) {
            BoxBench bench = BoxBench.of(box, Footprints.SECTIONS);
            AssemblyOrder order = AssemblyOrder.of(bench, Footprints.SECTIONS, AROUND);
            List<String> added = new ArrayList<>();
            Set<String> laid = new HashSet<>();
            int driven = 0;
            for (AssemblyStep step : order.steps()) {
                assertThat(step.number()).isEqualTo(order.steps().indexOf(step) + 1);
                if (step.kind() == AssemblyStep.Kind.LAY_WALL) {
                    laid.addAll(step.pieces());
                } else {
                    added.addAll(step.pieces());
                }
                driven += step.fixings().stream()
                        .mapToInt(AssemblyStep.StepFixing::count)
                        .sum();
            }
            assertThat(added)
                    .containsExactlyInAnyOrderElementsOf(
                            box.pieces().stream().map(Piece::label).toList());
            assertThat(added).containsAll(laid);
            assertThat(driven)
                    .isEqualTo(
                            bench.fixings().stream().mapToInt(FixingLine::count).sum());
        }
    }

    @Test
    void aBoxIsSquaredOnceItsWallsStandAndBeforeItIsClosedAbove() {
        Box box = SeededBoxes.of(5, 40).stream()
                .filter(b -> b.plan().capped() && !b.plan().dividers().isEmpty())
                .findFirst()
                .orElseThrow();
        List<AssemblyStep.Kind> kinds =
                AssemblyOrder.of(BoxBench.of(box, Footprints.SECTIONS), Footprints.SECTIONS, AROUND).steps().stream()
                        .map(AssemblyStep::kind)
                        .toList();

        assertThat(kinds).isSorted().contains(AssemblyStep.Kind.SQUARE, AssemblyStep.Kind.DIVIDERS);
        assertThat(kinds.indexOf(AssemblyStep.Kind.SQUARE))
                .isGreaterThan(kinds.lastIndexOf(AssemblyStep.Kind.JOIN_WALL))
                .isLessThan(kinds.indexOf(AssemblyStep.Kind.CAPPING));
    }
}
