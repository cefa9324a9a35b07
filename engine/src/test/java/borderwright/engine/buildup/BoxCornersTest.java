package borderwright.engine.buildup;

import static borderwright.engine.buildup.BoxBuilderTest.BATTEN;
import static borderwright.engine.buildup.BoxBuilderTest.LARCH;
import static borderwright.engine.buildup.BoxBuilderTest.bend;
import static borderwright.engine.buildup.BoxBuilderTest.build;
import static borderwright.engine.buildup.BoxBuilderTest.of;
import static borderwright.engine.buildup.BoxBuilderTest.piece;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.BuildMessage;
import borderwright.engine.buildup.parts.EndCut;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.buildup.parts.SawBench;
import borderwright.engine.garden.BuildSpec;
import borderwright.engine.garden.SawSpec;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.given.GivenSaw;
import borderwright.engine.garden.resolve.WoodResolver;
import borderwright.engine.garden.vocabulary.CornerStyle;
import borderwright.engine.garden.vocabulary.SawKind;
import borderwright.engine.geometry.Ring;
import borderwright.engine.measure.Angle;
import borderwright.engine.measure.Length;
import borderwright.engine.message.English;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Corners of boxes, and the saws that cut them. */
class BoxCornersTest {
    @Nested
    class Corners {
        @Test
        void aSquareLappedBoxHasAllCoursesOfTheSameLengths() {
            Box box = build(Footprints.plan(Ring.rectangle(0, 0, 2400, 1200), 300), null);
            for (int course = 1; course <= 2; course++) {
                for (String side : List.of("a", "c")) {
                    assertThat(piece(box, "F1-" + course + side).length()).isEqualTo(Length.ofMm(2375));
                }
                for (String side : List.of("b", "d")) {
                    assertThat(piece(box, "F1-" + course + side).length()).isEqualTo(Length.ofMm(1175));
                }
            }
            assertThat(of(box, Role.POST)).hasSize(4).allSatisfy(post -> {
                assertThat(post.rip()).isNull();
                assertThat(post.touchesGround()).isTrue();
                assertThat(post.length()).isEqualTo(Length.ofMm(270));
            });
        }

        @Test
        void lapsAlternate() {
            Box box = build(Footprints.plan(Ring.rectangle(0, 0, 2400, 1200), 300), null);
            double left1 = piece(box, "F1-1a").place().plan().corner(0).xMm();
            double left2 = piece(box, "F1-2a").place().plan().corner(0).xMm();
            assertThat(left1).isEqualTo(25);
            assertThat(left2).isCloseTo(0, within(1e-9));
        }

        @Test
        void aBendOfOneHundredAndTwentySevenIsCutAtTwentySixAndAHalf() {
            Box box = build(Footprints.plan(bend(127), 300), CornerStyle.MITRED);
            Piece back = piece(box, "F1-1a");
            Piece front = piece(box, "F1-1c");
            assertThat(back.left().tiltDeg()).isCloseTo(26.5, within(1e-9));
            assertThat(English.METRIC.text(back.left().words()))
                    .isEqualTo("bevel 26.5° from square at the left end: long point on the outer face, short point"
                            + " 12.5 mm back on the inner face");
            assertThat(English.METRIC.text(back.left().how()))
                    .isEqualTo("table saw: tilt the blade 26.5° from square (63.5° on a scale that reads 90° for a"
                            + " square cut)");
            assertThat(English.METRIC.text(front.right().words()))
                    .isEqualTo("bevel 26.5° from square at the right end: long point on the inner face, short point"
                            + " 12.5 mm back on the outer face");
            double shorter = outsideMm(back) - outsideMm(front);
            assertThat(shorter).isCloseTo(500 * StrictMath.tan(StrictMath.toRadians(26.5)), within(1e-6));
        }

        private static double outsideMm(Piece board) {
            return board.place().plan().sideMm(0);
        }

        @Test
        void theObtusePostIsChamferedToBearOnBothBoards() {
            Box box = build(Footprints.plan(bend(127), 300), CornerStyle.MITRED);
            Piece post = of(box, Role.POST).stream()
                    .filter(p -> p.rip() != null)
                    .findFirst()
                    .orElseThrow();
            assertThat(post.rip().tiltDeg()).isCloseTo(37, within(1e-9));
            assertThat(English.METRIC.text(post.rip().words()))
                    .isEqualTo("tilt the blade 37.0° from square and rip along one edge of batten 47 x 50 so that 31.2"
                            + " mm of the 50 mm face is left; rip a long length, then cut the pieces from it");
        }

        @Test
        void treatedPostsAreNeverRipped() {
            BuildSpec rules = Footprints.rules(LARCH, Footprints.TREATED_BATTEN.name(), CornerStyle.MITRED);
            Box box = BoxBuilder.build(Footprints.plan(bend(127), 300), rules, Footprints.means(45, Map.of()));
            assertThat(box.pieces()).allMatch(piece -> piece.rip() == null);
            assertThat(box.notes().stream().map(English.METRIC::text))
                    .contains("Corner 1 of F1 (127.0°): two uprights, one on each board, because treated timber is not"
                            + " ripped lengthwise (the rip would bare untreated wood). A corner strap of bent steel"
                            + " across them at each course holds the corner together.");
            assertThat(box.fixings()).extracting(Box.Fixing::item).contains("corner strap");
            assertThat(box.notes()).contains(BuildMessage.TREATED_TIMBER.of(List.of("treated batten 47 x 50")));
        }

        @Test
        void aCornerBeyondTheSawsIsBuiltTheOtherWayAndReported() {
            Box box = build(Footprints.plan(bend(62), 300), CornerStyle.MITRED);
            assertThat(box.unmet()).isEmpty();
            assertThat(box.notes().stream().map(English.METRIC::text))
                    .contains("Corner 1 of F1 is 62.0°: lapped, not mitred, because the saws at hand tilt far enough"
                            + " only for that (28.0° from square).");
            assertThat(piece(box, "F1-1a").left().tiltDeg()).isCloseTo(28, within(1e-9));
        }

        @Test
        void aCornerBeyondAllSawsSaysHowElse() {
            Box box = BoxBuilder.build(
                    Footprints.plan(bend(62), 300),
                    Footprints.rules(LARCH, BATTEN, null),
                    Footprints.means(20, Map.of()));
            assertThat(box.unmet())
                    .extracting(p -> p.sentence(English.METRIC))
                    .contains(
                            "Corner 1 of F1 is 62.0°: even lapped it needs a cut 28.0° from square, more than any saw at hand"
                                    + " tilts. Cut its ends by hand to a line drawn round the board, or cut the corner off with"
                                    + " a short side so that it becomes two blunter corners.");
            EndCut cut = piece(box, "F1-1a").left();
            assertThat(cut.inRange()).isFalse();
            assertThat(English.METRIC.text(cut.how()))
                    .isEqualTo("no saw at hand tilts 28.0°: table saw stops at 20.0°. Clamp the piece on a wedge of"
                            + " 8.0° fixed to the saw's table, or draw the line round all four sides and cut it with a"
                            + " handsaw");
        }
    }

    @Nested
    class Saws {
        private static final SectionSpec THICK = Footprints.section("thick 75 x 150", 75, 150, false);

        private static SawBench.How how(double tilt, double fence, double shortMm, double crosscut) {
            SawSpec saw = WoodResolver.saw(GivenSaw.builder("mitre saw", SawKind.MITRE_SAW)
                    .tilt(Angle.ofDegrees(45))
                    .mitre(Angle.ofDegrees(48))
                    .widestBoard(Length.ofMm(crosscut))
                    .thickestBoard(Length.ofMm(90))
                    .shortestPiece(Length.ofMm(150))
                    .lengthStop(true)
                    .build());
            return new SawBench(List.of(saw)).how(new SawBench.Cut(tilt, fence, THICK, shortMm, shortMm));
        }

        @Test
        void aTiltedBladeReachesLessDeep() {
            assertThat(how(30, 0, 500, 300).inRange()).isTrue();
            assertThat(English.METRIC.text(how(40, 0, 500, 300).words()))
                    .isEqualTo("the cut is 97.9 mm deep at this tilt, more than these saws reach: cut from both faces"
                            + " to one line, or with a handsaw");
        }

        @Test
        void aBoardWiderThanTheCrosscut() {
            assertThat(English.METRIC.text(how(0, 0, 500, 120).words()))
                    .isEqualTo(
                            "the cut is 150 mm long across the board, more than these saws cut: cut from both edges to one"
                                    + " line, or with a handsaw");
        }

        @Test
        void aFenceAngleBeyondTheScale() {
            assertThat(English.METRIC.text(how(0, 56, 500, 300).words()))
                    .isEqualTo("no saw at hand turns 56.0°: mitre saw stops at 48.0°. Draw the line across"
                            + " and cut it along a clamped guide or with a handsaw");
            assertThat(English.METRIC.text(how(0, 48, 500, 300).words()))
                    .isEqualTo("mitre saw: turn the head 48.0° from square (42.0° on a scale that reads 90° for a"
                            + " square cut)");
        }
    }
}
