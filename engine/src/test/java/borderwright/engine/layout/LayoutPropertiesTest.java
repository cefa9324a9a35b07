package borderwright.engine.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.garden.RunSpec;
import borderwright.engine.garden.vocabulary.CornerTurn;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.layout.plan.Layout;
import borderwright.engine.layout.plan.LayoutRules;
import borderwright.engine.survey.GroundHeights;
import borderwright.engine.survey.Outline;
import borderwright.engine.survey.OutlineEdge;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds of every layout, on borders and requests made from seeds; the seed stands in each failure. */
class LayoutPropertiesTest {
    private static final LayoutRules RULES = new LayoutRules(25, 150, 4800);

    /** Cases for each of the twelve seeds; more with {@code -Dlayout.cases=500}. */
    private static final int EACH = Integer.getInteger("layout.cases", 8);

    static LongStream seeds() {
        return LongStream.range(0, 12);
    }

    private static Layout lay(Outline outline, List<RunSpec> runs) {
        return BorderLayout.lay(outline, runs, RULES, Set.of());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void boxesAreSoundOnStraightBorders(long seed) {
        verifyAll(seed, false);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void boxesAreSoundOnCurvedBorders(long seed) {
        verifyAll(seed, true);
    }

    private static void verifyAll(long seed, boolean curved) {
        for (long s = seed * EACH; s < (seed + 1) * EACH; s++) {
            RandomBorders random = new RandomBorders(s);
            Outline outline = random.outline(curved);
            List<RunSpec> runs = random.runs(outline);
            Layout layout = lay(outline, runs);
            LayoutVerifier.verify(outline, layout, RULES, runs, "seed " + s);
            levels(outline, layout, "seed " + s);
        }
    }

    /** No bed floats above the ground at a corner of its box, and a side's ground is no higher than at its ends. */
    private static void levels(Outline outline, Layout layout, String as) {
        for (FootprintPlan box : layout.boxes()) {
            for (int i = 0; i < box.outline().size(); i++) {
                double ground = outline.ground().heightMm(box.outline().corner(i));
                assertThat(box.bedMm()).as("%s %s", as, box.name()).isLessThanOrEqualTo(ground + 1e-3);
                assertThat(box.sides().get(i).groundMm())
                        .as("%s %s", as, box.name())
                        .isLessThanOrEqualTo(ground + 1e-3);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void wishedNumbersAreMetOrTheProblemSaid(long seed) {
        for (long s = seed * EACH; s < (seed + 1) * EACH; s++) {
            RandomBorders random = new RandomBorders(s + 100_000);
            Outline outline = random.outline(false);
            RunSpec spec = random.runs(outline).get(0);
            Layout layout = lay(outline, List.of(spec));
            if (spec.bays().planters().isPresent() && layout.unmet().isEmpty()) {
                int laid = layout.boxes().stream()
                        .mapToInt(b -> b.planters().size())
                        .sum();
                int edges = spec.along().size() - 1;
                assertThat(laid)
                        .as("seed %d", s)
                        .isEqualTo(spec.bays().planters().getAsInt() * edges + cornerPlanters(outline, spec));
            }
        }
    }

    private static int cornerPlanters(Outline outline, RunSpec spec) {
        int count = 0;
        for (int i = 1; i + 1 < spec.along().size(); i++) {
            String corner = spec.along().get(i);
            CornerTurn turn = spec.turning().turn();
            for (RunSpec.CornerSpec said : Lists.reversed(spec.turning().others())) {
                turn = said.corner().equals(corner) ? said.turn() : turn;
            }
            double degrees = StrictMath.toDegrees(
                    outline.ring().insideAngle(outline.cornerNames().indexOf(corner)));
            count += turn != CornerTurn.LEAVE_OPEN && Math.abs(degrees - 180) >= 10 ? 1 : 0;
        }
        return count;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theSameWishGivesTheSameLayout(long seed) {
        Outline outline = new RandomBorders(seed).outline(true);
        List<RunSpec> runs = new RandomBorders(seed + 500).runs(outline);
        assertThat(lay(outline, runs)).isEqualTo(lay(outline, runs));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void turningAndShiftingTheGardenTurnsAndShiftsTheLayout(long seed) {
        double cos = StrictMath.cos(1.234);
        double sin = StrictMath.sin(1.234);
        UnaryOperator<Point> moved =
                p -> new Point(p.xMm() * cos - p.yMm() * sin + 12_345, p.xMm() * sin + p.yMm() * cos - 6_789);
        for (long s = seed * EACH; s < seed * EACH + 3; s++) {
            RandomBorders random = new RandomBorders(s);
            Outline outline = random.outline(false);
            List<RunSpec> runs = random.runs(outline);
            assertAlike(lay(outline, runs), lay(moved(outline, moved), runs), moved, "seed " + s);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theMirrorImageOfAGardenHasTheMirrorImageOfItsLayout(long seed) {
        UnaryOperator<Point> mirrored = p -> new Point(-p.xMm(), p.yMm());
        for (long s = seed * EACH; s < seed * EACH + 3; s++) {
            RandomBorders random = new RandomBorders(s);
            Outline outline = random.outline(false);
            List<RunSpec> runs = random.runs(outline).subList(0, 1);
            if (runs.get(0).along().size() < 4) {
                assertAlike(lay(outline, runs), lay(mirror(outline), runs), mirrored, "seed " + s);
            }
        }
    }

    /** Same boxes by name, each with its corners in the same places but for rounding, in whatever order they go round. */
    private static void assertAlike(Layout one, Layout other, UnaryOperator<Point> place, String as) {
        assertThat(other.boxes().stream().map(FootprintPlan::name))
                .as(as)
                .containsExactlyElementsOf(
                        one.boxes().stream().map(FootprintPlan::name).toList());
        for (int i = 0; i < one.boxes().size(); i++) {
            List<Point> corners = other.boxes().get(i).outline().corners();
            for (Point corner : one.boxes().get(i).outline().corners()) {
                Point expected = place.apply(corner);
                double nearest =
                        corners.stream().mapToDouble(expected::distanceMm).min().orElseThrow();
                assertThat(nearest).as("%s %s", as, one.boxes().get(i).name()).isCloseTo(0, within(1e-3));
            }
            assertThat(other.boxes().get(i).planters())
                    .as(as)
                    .isEqualTo(one.boxes().get(i).planters());
            assertThat(other.boxes().get(i).bedMm())
                    .as(as)
                    .isCloseTo(one.boxes().get(i).bedMm(), within(1e-3));
        }
    }

    private static Outline moved(Outline outline, UnaryOperator<Point> place) {
        return new Outline(
                new Ring(outline.ring().corners().stream().map(place).toList()),
                outline.cornerNames(),
                outline.edges(),
                new GroundHeights(outline.ground().spots().stream()
                        .map(s -> new GroundHeights.Spot(s.name(), place.apply(s.at()), s.heightMm(), s.sdMm()))
                        .toList()));
    }

    /** Seen in a mirror the corners go round the other way, so ring, names and edges are turned about. */
    private static Outline mirror(Outline outline) {
        Outline there = new Outline(outline.ring(), outline.cornerNames(), outline.edges(), outline.ground());
        List<Point> corners = new ArrayList<>();
        for (Point p : there.ring().corners()) {
            corners.add(new Point(-p.xMm(), p.yMm()));
        }
        Collections.reverse(corners);
        List<OutlineEdge> edges = Lists.reversed(there.edges());
        Collections.rotate(edges, -1);
        List<GroundHeights.Spot> spots = there.ground().spots().stream()
                .map(s -> new GroundHeights.Spot(
                        s.name(), new Point(-s.at().xMm(), s.at().yMm()), s.heightMm(), s.sdMm()))
                .toList();
        return new Outline(new Ring(corners), Lists.reversed(there.cornerNames()), edges, new GroundHeights(spots));
    }

    private static final class Lists {
        static <T> List<T> reversed(List<T> list) {
            List<T> other = new ArrayList<>(list);
            Collections.reverse(other);
            return other;
        }
    }
}
