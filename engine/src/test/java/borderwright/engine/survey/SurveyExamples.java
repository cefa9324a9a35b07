package borderwright.engine.survey;

import borderwright.engine.effort.WorkListener;
import borderwright.engine.garden.SurveySpec;
import borderwright.engine.garden.given.GivenArc;
import borderwright.engine.garden.given.GivenMeasure;
import borderwright.engine.garden.given.GivenSurvey;
import borderwright.engine.garden.given.GivenSurvey.GivenEdge;
import borderwright.engine.garden.resolve.SurveyResolver;
import borderwright.engine.garden.vocabulary.ArcBulge;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.garden.vocabulary.LeftOrRight;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.garden.vocabulary.RingDirection;
import borderwright.engine.garden.vocabulary.TapeHeld;
import borderwright.engine.measure.Angle;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Survey notes for the tests, written as short as a person would say them. Lengths in mm, angles in degrees. */
public final class SurveyExamples {
    private final List<GivenMeasure> measures = new ArrayList<>();
    private final List<GivenEdge> edges = new ArrayList<>();
    private final Names corners;
    private @Nullable RingDirection round;
    private @Nullable Length strip;
    private @Nullable Double risk;

    private SurveyExamples(String corners) {
        this.corners = names(corners);
    }

    public static SurveyExamples border(String corners) {
        return new SurveyExamples(corners);
    }

    public static Names names(String words) {
        return new Names(Arrays.asList(words.split(" ")));
    }

    public SurveyExamples clockwise() {
        round = RingDirection.CLOCKWISE;
        return this;
    }

    public SurveyExamples strip(double depthMm) {
        strip = Length.ofMm(depthMm);
        return this;
    }

    public SurveyExamples risk(double chance) {
        risk = chance;
        return this;
    }

    public SurveyExamples edge(String edge, EdgeKind kind) {
        edges.add(GivenEdge.of(names(edge), kind));
        return this;
    }

    public SurveyExamples tape(String ends, double mm, double sureMm) {
        measures.add(new GivenMeasure.GivenTapeLength(names(ends), Length.ofMm(mm), null, Length.ofMm(sureMm), null));
        return this;
    }

    public SurveyExamples tape(String ends, double mm) {
        measures.add(GivenMeasure.GivenTapeLength.of(names(ends), Length.ofMm(mm)));
        return this;
    }

    public SurveyExamples slope(String ends, double mm, double sureMm) {
        measures.add(new GivenMeasure.GivenTapeLength(
                names(ends), Length.ofMm(mm), TapeHeld.ALONG_THE_GROUND, Length.ofMm(sureMm), null));
        return this;
    }

    public SurveyExamples angle(String points, double deg, double sureDeg) {
        measures.add(
                new GivenMeasure.GivenGaugeAngle(names(points), Angle.ofDegrees(deg), Angle.ofDegrees(sureDeg), null));
        return this;
    }

    public SurveyExamples offset(String point, String from, double along, double off, LeftOrRight side, double sureMm) {
        measures.add(new GivenMeasure.GivenBaselineOffset(
                point, names(from), Length.ofMm(along), Length.ofMm(off), side, Length.ofMm(sureMm), null));
        return this;
    }

    public SurveyExamples chain(String points, double sureMm, double... lengths) {
        List<Length> pieces = Arrays.stream(lengths).mapToObj(Length::ofMm).toList();
        measures.add(new GivenMeasure.GivenTapeChain(names(points), pieces, Length.ofMm(sureMm), null, null));
        return this;
    }

    public SurveyExamples level(String point, double mm, double sureMm) {
        measures.add(new GivenMeasure.GivenLevelReading(point, Length.ofMm(mm), Length.ofMm(sureMm), null));
        return this;
    }

    public SurveyExamples rise(String points, double mm, double sureMm) {
        measures.add(new GivenMeasure.GivenRise(names(points), Length.ofMm(mm), Length.ofMm(sureMm), null));
        return this;
    }

    public SurveyExamples lean(String edge, double topMm, double bottomMm) {
        measures.add(
                new GivenMeasure.GivenWallLean(names(edge), Length.ofMm(topMm), Length.ofMm(bottomMm), null, null));
        return this;
    }

    public SurveyExamples arc(String edge, double riseMm, ArcBulge bulges) {
        measures.add(GivenArc.of(names(edge), Length.ofMm(riseMm), bulges));
        return this;
    }

    public SurveyExamples add(GivenMeasure measure) {
        measures.add(measure);
        return this;
    }

    public SurveySpec notes() {
        return SurveyResolver.survey(GivenSurvey.builder(corners)
                .goingRound(round)
                .stripWidth(strip)
                .edges(edges)
                .measures(measures)
                .falseAlarm(risk)
                .build());
    }

    public SurveyAnswer answer() {
        return BorderSurvey.adjust(notes());
    }

    public SurveyAnswer answer(UnitSystem units) {
        return BorderSurvey.adjust(notes(), units, WorkListener.NONE);
    }

    public SurveyAnswer.Adjusted adjusted() {
        return adjusted(answer());
    }

    public static SurveyAnswer.Adjusted adjusted(SurveyAnswer answer) {
        if (answer instanceof SurveyAnswer.Adjusted adjusted) {
            return adjusted;
        }
        throw new AssertionError("not fixed: " + answer);
    }

    /** The wall behind the shed: three walls and a gauge; one redundancy. */
    public static SurveyExamples wedge() {
        return border("A B C")
                .tape("A B", 4210, 4)
                .tape("B C", 3360, 4)
                .tape("A C", 3900, 4)
                .angle("A B C", 62.0, 0.5);
    }

    /** A line of eight short lengths and one pull; the corners in front are set off square. */
    public static SurveyExamples fence() {
        return border("A B C D")
                .clockwise()
                .tape("A B", 9605, 3)
                .chain("A S1 S2 S3 S4 S5 S6 S7 B", 2, 1195, 1204, 1198, 1206, 1201, 1197, 1203, 1184)
                .offset("D", "A B", 0, 594, LeftOrRight.RIGHT, 5)
                .offset("C", "B A", 0, 618, LeftOrRight.LEFT, 5)
                .level("A", -452, 3)
                .level("S4", -486, 3)
                .level("B", -517, 3)
                .lean("A B", 592, 596);
    }

    /** Two walls that meet at 127 or 128 degrees, a strip along them. */
    public static SurveyExamples bend() {
        return border("A B C")
                .strip(540)
                .tape("A B", 4380, 3)
                .tape("B C", 2915, 3)
                .offset("P", "B A", 1000, 0, LeftOrRight.LEFT, 1)
                .offset("Q", "B C", 1000, 0, LeftOrRight.LEFT, 1)
                .tape("P Q", 1790, 1)
                .angle("A B C", 128, 0.3);
    }
}
