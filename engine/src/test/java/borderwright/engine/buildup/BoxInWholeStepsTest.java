package borderwright.engine.buildup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.BuildMeans;
import borderwright.engine.buildup.parts.CutSteps;
import borderwright.engine.buildup.parts.EndCut;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.garden.BuildSpec;
import borderwright.engine.garden.vocabulary.CornerStyle;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pieces cut to what a saw can be set to still close their box. */
class BoxInWholeStepsTest {
    private static final double TICK_MM = 1.0 / Length.TICKS_PER_MM;
    private static final Set<Role> OUTER = EnumSet.of(Role.WALL, Role.CAPPING);

    private static BuildMeans means(Length step) {
        return new BuildMeans(
                Footprints.SECTIONS,
                Footprints.means(45, Map.of()).saws(),
                Map.of(),
                UnitSystem.METRIC,
                new CutSteps(step));
    }

    private static BuildSpec rules(CornerStyle style) {
        return Footprints.rules(Footprints.LARCH.name(), Footprints.BATTEN.name(), style);
    }

    /** 500 boxes of every shape, at 1 mm, 0.5 mm and 1/16 in. */
    @ParameterizedTest(name = "{0} ticks")
    @ValueSource(longs = {320, 160, 508})
    void aPieceIsNoLongerThanItsPlaceAndShorterByLessThanASlackAndAStep(long ticks) {
        SplittableRandom random = new SplittableRandom(ticks);
        double step = ticks * TICK_MM;
        for (int i = 0; i < 170; i++) {
            Ring ring = Footprints.random(random);
            FootprintPlan plan = Footprints.plan(
                    ring, Footprints.dividers(ring, random), random.nextDouble(140, 700), 0, random.nextInt(3) == 0);
            CornerStyle style = random.nextBoolean() ? CornerStyle.LAPPED : CornerStyle.MITRED;
            Box box = BoxBuilder.build(plan, rules(style), means(new Length(ticks)));
            double slack = new CutSteps(new Length(ticks)).slackMm(25, plan);
            for (Piece piece : box.pieces()) {
                assertThat(piece.length().ticks() % ticks).as(piece.label()).isZero();
                double most = step + (OUTER.contains(piece.role()) ? 0 : slack);
                assertThat(placeMm(piece) - piece.length().mm())
                        .as("box %s piece %s", i, piece.label())
                        .isBetween(-2 * TICK_MM, most + 2 * TICK_MM);
                angleIsUpToATenth(piece.left());
                angleIsUpToATenth(piece.right());
            }
        }
    }

    /** From long point to long point in the box, exact. */
    private static double placeMm(Piece piece) {
        if (piece.alongMm().z() == 1) {
            return piece.place().heightMm();
        }
        Point along = piece.alongMm().level();
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Point p : piece.place().plan().corners()) {
            least = StrictMath.min(least, p.dot(along));
            most = StrictMath.max(most, p.dot(along));
        }
        return most - least;
    }

    private static void angleIsUpToATenth(EndCut end) {
        double tenths = (end.tiltDeg() + end.fenceDeg()) * 10;
        assertThat(tenths).isCloseTo(StrictMath.rint(tenths), within(1e-6));
    }

    /**
     * The mitres of a corner: each half angle is up to 0.1 degree more than it is in the plan, so at the short points two
     * boards gape by no more than twice thickness times tan 0.1 degree over cos squared of 45 degrees: 0.18 mm at 25 mm.
     */
    @Test
    void mitresGapeByLessThanTwoTenthsOfAMillimetre() {
        SplittableRandom random = new SplittableRandom(9);
        for (int i = 0; i < 100; i++) {
            Ring ring = Footprints.random(random);
            Box exact = BoxBuilder.build(
                    Footprints.plan(ring, 300), rules(CornerStyle.MITRED), Footprints.means(45, Map.of()));
            Box cut = BoxBuilder.build(Footprints.plan(ring, 300), rules(CornerStyle.MITRED), means(Length.ofMm(1)));
            for (Piece piece : cut.pieces()) {
                exact.pieces().stream()
                        .filter(p -> p.label().equals(piece.label()) && p.role() == Role.WALL)
                        .forEach(p -> {
                            double gapes = piece.left().offsetMm() - p.left().offsetMm();
                            assertThat(gapes).as(piece.label()).isBetween(-1e-4, 0.09);
                        });
            }
        }
    }

    /** What stands between the walls fits between boards as they were cut, in a box of any size. */
    @Test
    void dividersFitBetweenTheRoundedBoardsOfASquareBox() {
        SplittableRandom random = new SplittableRandom(4);
        for (int i = 0; i < 100; i++) {
            double depth = random.nextDouble(400, 900);
            FootprintPlan plan = Footprints.run(random.nextDouble(1500, 2400), depth, 300, 700);
            Box box = BoxBuilder.build(plan, rules(CornerStyle.LAPPED), means(Length.ofMm(1)));
            // In every course one end of a side's board laps and the other butts: a board and a thickness make the
            // depth.
            double depthCutMm = box.pieces().stream()
                            .filter(p -> p.role() == Role.WALL
                                    && StrictMath.abs(p.alongMm().y()) > 0.999)
                            .mapToDouble(p -> p.length().mm())
                            .min()
                            .orElseThrow()
                    + 25;
            assertThat(depthCutMm).isCloseTo(StrictMath.floor(depth), within(1e-6));
            assertThat(box.pieces().stream().filter(p -> p.role() == Role.DIVIDER))
                    .isNotEmpty()
                    .allSatisfy(p -> assertThat(p.length().mm()).isEqualTo(depthCutMm - 50));
        }
    }

    @Test
    void twoBedsThatDifferByHundredthsAreCutAlike() {
        Box one = BoxBuilder.build(
                Footprints.plan(Ring.rectangle(0, 0, 3563.7969, 1200), 300), rules(null), means(Length.ofMm(1)));
        Box other = BoxBuilder.build(
                Footprints.plan(Ring.rectangle(0, 0, 3563.75, 1200), 300), rules(null), means(Length.ofMm(1)));
        assertThat(lengths(other)).isEqualTo(lengths(one)).isNotEmpty();
    }

    private static List<Length> lengths(Box box) {
        return box.pieces().stream().map(Piece::length).sorted().toList();
    }
}
