package borderwright.engine.buildup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.BracingScheme;
import borderwright.engine.buildup.parts.BuildMeans;
import borderwright.engine.buildup.parts.BuildMessage;
import borderwright.engine.buildup.parts.CutMessage;
import borderwright.engine.buildup.parts.EndCut;
import borderwright.engine.buildup.parts.EndCut.LongPoint;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.buildup.parts.SawBench;
import borderwright.engine.garden.BuildSpec;
import borderwright.engine.garden.SawSpec;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.given.GivenBuild;
import borderwright.engine.garden.given.GivenSaw;
import borderwright.engine.garden.given.GivenSection;
import borderwright.engine.garden.resolve.BuildResolver;
import borderwright.engine.garden.resolve.WoodResolver;
import borderwright.engine.garden.vocabulary.BoardMoisture;
import borderwright.engine.garden.vocabulary.BoardSurface;
import borderwright.engine.garden.vocabulary.CornerStyle;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.garden.vocabulary.SawKind;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.DividerLine;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.layout.plan.SidePlan;
import borderwright.engine.measure.Angle;
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
    private static final String LARCH = Footprints.LARCH.name();
    private static final String BATTEN = Footprints.BATTEN.name();

    private static Box build(FootprintPlan plan, CornerStyle style) {
        return BoxBuilder.build(plan, Footprints.rules(LARCH, BATTEN, style), Footprints.means(45, Map.of()));
    }

    private static Piece piece(Box box, String label) {
        return box.pieces().stream()
                .filter(piece -> piece.label().equals(label))
                .findFirst()
                .orElseThrow(() -> new AssertionError(label + " is not among "
                        + box.pieces().stream().map(Piece::label).toList()));
    }

    private static List<Piece> of(Box box, Role role) {
        return box.pieces().stream().filter(piece -> piece.role() == role).toList();
    }

    /** A strip 500 deep that turns a corner of the given inside angle; side 0 is the first wing's back. */
    private static Ring bend(double degrees) {
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
                    .isEqualTo("bevel 26.5° from square at the left end: long point on the outside face, short point"
                            + " 12.5 mm back on the inside face");
            assertThat(English.METRIC.text(back.left().how()))
                    .isEqualTo("table saw: tilt the blade 26.5° from square (63.5° on a scale that reads 90° for a"
                            + " square cut)");
            assertThat(English.METRIC.text(front.right().words()))
                    .isEqualTo("bevel 26.5° from square at the right end: long point on the inside face, short point"
                            + " 12.5 mm back on the outside face");
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
    class Runs {
        private final FootprintPlan run = Footprints.run(9575, 560, 450, 1197, 2394, 3591, 4788, 5985, 7182, 8379);
        private final Box box = BoxBuilder.build(
                run, Footprints.rules(LARCH, BATTEN, null), Footprints.means(45, Map.of(LARCH, 4780.0)));

        @Test
        void longSidesAreJoinedOnUprightsAndStaggered() {
            List<Double> first = joints(1);
            List<Double> second = joints(2);
            assertThat(first).isNotEmpty().doesNotContainAnyElementsOf(second);
            assertThat(joints(3)).isEqualTo(first);
            for (double joint : first) {
                double left = joint - 1;
                double right = joint + 1;
                assertThat(of(box, Role.BRACE)).anyMatch(brace -> bears(brace, left));
                assertThat(of(box, Role.BRACE)).anyMatch(brace -> bears(brace, right));
            }
            assertThat(of(box, Role.WALL)).allMatch(piece -> piece.length().mm() <= 4780);
        }

        private List<Double> joints(int course) {
            return of(box, Role.WALL).stream()
                    .filter(piece -> piece.course() == course && piece.side() == 0)
                    .map(piece -> piece.place().plan().corner(0).xMm())
                    .filter(x -> x > 100)
                    .sorted()
                    .toList();
        }

        /** Within the reach of the upright, or at a divider on the board's own side of it. */
        private boolean bears(Piece brace, double x) {
            List<Point> corners = brace.place().plan().corners();
            double least = corners.stream().mapToDouble(Point::xMm).min().orElseThrow();
            double most = corners.stream().mapToDouble(Point::xMm).max().orElseThrow();
            double near = corners.stream().mapToDouble(Point::yMm).min().orElseThrow();
            return StrictMath.abs(near - 25) < 0.01 && least - 13 < x && x < most + 13;
        }

        @Test
        void eachPlanterHasItsOwnGround() {
            assertThat(box.inside()).hasSize(8);
            assertThat(box.inside().get(7).areaMm2()).isCloseTo((1197 - 25 - 12.5) * 510, within(1e-3));
            assertThat(box.inside().get(3).areaMm2()).isCloseTo((1197 - 25) * 510.0, within(1e-3));
        }

        @Test
        void bracesStandNoFurtherApartThanTheSpacing() {
            List<Double> middles = new ArrayList<>();
            for (Piece piece : box.pieces()) {
                List<Point> corners = piece.place().plan().corners();
                double near = corners.stream().mapToDouble(Point::yMm).min().orElseThrow();
                if ((piece.role() == Role.BRACE || piece.role() == Role.POST) && StrictMath.abs(near - 25) < 0.01) {
                    middles.add(
                            corners.stream().mapToDouble(Point::xMm).average().orElseThrow());
                }
            }
            middles.sort(null);
            for (int i = 0; i + 1 < middles.size(); i++) {
                assertThat(middles.get(i + 1) - middles.get(i)).isLessThan(605);
            }
        }

        @Test
        void dividersButtBetweenFrontAndBack() {
            assertThat(of(box, Role.DIVIDER)).hasSize(21).allSatisfy(board -> {
                assertThat(board.length()).isEqualTo(Length.ofMm(510));
                assertThat(board.left().isSquare()).isTrue();
                assertThat(English.METRIC.text(board.faceOut())).startsWith("marked face towards F");
            });
        }

        @Test
        void labelsAreUniqueAndSpeakOfPlanterCourseAndSide() {
            assertThat(box.pieces())
                    .extracting(Piece::label)
                    .doesNotHaveDuplicates()
                    .contains("F1-1c", "F8-1a", "F3-divider2");
        }

        @Test
        void screwsAreNamedAsGoodsAreSold() {
            assertThat(box.fixings()).extracting(Box.Fixing::item).containsOnly("screw 5 x 70");
            assertThat(box.fixings().get(0).pilotMm()).isEqualTo(2.5);
            assertThat(box.fixings().get(0).clearanceMm()).isEqualTo(5.5);
            assertThat(box.fixings().get(0).countersinkMm()).isEqualTo(10);
        }

        /** As the layout draws boxes: the back first, dividers from front to back, the run's first planter first. */
        @Test
        void withOneDividerTheFirstPlanterIsAtTheStartOfTheBack() {
            FootprintPlan plan = FootprintPlan.builder()
                    .name("F1-F2")
                    .run("run")
                    .outline(Ring.rectangle(0, 0, 2000, 600))
                    .sides(sides(SidePlan.Role.BACK, SidePlan.Role.END, SidePlan.Role.FRONT, SidePlan.Role.END))
                    .dividers(List.of(new DividerLine(2, new Point(700, 600), 0, new Point(700, 0))))
                    .planters(List.of("F1", "F2"))
                    .bedMm(100)
                    .heightMm(300)
                    .build();
            Box two = build(plan, null);
            assertThat(two.inside().get(0).areaMm2()).isCloseTo((700 - 25 - 12.5) * 550, within(1e-3));
            assertThat(two.courses().get(0).bottomMm()).isEqualTo(100);
            assertThat(piece(two, "F1-1d").place().bottomMm()).isEqualTo(100);
        }

        private static List<SidePlan> sides(SidePlan.Role... roles) {
            List<SidePlan> sides = new ArrayList<>();
            for (SidePlan.Role role : roles) {
                sides.add(new SidePlan(role, EdgeKind.OPEN, role == SidePlan.Role.END, 0));
            }
            return sides;
        }

        @Test
        void boardsOfASideThatWaitsWait() {
            FootprintPlan plan = FootprintPlan.builder()
                    .name("F1")
                    .run("run")
                    .outline(Ring.rectangle(0, 0, 1200, 600))
                    .sides(sides(SidePlan.Role.BACK, SidePlan.Role.END, SidePlan.Role.FRONT, SidePlan.Role.END))
                    .planters(List.of("F1"))
                    .bedMm(0)
                    .heightMm(300)
                    .build();
            Box one = build(plan, null);
            assertThat(of(one, Role.WALL))
                    .allSatisfy(piece -> assertThat(piece.waits()).isEqualTo(piece.side() == 1 || piece.side() == 3));
            assertThat(of(one, Role.WALL))
                    .allSatisfy(piece -> assertThat(piece.touchesGround()).isEqualTo(piece.course() == 1));
        }
    }

    @Nested
    class CrossTies {
        /** 600 long and 2400 deep: the ends are the sides that bow, so ties run between them, 600 less two boards. */
        @Test
        void aBoxDeeperThanItIsLongHasItsTiesFromEndToEnd() {
            Box box = build(Footprints.run(600, 2400, 450), null);

            assertThat(of(box, Role.TIE)).isNotEmpty().allSatisfy(tie -> {
                assertThat(tie.length()).isEqualTo(Length.ofMm(550));
                assertThat(English.METRIC.text(tie.faceOut())).isEqualTo("any face; left end to side b");
            });
        }

        @Test
        void aTieReachesBothInnerFacesAndIsScrewedSideways() {
            Box box = build(Footprints.run(2400, 800, 450), null);
            Piece tie = of(box, Role.TIE).get(0);
            assertThat(of(box, Role.TIE)).hasSize(1);
            assertThat(tie.length()).isEqualTo(Length.ofMm(750));
            assertThat(tie.left().isSquare()).isTrue();
            assertThat(tie.place().topMm()).isEqualTo(375);
            assertThat(box.fixings())
                    .filteredOn(fixing -> fixing.hold() == Box.Hold.TIE_TO_BRACE)
                    .singleElement()
                    .satisfies(fixing -> assertThat(fixing.count()).isEqualTo(6));
            assertThat(box.notes().stream().map(English.METRIC::text))
                    .contains("Fix the ties before any soil goes in: their tops lie 75 mm below the rim.");
        }

        @Test
        void aTieBetweenFacesThatAreNotParallelIsBevelled() {
            Ring wedge =
                    new Ring(List.of(new Point(0, 0), new Point(2400, 0), new Point(2400, 900), new Point(0, 500)));
            Box box = build(Footprints.plan(wedge, 450), null);
            Piece tie = of(box, Role.TIE).get(0);
            assertThat(tie.left().isSquare()).isTrue();
            assertThat(tie.right().tiltDeg())
                    .isCloseTo(StrictMath.toDegrees(StrictMath.atan(400 / 2400.0)), within(1e-9));
            assertThat(PutTogether.faults(box, Footprints.SECTIONS, 25, true)).isEmpty();
        }

        @Test
        void aWallTooLowForATieSaysSo() {
            Box box = build(Footprints.run(2400, 800, 150), null);
            assertThat(of(box, Role.TIE)).isEmpty();
            assertThat(box.notes().stream().map(English.METRIC::text))
                    .contains("No ties in F1: its wall is too low for a tie of larch 25 x 150 between floor and rim.");
        }

        @Test
        void theSchemeSetsTheSpacings() {
            BuildSpec rules = Footprints.rules(LARCH, BATTEN, null);
            BuildMeans means = Footprints.means(45, Map.of());
            FootprintPlan plan = Footprints.run(2400, 800, 450);
            Box wide = BoxBuilder.build(plan, rules, means, new BracingScheme(2500, 0, 75, List.of()));
            Box close = BoxBuilder.build(plan, rules, means, new BracingScheme(400, 0, 75, List.of(1, 2, 3)));
            assertThat(of(wide, Role.BRACE)).isEmpty();
            assertThat(of(close, Role.BRACE)).hasSize(5).allMatch(brace -> brace.side() == 0);
        }
    }

    @Nested
    class Floors {
        private final Box box =
                build(Footprints.plan(Ring.rectangle(0, 0, 1200, 600), List.of(), 450, 200, false), null);

        @Test
        void slatsLieOnBearersOnLegsOnTheBed() {
            assertThat(of(box, Role.SLAT)).isNotEmpty().allSatisfy(slat -> {
                assertThat(slat.place().topMm()).isEqualTo(200);
                assertThat(slat.place().bottomMm()).isEqualTo(175);
            });
            assertThat(of(box, Role.BEARER)).hasSizeGreaterThan(1).allSatisfy(bearer -> {
                assertThat(bearer.place().topMm()).isEqualTo(175);
            });
            assertThat(of(box, Role.LEG))
                    .hasSize(3 * of(box, Role.BEARER).size())
                    .allSatisfy(leg -> {
                        assertThat(leg.place().bottomMm()).isEqualTo(0);
                        assertThat(leg.length()).isEqualTo(Length.ofMm(125));
                        assertThat(leg.touchesGround()).isTrue();
                    });
            assertThat(box.soilDepthMm()).isEqualTo(250);
        }

        @Test
        void slatsAreNotchedRoundTheUprights() {
            assertThat(of(box, Role.SLAT))
                    .anySatisfy(slat -> assertThat(slat.notches())
                            .isNotEmpty()
                            .allSatisfy(notch -> assertThat(notch.edge().code())
                                    .isIn(CutMessage.LOWER_EDGE, CutMessage.UPPER_EDGE)));
        }

        @Test
        void aPlatformTooLowToBuildSaysWhatWouldDo() {
            Box low = build(Footprints.plan(Ring.rectangle(0, 0, 1200, 600), List.of(), 450, 40, false), null);
            assertThat(of(low, Role.SLAT)).isEmpty();
            assertThat(low.soilDepthMm()).isEqualTo(450);
            assertThat(low.unmet())
                    .extracting(p -> p.sentence(English.METRIC))
                    .containsExactly(
                            "A false floor 40 mm above the bed cannot be built in F1. Ask for at least 72 mm (slats on flat bearers),"
                                    + " and at most 400 mm (50 mm below the rim).");
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
                    .isEqualTo("bevel 26.5° from square at the left end: long point on the outside face, short point"
                            + " 3/4\" back on the inside face");
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
            return new SawBench(List.of(saw)).how(tilt, fence, THICK, shortMm);
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
                    .isEqualTo("the board is 150 mm wide, more than these saws cut across: cut from both edges to one"
                            + " line, or with a handsaw");
        }

        @Test
        void aFenceAngleBeyondTheScale() {
            assertThat(English.METRIC.text(how(0, 56, 500, 300).words()))
                    .isEqualTo("no saw at hand turns its fence 56.0°: mitre saw stops at 48.0°. Draw the line across"
                            + " and cut it along a clamped guide or with a handsaw");
            assertThat(English.METRIC.text(how(0, 48, 500, 300).words()))
                    .isEqualTo("mitre saw: turn the fence 48.0° from square (42.0° on a scale that reads 90° for a"
                            + " square cut)");
        }
    }
}
