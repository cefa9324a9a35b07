package borderwright.engine.survey;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.geometry.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import org.assertj.core.data.Offset;
import org.ejml.simple.SimpleMatrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The ground between levels: planes in closed form, and the best plane against a general least-squares solver. */
class GroundHeightsTest {
    private static GroundHeights at(ToDoubleFunction<Point> height, Point... places) {
        List<GroundHeights.Spot> spots = new ArrayList<>();
        for (Point place : places) {
            spots.add(new GroundHeights.Spot("P" + spots.size(), place, height.applyAsDouble(place), 3));
        }
        return new GroundHeights(spots);
    }

    private static Point p(double x, double y) {
        return new Point(x, y);
    }

    /** A patio that falls a quarter of an inch to the foot away from the house, levelled at its corners. */
    @Test
    void aPatioLevelledAtItsCornersIsFlatBetweenThem() {
        ToDoubleFunction<Point> patio = at -> -at.yMm() / 48;
        GroundHeights ground = at(patio, p(0, 0), p(5600, 0), p(5600, 1800), p(0, 1800));

        for (double x = 0; x <= 5600; x += 350) {
            for (double y = 0; y <= 1800; y += 150) {
                assertThat(ground.heightMm(p(x, y))).isCloseTo(-y / 48, Offset.offset(1e-9));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void aPlaneComesBackFromAnyScatteredLevelsAndBeyondThem(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double a = random.nextDouble(-0.2, 0.2);
        double b = random.nextDouble(-0.2, 0.2);
        ToDoubleFunction<Point> plane = at -> -450 + a * at.xMm() + b * at.yMm();
        Point[] places = new Point[random.nextInt(6, 20)];
        for (int i = 0; i < places.length; i++) {
            places[i] = p(random.nextDouble(0, 12_000), random.nextDouble(0, 9000));
        }
        GroundHeights ground = at(plane, places);
        for (int i = 0; i < 50; i++) {
            Point at = p(random.nextDouble(-5000, 17_000), random.nextDouble(-5000, 14_000));
            assertThat(ground.heightMm(at)).isCloseTo(plane.applyAsDouble(at), Offset.offset(1e-6));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void eachLevelComesBackAtItsOwnPlaceAndJustBesideIt(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Point[] places = new Point[9];
        for (int i = 0; i < places.length; i++) {
            places[i] = p(random.nextDouble(0, 9000), random.nextDouble(0, 4000));
        }
        GroundHeights ground = at(at -> random.nextDouble(-900, 0), places);
        for (GroundHeights.Spot spot : ground.spots()) {
            assertThat(ground.heightMm(spot.at())).isEqualTo(spot.heightMm());
            assertThat(ground.heightMm(spot.at().plus(p(0.01, 0.01)))).isCloseTo(spot.heightMm(), Offset.offset(0.05));
        }
    }

    /** Levels along one edge only: even falls along it come back exactly, and the ground is level across. */
    @Test
    void levelsAlongALineGiveItsFallAndNoneAcross() {
        GroundHeights ground = at(at -> -0.07 * at.xMm(), p(0, 0), p(1500, 0), p(3000, 0), p(4500, 0), p(12_000, 0));
        assertThat(ground.heightMm(p(2250, 0))).isCloseTo(-157.5, Offset.offset(1e-9));
        assertThat(ground.heightMm(p(2250, 600))).isCloseTo(-157.5, Offset.offset(1e-9));
        assertThat(ground.heightMm(p(13_000, -600))).isCloseTo(-910, Offset.offset(1e-9));
    }

    @Test
    void oneLevelIsLevelGroundAndNoneIsTheDatum() {
        assertThat(at(at -> -450, p(10, 20)).heightMm(p(5000, 900))).isEqualTo(-450);
        assertThat(GroundHeights.LEVEL.heightMm(p(1, 1))).isZero();
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24, 25})
    void thePlaneIsThatOfAGeneralLeastSquaresSolver(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int n = random.nextInt(4, 30);
        Point[] places = new Point[n];
        for (int i = 0; i < n; i++) {
            places[i] = p(random.nextDouble(0, 12_000), random.nextDouble(0, 9000));
        }
        GroundHeights ground = at(at -> random.nextDouble(-900, 0), places);
        SimpleMatrix design = new SimpleMatrix(n, 3);
        SimpleMatrix heights = new SimpleMatrix(n, 1);
        for (int i = 0; i < n; i++) {
            design.setRow(i, 0, 1, places[i].xMm(), places[i].yMm());
            heights.set(i, 0, ground.spots().get(i).heightMm());
        }
        SimpleMatrix solution = design.solve(heights);

        BestPlane plane = BestPlane.through(ground.spots());
        assertThat(plane.slope().xMm()).isCloseTo(solution.get(1, 0), Offset.offset(1e-9));
        assertThat(plane.slope().yMm()).isCloseTo(solution.get(2, 0), Offset.offset(1e-9));
        assertThat(plane.heightMm(p(0, 0))).isCloseTo(solution.get(0, 0), Offset.offset(1e-5));
    }

    @Test
    void theOrderOfTheLevelsDoesNotMatter() {
        GroundHeights ground =
                at(at -> -at.xMm() / 40 + Math.sin(at.yMm()) * 9, p(0, 0), p(900, 40), p(500, 700), p(20, 690));
        List<GroundHeights.Spot> turned = new ArrayList<>(ground.spots());
        Collections.reverse(turned);
        assertThat(new GroundHeights(turned).heightMm(p(333, 222)))
                .isCloseTo(ground.heightMm(p(333, 222)), Offset.offset(1e-9));
    }
}
