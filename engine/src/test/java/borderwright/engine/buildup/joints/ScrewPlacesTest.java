package borderwright.engine.buildup.joints;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.buildup.BoxBuilder;
import borderwright.engine.buildup.Footprints;
import borderwright.engine.buildup.SeededBoxes;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Box.Hold;
import borderwright.engine.buildup.parts.Joint;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.ScrewLine;
import borderwright.engine.garden.vocabulary.CornerStyle;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every screw of random boxes as a line in space. */
class ScrewPlacesTest {
    private static final int BOXES = Integer.getInteger("screws.boxes", 50);

    /** No two nearer than 1.5 diameters (common practice, no source); what is covered, the box says itself. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {21, 22, 23, 24, 25, 26, 27, 28, 29, 30})
    void noScrewMeetsAnotherAndEachLiesInWood(long seed) {
        int screws = 0;
        int covered = 0;
        Map<String, Integer> nearEdges = new TreeMap<>();
        List<Box> boxes = SeededBoxes.of(seed, BOXES);
        for (int i = 0; i < boxes.size(); i++) {
            ScrewCheck check = new ScrewCheck(boxes.get(i));
            assertThat(check.faults()).as("seed %s box %s", seed, i).isEmpty();
            assertThat(check.covered()).as("seed %s box %s", seed, i).isEqualTo(check.coveredBySayingSo());
            screws += check.count();
            covered += check.covered();
            check.nearEdges().forEach((what, count) -> nearEdges.merge(what, count, Integer::sum));
        }
        assertThat(screws).isGreaterThan(100 * BOXES);
        assertThat(covered).as("heads under another piece").isLessThan(screws / 100);
        // At a corner boards end beside the post, and a lap ends a board's thickness past its screws: less than the
        // table wants.
        nearEdges.keySet().removeIf(what -> what.startsWith("LAP "));
        assertThat(nearEdges.values().stream().mapToInt(count -> count).sum())
                .as("near an end or an edge, beside the %s screws of the laps: %s", screws, nearEdges)
                .isLessThan(3 * screws / 10);
    }

    @Test
    void distanceBetweenCrossingScrewsIsThatOfTheirAxes() {
        ScrewLine a = ScrewLine.level(new Point(0, 0), 100, new Point(1, 0), 90);
        assertThat(a.nearestMm(ScrewLine.level(new Point(45, -45), 112, new Point(0, 1), 90)))
                .isCloseTo(12, within(1e-9));
        assertThat(a.nearestMm(ScrewLine.level(new Point(0, 9), 100, new Point(1, 0), 90)))
                .isCloseTo(9, within(1e-9));
        // A screw straight down that ends 5 mm above the other.
        assertThat(a.nearestMm(ScrewLine.down(new Point(45, 0), 165, 60))).isCloseTo(5, within(1e-9));
        assertThat(a.nearestMm(ScrewLine.level(new Point(94, 3), 100, new Point(1, 0), 90)))
                .isCloseTo(5, within(1e-9));
    }

    /** An L: its corner of 270 degrees has two posts, each screwed to its own wall in every course. */
    @Test
    void postsBesideAReentrantCornerAreScrewedToTheirWallsBoardByBoard() {
        Box box = l(false);
        List<Piece> posts = box.pieces().stream()
                .filter(piece -> piece.role() == Piece.Role.POST && piece.side() == 3)
                .toList();
        assertThat(posts).hasSize(2);
        for (Piece post : posts) {
            List<ScrewLine> screws = box.joints().stream()
                    .filter(joint ->
                            joint.hold() == Hold.WALL_TO_UPRIGHT && joint.into().equals(post.label()))
                    .flatMap(joint -> joint.screws().stream())
                    .toList();
            for (Box.Course course : box.courses()) {
                assertThat(screws.stream().filter(s -> s.zMm() > course.bottomMm() && s.zMm() < course.topMm()))
                        .as(post.label())
                        .hasSize(2);
            }
        }
    }

    @Test
    void screwsOfAStrapAreAtItsHeightAndBelowTheEndsOfThePosts() {
        Box box = l(false);
        Joint straps = joint(box, Hold.CORNER_STRAP);
        Joint screws = joint(box, Hold.STRAP_TO_UPRIGHT);
        assertThat(straps.screws()).hasSameSizeAs(box.courses());
        assertThat(screws.screws()).hasSize(4 * box.courses().size());
        for (ScrewLine screw : screws.screws()) {
            assertThat(straps.screws().stream().mapToDouble(ScrewLine::zMm)).contains(screw.zMm());
            box.pieces().stream()
                    .filter(piece -> piece.role() == Piece.Role.POST)
                    .forEach(post -> assertThat(screw.zMm())
                            .isLessThanOrEqualTo(post.place().topMm() - 28));
        }
    }

    /** From the mitre, along the screws' line: 12 diameters, a3,t of EN 1995-1-1 table 8.2 in drilled holes. */
    @Test
    void cappingScrewsStayTwelveDiametersFromTheMitres() {
        Box box = l(true);
        int count = 0;
        for (Joint joint : box.joints()) {
            if (joint.hold() != Hold.CAPPING_TO_WALL) {
                continue;
            }
            Ring cap = box.pieces().stream()
                    .filter(piece -> piece.label().equals(joint.through()))
                    .findFirst()
                    .orElseThrow()
                    .place()
                    .plan();
            double d = box.fixings().stream()
                    .filter(joint::isOf)
                    .findFirst()
                    .orElseThrow()
                    .diameterMm();
            Point along = box.plan().outline().direction(joint.side());
            for (ScrewLine screw : joint.screws()) {
                for (int hand = -1; hand <= 1; hand += 2) {
                    Point end = screw.head().plus(along.times(hand * (12 * d - 0.01)));
                    assertThat(cap.contains(end, 0)).as(joint.through()).isTrue();
                    count++;
                }
            }
        }
        assertThat(count).isGreaterThan(20);
    }

    private static Joint joint(Box box, Hold hold) {
        return box.joints().stream()
                .filter(joint -> joint.hold() == hold && joint.side() == 3)
                .findFirst()
                .orElseThrow();
    }

    private static Box l(boolean capped) {
        Ring ring = new Ring(List.of(
                new Point(0, 0),
                new Point(2400, 0),
                new Point(2400, 700),
                new Point(700, 700),
                new Point(700, 2200),
                new Point(0, 2200)));
        return BoxBuilder.build(
                Footprints.plan(ring, List.of(), 400, 0, capped),
                Footprints.rules(Footprints.TREATED.name(), Footprints.TREATED_BATTEN.name(), CornerStyle.MITRED),
                Footprints.means(45, Map.of(Footprints.TREATED.name(), 4800.0)));
    }
}
