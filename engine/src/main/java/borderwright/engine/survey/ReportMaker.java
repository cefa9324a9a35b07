package borderwright.engine.survey;

import borderwright.engine.measure.UnitSystem;
import borderwright.engine.survey.checks.ClosingErrors;
import borderwright.engine.survey.checks.LikelySlips;
import borderwright.engine.survey.checks.NextMeasureFinder;
import borderwright.engine.survey.checks.SeparatingMeasure;
import borderwright.engine.survey.checks.SeparatingMeasure.Separating;
import borderwright.engine.survey.checks.SurveyReport;
import borderwright.engine.survey.checks.SurveyReport.Candidate;
import borderwright.engine.survey.checks.SurveyReport.GlobalTest;
import borderwright.engine.survey.checks.SurveyReport.NextMeasure;
import borderwright.engine.survey.checks.SurveyReport.Reading;
import borderwright.engine.survey.checks.SurveyReport.SurveyedPoint;
import borderwright.engine.survey.checks.SurveyReport.Suspects;
import borderwright.engine.survey.checks.SuspectFinder;
import borderwright.engine.survey.checks.SuspectFinder.Hypothesis;
import borderwright.engine.survey.checks.UnnoticedSlips;
import borderwright.engine.survey.fieldbook.FieldBook;
import borderwright.engine.survey.network.Adjustment;
import borderwright.engine.survey.network.Network;
import borderwright.engine.survey.network.Observation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes the report of an adjusted border. */
final class ReportMaker {
    /** An assumption (a straight line) is only listed when the readings can contradict it. */
    private static final double CONTRADICTED = 0.005;

    private final FieldBook book;
    private final Adjustment adjustment;
    private final List<Hypothesis> suspects;
    private final UnitSystem units;
    private final UnnoticedSlips slips;

    ReportMaker(FieldBook book, Adjustment adjustment, List<Hypothesis> suspects, UnitSystem units) {
        this.book = book;
        this.adjustment = adjustment;
        this.suspects = suspects;
        this.units = units;
        this.slips = new UnnoticedSlips(book, adjustment);
    }

    SurveyReport make(Outline outline) {
        List<FieldBook.Entry> listed = listed();
        boolean named = SuspectFinder.isNamed(suspects);
        Optional<Separating> separating = suspects.isEmpty() || named
                ? Optional.empty()
                : Optional.of(new SeparatingMeasure(book, adjustment, suspects, numbers(listed)).best());
        return new SurveyReport(
                points(outline),
                listed.stream().map(this::reading).toList(),
                new ClosingErrors(book, adjustment).all(),
                adjustment.degreesOfFreedom(),
                globalTest(),
                suspects(listed, named, separating),
                next(separating));
    }

    private Suspects suspects(List<FieldBook.Entry> listed, boolean named, Optional<Separating> separating) {
        List<Candidate> candidates = suspects.stream()
                .limit(named ? 1 : suspects.size())
                .map(h -> candidate(h, listed.indexOf(h.entry())))
                .toList();
        return candidates.isEmpty()
                ? Suspects.NONE
                : new Suspects(named, candidates, separating.map(Separating::outcomes));
    }

    /** The number of each suspect in the report's list of readings, from 1. */
    private List<Integer> numbers(List<FieldBook.Entry> listed) {
        return suspects.stream().map(h -> listed.indexOf(h.entry()) + 1).toList();
    }

    private Candidate candidate(Hypothesis h, int reading) {
        Observation observation = h.observation(book.network());
        double change = -observation.misclosure(h.without().positions());
        double implied = h.entry().measured() + h.entry().inItsUnit(observation, change);
        double sd =
                Math.abs(h.entry().inItsUnit(observation, Math.sqrt(h.without().variance(observation))));
        return new Candidate(reading, implied, sd, new LikelySlips(units).likely(h.entry(), implied, sd));
    }

    /** Readings that disagree come first: until it is known which is wrong, nothing else helps. */
    private NextMeasure next(Optional<Separating> separating) {
        if (separating.isPresent()) {
            return NextMeasureFinder.separating(
                    separating.get().measure(), suspects.size(), suspects.get(0).entry());
        }
        return suspects.isEmpty()
                ? new NextMeasureFinder(book, adjustment).find()
                : NextMeasureFinder.repeating(suspects.get(0).entry());
    }

    /** Readings in document order. */
    private List<FieldBook.Entry> listed() {
        return book.entries().stream().filter(this::isListed).toList();
    }

    private boolean isListed(FieldBook.Entry entry) {
        return entry.kind() != FieldBook.Kind.STRAIGHT
                || adjustment.redundancyNumber(entry.observation()) > CONTRADICTED
                || suspects.stream().anyMatch(h -> h.entry().equals(entry));
    }

    private Reading reading(FieldBook.Entry entry) {
        if (entry.observation() < 0) {
            return Reading.builder()
                    .where(entry.where())
                    .what(entry.name())
                    .measured(entry.measured())
                    .adjusted(entry.measured())
                    .sd(entry.sd())
                    .unit(entry.unit())
                    .redundancyNumber(0)
                    .normalised(0)
                    .build();
        }
        Observation observation = adjustment.network().observations().get(entry.observation());
        double residual = entry.inItsUnit(observation, adjustment.residual(entry.observation()));
        double sign = entry.inItsUnit(observation, 1) < 0 ? -1 : 1;
        return Reading.builder()
                .where(entry.where())
                .what(entry.name())
                .measured(entry.measured())
                .adjusted(entry.measured() + residual)
                .sd(entry.sd())
                .unit(entry.unit())
                .redundancyNumber(adjustment.redundancyNumber(entry.observation()))
                .normalised(sign * adjustment.normalised(entry.observation()))
                .unnoticed(slips.of(entry))
                .build();
    }

    private Optional<GlobalTest> globalTest() {
        int freedom = adjustment.degreesOfFreedom();
        double risk = book.risk();
        return freedom == 0
                ? Optional.empty()
                : Optional.of(new GlobalTest(adjustment.weightedSquares(), SuspectFinder.limit(freedom, risk), risk));
    }

    private List<SurveyedPoint> points(Outline outline) {
        List<SurveyedPoint> points = new ArrayList<>();
        Network network = adjustment.network();
        List<Integer> corners = book.order().corners();
        for (int corner : corners) {
            points.add(point(corner));
        }
        points.addAll(new FrontUncertainty(book, adjustment, outline).points());
        for (int p = 0; p < network.points(); p++) {
            if (network.inPlan(p) && !corners.contains(p)) {
                points.add(point(p));
            }
        }
        return points;
    }

    private SurveyedPoint point(int p) {
        return new SurveyedPoint(
                adjustment.network().name(p),
                adjustment.positions().at(p),
                adjustment.sdX(p),
                adjustment.sdY(p),
                adjustment.ellipse(p));
    }
}
