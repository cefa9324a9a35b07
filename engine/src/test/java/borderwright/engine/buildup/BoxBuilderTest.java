package borderwright.engine.buildup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.BuildMeans;
import borderwright.engine.buildup.parts.BuildMessage;
import borderwright.engine.buildup.parts.EndCut;
import borderwright.engine.buildup.parts.EndCut.LongPoint;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.garden.BuildSpec;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.given.GivenBuild;
import borderwright.engine.garden.given.GivenSection;
import borderwright.engine.garden.resolve.BuildResolver;
import borderwright.engine.garden.resolve.WoodResolver;
import borderwright.engine.garden.vocabulary.BoardMoisture;
import borderwright.engine.garden.vocabulary.BoardSurface;
import borderwright.engine.garden.vocabulary.CornerStyle;
import borderwright.engine.garden.vocabulary.SawKind;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.English;
import borderwright.engine.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class BoxBuilderTest {
    static final String LARCH = Footprints.LARCH.name();
    static final String BATTEN = Footprints.BATTEN.name();

    static Box build(FootprintPlan plan, CornerStyle style) {
        return BoxBuilder.build(plan, Footprints.rules(LARCH, BATTEN, style), Footprints.means(45, Map.of()));
    }

    static Piece piece(Box box, String label) {
        return box.pieces().stream()
                .filter(piece -> piece.label().equals(label))
                .findFirst()
                .orElseThrow(() -> new AssertionError(label + " is not among "
                        + box.pieces().stream().map(Piece::label).toList()));
    }

    static List<Piece> of(Box box, Role role) {
        return box.pieces().stream().filter(piece -> piece.role() == role).toList();
    }

    /** A strip 500 deep that turns a corner of the given inside angle; side 0 is the first wing's back. */
    static Ring bend(double degrees) {
        double angle = StrictMath.toRadians(degrees);
        Point v = new Point(StrictMath.cos(angle), StrictMath.sin(angle));
        double back = 500 / StrictMath.tan(angle / 2);
        return new Ring(List.of(
                new Point(0, 0),
                new Point(1400, 0),
                new Point(1400, 500),
                new Point(back, 500),
                v.times(1400).minus(v.left().times(500)),
                v.times(1400)));
    }

    @Nested
    class Published {
        /** Green, FPL-RP-489 (1989): width shrinks 6.031 - 0.215 M percent: 150 mm at 19 % loses 2.9 mm. */
        @Test
        void aBoardOfOneHundredAndFiftyLosesTwoPointNine() {
            Box box = build(Footprints.plan(Ring.rectangle(0, 0, 2400, 1200), 150), null);
            assertThat(150 - box.courses().get(0).dryTopMm()).isCloseTo(2.9, within(0.05));
        }

        @Test
        void twoCoursesOfTwoHundredAreThreeHundredAndNinetyTwoWhenDry() {
            BuildSpec rules = Footprints.rules(Footprints.TREATED.name(), Footprints.TREATED_BATTEN.name(), null);
            Box box = BoxBuilder.build(
                    Footprints.plan(Ring.rectangle(0, 0, 2400, 1200), 400), rules, Footprints.means(45, Map.of()));
            assertThat(box.courses()).hasSize(2);
            assertThat(box.courses().get(1).topMm()).isEqualTo(400);
            assertThat(box.courses().get(1).dryTopMm()).isCloseTo(392, within(0.5));
            assertThat(box.notes().stream().map(English.METRIC::text))
                    .contains("Requested height 400 mm: 2 courses of 200 mm stand 400 mm as built, and 392 mm when the"
                            + " boards have dried to 19 % moisture. Boards measured to 3 mm either way may make it"
                            + " 394 mm to 406 mm: sort boards of one width into one course.");
        }

        /** Geometry: a board of width 145 mitred at 22.5 degrees is 60.06 shorter on its short edge, at each end. */
        @Test
        void aCappingOfOneHundredAndFortyFiveRoundAnOctagon() {
            SectionSpec cap = Footprints.section("cap 25 x 145", 25, 145, false);
            List<SectionSpec> sections = new ArrayList<>(Footprints.SECTIONS);
            sections.add(cap);
            BuildMeans means = new BuildMeans(
                    sections, List.of(Footprints.saw(SawKind.MITRE_SAW, 45, 50)), Map.of(), UnitSystem.METRIC);
            BuildSpec rules = BuildResolver.build(GivenBuild.builder(LARCH)
                    .braces(BATTEN)
                    .capping(cap.name())
                    .cornerJoint(CornerStyle.MITRED)
                    .build());
            List<Point> octagon = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                double turn = StrictMath.PI / 4 * i;
                octagon.add(new Point(1000 * StrictMath.cos(turn), 1000 * StrictMath.sin(turn)));
            }
            Box box = BoxBuilder.build(Footprints.plan(new Ring(octagon), List.of(), 300, 0, true), rules, means);
            Piece capping = piece(box, "F1-cap-a");
            assertThat(capping.left().fenceDeg()).isCloseTo(22.5, within(1e-9));
            assertThat(capping.left().offsetMm()).isCloseTo(60.06, within(0.005));
            assertThat(capping.left().longPoint()).isEqualTo(LongPoint.LOWER_EDGE);
            assertThat(English.METRIC.text(capping.right().words()))
                    .isEqualTo("mitre 22.5° from square at the right end: long point on the outer edge, short point"
                            + " 60.1 mm back on the inner edge");
            assertThat(piece(box, "F1-1a").left().tiltDeg()).isCloseTo(22.5, within(1e-9));
        }
    }

    @Nested
    class Limits {
        @Test
        void inInchesWordsAndNamesAreInInches() {
            SectionSpec wall =
                    WoodResolver.section(GivenSection.builder("dressed 2x8", Length.ofMm(38.1), Length.ofMm(184.15))
                            .tolerance(Length.ofMm(1.5875))
                            .surface(BoardSurface.PLANED)
                            .species("pine")
                            .treated(true)
                            .moisture(BoardMoisture.WET)
                            .build());
            SectionSpec brace =
                    WoodResolver.section(GivenSection.builder("dressed 2x4", Length.ofMm(38.1), Length.ofMm(88.9))
                            .tolerance(Length.ofMm(1.5875))
                            .surface(BoardSurface.PLANED)
                            .species("pine")
                            .treated(true)
                            .moisture(BoardMoisture.WET)
                            .build());
            BuildMeans means = new BuildMeans(
                    List.of(wall, brace),
                    List.of(Footprints.saw(SawKind.MITRE_SAW, 45, 50)),
                    Map.of(),
                    UnitSystem.IMPERIAL);
            Box box = BoxBuilder.build(
                    Footprints.plan(bend(127), 355.6),
                    Footprints.rules("dressed 2x8", "dressed 2x4", CornerStyle.MITRED),
                    means);
            assertThat(English.IMPERIAL.text(piece(box, "F1-1a").left().words()))
                    .isEqualTo("bevel 26.5° from square at the left end: long point on the outer face, short point"
                            + " 3/4\" back on the inner face");
            assertThat(box.fixings()).extracting(Box.Fixing::item).contains("screw #10 x 3-1/2 in");
            assertThat(English.IMPERIAL.text(box.notes().get(0)))
                    .startsWith(
                            "Requested height 1' 2\": 2 courses of 7-1/4\" stand 1' 2-1/2\" as built, and 1' 2-3/16\"");
        }

        @Test
        void aShortSideSaysHowItsPiecesAreHeld() {
            Ring blunt = new Ring(List.of(
                    new Point(0, 0), new Point(1500, 0), new Point(1500, 600), new Point(100, 600), new Point(0, 500)));
            Box box = build(Footprints.plan(blunt, 300), CornerStyle.MITRED);
            EndCut cut = piece(box, "F1-1d").left();
            assertThat(cut.inRange()).isFalse();
            assertThat(English.METRIC.text(cut.how()))
                    .isEqualTo("only 120.7 mm long, less than table saw may hold (150 mm): make this end first on a"
                            + " long board and part the piece off last, the long part held and no stop against the"
                            + " piece, or cut it with a handsaw in a vice");
            assertThat(box.notes()).contains(BuildMessage.SHORT_PIECES.of());
        }

        @Test
        void wholeCoursesThatMissTheRequestAreSaid() {
            Box box = build(Footprints.plan(Ring.rectangle(0, 0, 1200, 600), 220), null);
            assertThat(box.unmet())
                    .extracting(p -> p.sentence(English.METRIC))
                    .containsExactly(
                            "Box F1 is to be 220 mm high, but whole courses of larch 25 x 150 come to 147 mm when dry. Ask for"
                                    + " 147 mm or 294 mm, or take boards of another width.");
        }

        @Test
        void theDriedHeightDecidesTheCount() {
            assertThat(build(Footprints.plan(Ring.rectangle(0, 0, 1200, 600), 367), null)
                            .courses())
                    .hasSize(2);
            assertThat(build(Footprints.plan(Ring.rectangle(0, 0, 1200, 600), 368), null)
                            .courses())
                    .hasSize(3);
        }

        @Test
        void heartSideGoesOutUnlessSaidOtherwise() {
            Box box = build(Footprints.plan(Ring.rectangle(0, 0, 1200, 600), 150), null);
            assertThat(English.METRIC.text(piece(box, "F1-1a").faceOut()))
                    .isEqualTo("heart side out (the rings at the end arch towards the other face): its edges cup into"
                            + " the box");
        }

        @Test
        void twiceBuiltIsTheSame() {
            FootprintPlan plan = Footprints.plan(bend(127), List.of(), 450, 150, true);
            assertThat(build(plan, CornerStyle.MITRED)).isEqualTo(build(plan, CornerStyle.MITRED));
        }
    }

    @Nested
    class Refusals {
        @Test
        void wallsThatMeetInsideAreAProblemNotAFault() {
            Box box = build(Footprints.plan(Ring.rectangle(0, 0, 1200, 45), 300), null);
            assertThat(box.pieces()).isEmpty();
            assertThat(box.soilDepthMm()).isZero();
            assertThat(box.inside()).hasSize(1);
            assertThat(box.unmet())
                    .extracting(p -> p.sentence(English.METRIC))
                    .containsExactly(
                            "Box F1 is so narrow, or has so short a side, that its walls of 25 mm meet inside it. Make it"
                                    + " deeper, leave the sharp corner out with a short side across it, or take thinner"
                                    + " boards.");
        }

        @Test
        void aSideThatNoBoardSpansIsSaid() {
            Box box = BoxBuilder.build(
                    Footprints.plan(Ring.rectangle(0, 0, 1200, 600), 300),
                    Footprints.rules(LARCH, BATTEN, null),
                    Footprints.means(45, Map.of(LARCH, 150.0)));
            assertThat(box.unmet())
                    .extracting(p -> p.sentence(English.METRIC))
                    .contains(
                            "Side a of F1 is 1175 mm long; pieces of larch 25 x 150 up to 150 mm cannot be joined on its"
                                    + " supports. Find longer boards, or set braces closer.");
        }

        @Test
        void aCappingThatMeetsInsideIsSaid() {
            Box box = build(Footprints.plan(Ring.rectangle(0, 0, 1200, 250), List.of(), 300, 0, true), null);
            assertThat(box.unmet()).extracting(Problem::code).containsExactly("capping-does-not-fit");
            assertThat(of(box, Role.CAPPING)).isEmpty();
        }

        @Test
        void anUnknownSectionIsTheCallersFault() {
            assertThatThrownBy(() -> BoxBuilder.build(
                            Footprints.plan(Ring.rectangle(0, 0, 1200, 600), 300),
                            Footprints.rules("oak", BATTEN, null),
                            Footprints.means(45, Map.of())))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageStartingWith("no section is named oak; the sections are [larch 25 x 150,");
        }

        @Test
        void noSawsSaysSo() {
            Box box = BoxBuilder.build(
                    Footprints.plan(Ring.rectangle(0, 0, 1200, 600), 300),
                    Footprints.rules(LARCH, BATTEN, null),
                    new BuildMeans(Footprints.SECTIONS, List.of(), Map.of(), UnitSystem.METRIC));
            assertThat(English.METRIC.text(piece(box, "F1-1a").left().how()))
                    .isEqualTo("no saw is listed: list the saws at hand under `saws`");
        }
    }
}
