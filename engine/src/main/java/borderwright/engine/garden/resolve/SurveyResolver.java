package borderwright.engine.garden.resolve;

import borderwright.engine.garden.Measure;
import borderwright.engine.garden.SurveySpec;
import borderwright.engine.garden.given.GivenMeasure;
import borderwright.engine.garden.given.GivenSurvey;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.garden.vocabulary.RingDirection;
import borderwright.engine.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What was measured on site. */
public final class SurveyResolver {
    /** A chance of one in twenty is usual in testing survey networks. */
    private static final double FALSE_ALARM = 0.05;

    private SurveyResolver() {}

    /** A survey alone. */
    public static SurveySpec survey(GivenSurvey given) {
        return survey(given, Ledger.empty());
    }

    static SurveySpec survey(GivenSurvey g, Ledger ledger) {
        Ledger in = ledger.in("survey", g);
        List<SurveySpec.EdgeSpec> edges = new ArrayList<>();
        for (int i = 0; i < g.edges().size(); i++) {
            edges.add(edge(g.edges().get(i), in.in("edges[" + i + "]", g.edges().get(i))));
        }
        List<Measure> measures = new ArrayList<>();
        for (int i = 0; i < g.measures().size(); i++) {
            GivenMeasure measure = g.measures().get(i);
            measures.add(new MeasureResolver(in.in("measures[" + i + "]", measure)).measure(measure));
        }
        return new SurveySpec(
                g.corners(),
                in.or("going round", g.goingRound(), RingDirection.ANTICLOCKWISE, "as angles are counted"),
                Optional.ofNullable(g.stripWidth()),
                edges,
                measures,
                in.or("false alarm", g.falseAlarm(), FALSE_ALARM, Ledger.PRACTICE));
    }

    static SurveySpec.EdgeSpec edge(GivenSurvey.GivenEdge g, Ledger in) {
        EdgeKind kind = g.kind();
        return new SurveySpec.EdgeSpec(
                g.edge(),
                kind,
                in.or("gap", g.gap(), gap(kind), "by its kind: " + Ledger.PRACTICE),
                Optional.ofNullable(g.dampCourse()),
                in.or("height", g.height(), height(kind), "by its kind: " + Ledger.PRACTICE));
    }

    /** Gap between planters and an edge of that kind where none is given; an edge that is not described is open. */
    public static Length gap(EdgeKind kind) {
        return Length.ofMm(
                switch (kind) {
                    case HOUSE -> 75;
                    case WALL, FENCE -> 20;
                    case HEDGE -> 100;
                    case PAVING, LAWN, OPEN -> 0;
                });
    }

    private static Length height(EdgeKind kind) {
        return Length.ofMm(
                switch (kind) {
                    case HOUSE -> 5000;
                    case WALL, FENCE -> 1800;
                    case HEDGE -> 1500;
                    case PAVING, LAWN, OPEN -> 0;
                });
    }
}
