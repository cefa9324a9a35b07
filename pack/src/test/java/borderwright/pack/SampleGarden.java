package borderwright.pack;

import borderwright.engine.garden.Garden;
import borderwright.engine.garden.Measure;
import borderwright.engine.garden.OwnedBoard;
import borderwright.engine.garden.SawSpec;
import borderwright.engine.garden.SurveySpec;
import borderwright.engine.garden.given.GivenBuild;
import borderwright.engine.garden.given.GivenDays;
import borderwright.engine.garden.given.GivenFilling;
import borderwright.engine.garden.given.GivenGarden;
import borderwright.engine.garden.given.GivenGround;
import borderwright.engine.garden.given.GivenNearby;
import borderwright.engine.garden.given.GivenRun;
import borderwright.engine.garden.given.GivenSaw;
import borderwright.engine.garden.given.GivenSection;
import borderwright.engine.garden.given.GivenSurvey;
import borderwright.engine.garden.resolve.GardenResolver;
import borderwright.engine.garden.resolve.SurveyResolver;
import borderwright.engine.garden.resolve.WoodResolver;
import borderwright.engine.garden.vocabulary.CornerStyle;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.garden.vocabulary.LeftOrRight;
import borderwright.engine.garden.vocabulary.LengthRange;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.garden.vocabulary.NearbyKind;
import borderwright.engine.garden.vocabulary.PlanterJoin;
import borderwright.engine.garden.vocabulary.RingDirection;
import borderwright.engine.garden.vocabulary.SawKind;
import borderwright.engine.garden.vocabulary.TapeHeld;
import borderwright.engine.garden.vocabulary.ground.GroundSurface;
import borderwright.engine.measure.Angle;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Small gardens for tests of the pack. Gardens, suppliers and prices are all invented. */
final class SampleGarden {
    static final String LARCH = "larch 25 x 150";
    static final String BATTEN = "batten 47 x 50";

    /** A spacing so wide that nothing stands between the posts, which walls of this length do not hold. */
    private static final Length TOO_FAR = Length.ofMm(2400);

    private SampleGarden() {}

    /**
     * Joined planters along a fence, the last mitred round a corner of about 127 degrees. Two readings disagree, the budget is
     * too small, a cable lies in the ground, and nobody sells the liner.
     */
    static Garden bend(UnitSystem units) {
        GivenRun bend = GivenRun.builder("fence run", Names.of("A", "B", "C"), exactly(500), exactly(300))
                .length(exactly(1100))
                .endGap(Length.ofMm(1600))
                .build();
        GivenRun last = GivenRun.builder("wall run", Names.of("B", "C"), exactly(500), exactly(600))
                .planters(1)
                .startGap(Length.ofMm(1700))
                .build();
        GivenNearby cable = GivenNearby.builder(NearbyKind.ELECTRICITY, Names.of("A", "B"), Length.ZERO)
                .endsAt(Length.ofMm(1500))
                .inFromEdge(Length.ofMm(1200))
                .depth(Length.ofMm(450))
                .build();
        GivenGarden given = begin(
                        "Fence and bend",
                        strip(640, "A", "B", "C"),
                        build().cornerJoint(CornerStyle.MITRED).tieSpacing(Length.ofMm(600)))
                .units(units)
                .budget(new BigDecimal("150"))
                .runs(List.of(bend, last))
                .ground(GivenGround.builder()
                        .surface(GroundSurface.BARE_EARTH)
                        .gravel(Length.ofMm(50))
                        .keepClearOf(List.of(cable))
                        .build())
                .filling(GivenFilling.builder()
                        .liner(new GivenFilling.GivenLiner(Length.ofMm(1000), Length.ofMm(15_000), Length.ofMm(150)))
                        .build())
                .build();
        return supplied(
                given,
                List.of(
                        tape(1500, 3, "A", "B"),
                        tape(2915, 3, "B", "C"),
                        onBaseline("P", "B", "A"),
                        onBaseline("Q", "B", "C"),
                        tape(1790, 1, "P", "Q"),
                        new Measure.GaugeAngle(
                                Names.of("A", "B", "C"),
                                Angle.ofDegrees(128),
                                StrictMath.toRadians(0.3),
                                Optional.empty()),
                        level("A", -452),
                        level("B", -486),
                        level("C", -503)),
                edge(EdgeKind.FENCE, "A", "B"),
                edge(EdgeKind.WALL, "B", "C"));
    }

    /** One long box on paving against a house, with nothing between its posts, so that it does not hold. */
    static Garden paved() {
        GivenRun run = GivenRun.builder("patio", Names.of("A", "B"), exactly(500), exactly(450))
                .planters(1)
                .build();
        GivenGarden given = begin(
                        "Paved",
                        strip(640, "A", "B"),
                        build().braceSpacing(TOO_FAR).tieSpacing(Length.ZERO))
                .runs(List.of(run))
                .ground(GivenGround.builder().surface(GroundSurface.PAVING).build())
                .build();
        return supplied(given, List.of(tape(2350, 3, "A", "B"), level("A", 0)), edge(EdgeKind.HOUSE, "A", "B"));
    }

    /** One box that is quick to plan and to print. */
    static Garden small(String name) {
        GivenRun run = GivenRun.builder("fence run", Names.of("A", "B"), exactly(500), exactly(300))
                .planters(1)
                .build();
        GivenGarden given =
                begin(name, strip(640, "A", "B"), build()).runs(List.of(run)).build();
        return supplied(given, List.of(tape(940, 3, "A", "B")), edge(EdgeKind.FENCE, "A", "B"));
    }

    /** Sixty boxes alike, in six rows of ten. */
    static Garden field() {
        GivenRun run = GivenRun.builder("field", Names.of("A", "B"), exactly(800), exactly(300))
                .planters(10)
                .length(exactly(1200))
                .join(PlanterJoin.SEPARATE)
                .between(Length.ofMm(600))
                .reach(Length.ofMm(1200))
                .rows(new GivenRun.GivenRows(Length.ofMm(500), 6, Length.ofMm(600)))
                .build();
        GivenGarden given = begin("Field of boxes", strip(12_000, "A", "B"), build())
                .runs(List.of(run))
                .build();
        return supplied(given, List.of(tape(19_000, 20, "A", "B")), edge(EdgeKind.LAWN, "A", "B"));
    }

    private static GivenSurvey strip(double widthMm, String... corners) {
        return GivenSurvey.builder(Names.of(corners))
                .goingRound(RingDirection.ANTICLOCKWISE)
                .stripWidth(Length.ofMm(widthMm))
                .falseAlarm(0.05)
                .build();
    }

    private static GivenBuild.Builder build() {
        return GivenBuild.builder(LARCH).braces(BATTEN);
    }

    private static GivenGarden.Builder begin(String name, GivenSurvey survey, GivenBuild.Builder build) {
        return GivenGarden.builder(name, "GBP", survey, build.build())
                .about("A garden, suppliers and prices of our own.")
                .invented()
                .sections(section(LARCH, 25, 150), section(BATTEN, 47, 50))
                .days(GivenDays.builder()
                        .start(LocalDate.of(2026, 4, 4))
                        .hours(6.0)
                        .helpers(1)
                        .delivery(5)
                        .pace(GivenDays.GivenPace.builder().build())
                        .build());
    }

    private static GivenSection section(String name, double thicknessMm, double widthMm) {
        return GivenSection.builder(name, Length.ofMm(thicknessMm), Length.ofMm(widthMm))
                .species("larch")
                .build();
    }

    /** The garden resolved, with readings, suppliers, a board in the shed and a saw. */
    private static Garden supplied(GivenGarden given, List<Measure> readings, SurveySpec.EdgeSpec... edges) {
        Garden garden = GardenResolver.resolve(given);
        SurveySpec bare = garden.survey();
        SurveySpec survey = new SurveySpec(
                bare.corners(), bare.goingRound(), bare.stripWidth(), List.of(edges), readings, bare.falseAlarm());
        OwnedBoard owned = new OwnedBoard(LARCH, Length.ofMm(3800), 1, Optional.of("shed rack"));
        SawSpec saw = WoodResolver.saw(GivenSaw.builder("table saw with sled", SawKind.TABLE_SAW)
                .kerf(Length.ofMm(3))
                .lengthStop(true)
                .build());
        Garden.Workshop workshop = garden.workshop();
        return new Garden(
                garden.heading(),
                survey,
                garden.design(),
                new Garden.Supply(SampleSuppliers.ALL, List.of(owned), List.of(), Optional.empty()),
                new Garden.Workshop(List.of(saw), workshop.cutting(), workshop.work(), Optional.empty()),
                garden.site(),
                garden.origins());
    }

    private static LengthRange exactly(double mm) {
        return LengthRange.of(Length.ofMm(mm));
    }

    private static SurveySpec.EdgeSpec edge(EdgeKind kind, String from, String to) {
        return new SurveySpec.EdgeSpec(
                Names.of(from, to), kind, SurveyResolver.gap(kind), Optional.empty(), Length.ofMm(1800));
    }

    private static Measure tape(double mm, double sdMm, String from, String to) {
        return new Measure.TapeLength(Names.of(from, to), reading(mm, sdMm), TapeHeld.LEVEL, Optional.empty());
    }

    private static Measure level(String point, double mm) {
        return new Measure.LevelReading(point, reading(mm, 3), Optional.empty());
    }

    /** A point one metre along a line. */
    private static Measure onBaseline(String point, String from, String to) {
        return new Measure.BaselineOffset(
                point, Names.of(from, to), reading(1000, 1), reading(0, 1), LeftOrRight.LEFT, Optional.empty());
    }

    private static Measure.Reading reading(double mm, double sdMm) {
        return new Measure.Reading(Length.ofMm(mm), sdMm);
    }
}
