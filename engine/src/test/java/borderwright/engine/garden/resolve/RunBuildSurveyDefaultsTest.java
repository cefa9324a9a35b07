package borderwright.engine.garden.resolve;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.TestBoxes;
import borderwright.engine.garden.Origins.Kind;
import borderwright.engine.garden.Origins.Origin;
import borderwright.engine.garden.given.GivenArc;
import borderwright.engine.garden.given.GivenBuild;
import borderwright.engine.garden.given.GivenGarden;
import borderwright.engine.garden.given.GivenMeasure;
import borderwright.engine.garden.given.GivenMeasure.GivenBaselineOffset;
import borderwright.engine.garden.given.GivenMeasure.GivenGaugeAngle;
import borderwright.engine.garden.given.GivenMeasure.GivenLevelReading;
import borderwright.engine.garden.given.GivenMeasure.GivenRise;
import borderwright.engine.garden.given.GivenMeasure.GivenTapeChain;
import borderwright.engine.garden.given.GivenMeasure.GivenTapeLength;
import borderwright.engine.garden.given.GivenMeasure.GivenWallLean;
import borderwright.engine.garden.given.GivenRun;
import borderwright.engine.garden.given.GivenSurvey;
import borderwright.engine.garden.vocabulary.ArcBulge;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.garden.vocabulary.LengthRange;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.measure.Angle;
import borderwright.engine.measure.Length;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * Every default of a run, of building and of a survey: its value and what it rests on.
 *
 * <p>The garden has one run in rows, an edge of every kind and a measure of every kind, each with nothing but what it needs.
 */
class RunBuildSurveyDefaultsTest {
    private static final String PRACTICE = "common practice, no source";
    private static final String BY_KIND = "by its kind: " + PRACTICE;
    private static final Names AB = Names.of("A", "B");
    private static final Length SHORT = Length.ofMm(3000);
    private static final Length LONG = Length.ofMm(9000);

    private static final List<GivenMeasure> ONE_OF_EACH = List.of(
            GivenTapeLength.of(AB, LONG),
            new GivenGaugeAngle(Names.of("A", "B", "C"), Angle.ofDegrees(90), null, null),
            GivenBaselineOffset.of("P", AB, SHORT, SHORT),
            GivenTapeChain.of(Names.of("A", "P", "B"), List.of(SHORT, SHORT)),
            new GivenLevelReading("A", Length.ZERO, null, null),
            new GivenRise(AB, Length.ZERO, null, null),
            new GivenWallLean(AB, SHORT, SHORT, null, null),
            GivenArc.of(AB, SHORT, ArcBulge.OUTWARD));

    private static final Map<String, Origin> RUN = Map.ofEntries(
            row("runs[0].join", "joined", "saves walls"),
            row("runs[0].false floor", "0 mm", "none"),
            row("runs[0].capping", "no", "none"),
            row("runs[0].between", "20 mm", PRACTICE),
            row("runs[0].turn", "mitred", "no wedge is lost"),
            row("runs[0].off the curve", "40 mm", PRACTICE),
            row("runs[0].slope", "level", "one level for the whole run"),
            row("runs[0].reach", "600 mm", PRACTICE),
            row("runs[0].rows.count", "1", "one row"),
            row("runs[0].rows.paths", "1200 mm", "a wheelchair and a barrow pass: " + PRACTICE));

    /** Only walls are given: uprights come from the same boards. */
    private static final Map<String, Origin> BUILD = Map.ofEntries(
            row("build.braces", TestBoxes.LARCH.name(), "as the walls"),
            row("build.posts", TestBoxes.LARCH.name(), "as the braces"),
            row("build.ties", TestBoxes.LARCH.name(), "as the walls"),
            row("build.dividers", TestBoxes.LARCH.name(), "as the walls"),
            row("build.capping", TestBoxes.LARCH.name(), "as the walls"),
            row("build.bearers", TestBoxes.LARCH.name(), "as the braces"),
            row("build.slats", TestBoxes.LARCH.name(), "as the walls"),
            row("build.corner joint", "lapped", "where the corner allows it"),
            row("build.post footing", "0 mm", "uprights stand on the bed"),
            row("build.slat gap", "12 mm", "8 to 15 mm: " + PRACTICE),
            row("build.capping overhang", "20 mm", PRACTICE),
            row("build.face out", "heart out", "its edges cup into the box as it dries: " + PRACTICE));

    private static final Map<String, Origin> SURVEY = Map.ofEntries(
            row("survey.going round", "anticlockwise", "as angles are counted"),
            row("survey.false alarm", "0.05", PRACTICE),
            row("survey.edges[0].gap", "75 mm", BY_KIND),
            row("survey.edges[0].height", "5000 mm", BY_KIND),
            row("survey.edges[1].gap", "20 mm", BY_KIND),
            row("survey.edges[1].height", "1800 mm", BY_KIND),
            row("survey.edges[2].gap", "20 mm", BY_KIND),
            row("survey.edges[2].height", "1800 mm", BY_KIND),
            row("survey.edges[3].gap", "100 mm", BY_KIND),
            row("survey.edges[3].height", "1500 mm", BY_KIND),
            row("survey.edges[4].gap", "0 mm", BY_KIND),
            row("survey.edges[4].height", "0 mm", BY_KIND),
            row("survey.edges[5].gap", "0 mm", BY_KIND),
            row("survey.edges[5].height", "0 mm", BY_KIND),
            row("survey.edges[6].gap", "0 mm", BY_KIND),
            row("survey.edges[6].height", "0 mm", BY_KIND),
            row("survey.measures[0].held", "level", "the length is horizontal"),
            row("survey.measures[0].give or take", "as of a long tape", PRACTICE),
            row("survey.measures[1].give or take", "as of a gauge", PRACTICE),
            row("survey.measures[2].give or take", "as of a tape", PRACTICE),
            row("survey.measures[2].side", "left", "looking from its first end to its second"),
            row("survey.measures[3].give or take", "as of a tape", PRACTICE),
            row("survey.measures[3].straight", "5 mm", PRACTICE),
            row("survey.measures[4].give or take", "as of a string line", PRACTICE),
            row("survey.measures[5].give or take", "as of a water level", PRACTICE),
            row("survey.measures[6].give or take", "as of a tape", PRACTICE),
            row("survey.measures[7].taken", "square off", ""),
            row("survey.measures[7].give or take", "as of a tape", PRACTICE));

    private static final Map<String, Origin> RESOLVED = resolved();

    private static Map.Entry<String, Origin> row(String path, String value, String restsOn) {
        return entry(path, new Origin(Kind.DEFAULT, value, restsOn));
    }

    private static Map<String, Origin> resolved() {
        GivenRun run = GivenRun.builder("run", AB, LengthRange.of(Length.ofMm(600)), LengthRange.of(Length.ofMm(450)))
                .rows(new GivenRun.GivenRows(SHORT, null, null))
                .build();
        List<GivenSurvey.GivenEdge> edges = Arrays.stream(EdgeKind.values())
                .map(kind -> GivenSurvey.GivenEdge.of(AB, kind))
                .toList();
        return GardenResolver.resolve(GivenGarden.builder(
                                "Test",
                                "GBP",
                                GivenSurvey.builder(AB)
                                        .edges(edges)
                                        .measures(ONE_OF_EACH)
                                        .build(),
                                GivenBuild.builder(TestBoxes.LARCH.name()).build())
                        .runs(List.of(run))
                        .build())
                .origins()
                .byPath();
    }

    /** Defaults of a group of the document, by path. */
    private static Map<String, Origin> defaults(String group) {
        Map<String, Origin> found = new TreeMap<>();
        RESOLVED.forEach((path, origin) -> {
            if (origin.kind() == Kind.DEFAULT && path.startsWith(group)) {
                found.put(path, origin);
            }
        });
        return found;
    }

    @Test
    void ofARunAreTheseAndNoOthers() {
        assertThat(defaults("runs")).containsExactlyInAnyOrderEntriesOf(RUN);
    }

    @Test
    void ofBuildingAreTheseAndNoOthers() {
        assertThat(defaults("build")).containsExactlyInAnyOrderEntriesOf(BUILD);
    }

    @Test
    void ofASurveyAreTheseAndNoOthers() {
        assertThat(defaults("survey")).containsExactlyInAnyOrderEntriesOf(SURVEY);
    }
}
