package borderwright.engine.survey;

import borderwright.engine.survey.SurveyReport.GlobalTest;
import borderwright.engine.survey.SurveyReport.Reading;
import borderwright.engine.survey.SurveyReport.SurveyedPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/** Writes the report of an adjusted border. */
final class ReportMaker {
    private static final double USUAL_RISK = 0.05;
    /** An assumption (a straight line) is only listed when the readings can speak against it. */
    private static final double SPEAKS = 0.005;

    private final FieldBook book;
    private final Adjustment adjustment;
    private final SurveyWords words;

    ReportMaker(FieldBook book, Adjustment adjustment, SurveyWords words) {
        this.book = book;
        this.adjustment = adjustment;
        this.words = words;
    }

    SurveyReport make(Outline outline) {
        List<FieldBook.Entry> listed = listed();
        List<Reading> readings = listed.stream().map(this::reading).toList();
        double risk = book.notes().risk() == null ? USUAL_RISK : book.notes().risk();
        Optional<GlobalTest> test = globalTest(risk);
        return new SurveyReport(
                points(outline),
                readings,
                new Closings(book, adjustment).all(),
                adjustment.degreesOfFreedom(),
                test,
                SurveyReport.Suspects.NONE,
                new NextMeasureFinder(book, adjustment, words).find());
    }

    /** Readings in document order. */
    private List<FieldBook.Entry> listed() {
        return book.entries().stream()
                .filter(e ->
                        e.kind() != FieldBook.Kind.STRAIGHT || adjustment.redundancyNumber(e.observation()) > SPEAKS)
                .toList();
    }

    private Reading reading(FieldBook.Entry entry) {
        if (entry.observation() < 0) {
            return new Reading(
                    entry.where(), entry.what(), entry.measured(), entry.measured(), entry.sd(), entry.unit(), 0, 0);
        }
        double residual = entry.inItsUnit(adjustment, adjustment.residual(entry.observation()));
        double sign = entry.inItsUnit(adjustment, 1) < 0 ? -1 : 1;
        return new Reading(
                entry.where(),
                entry.what(),
                entry.measured(),
                entry.measured() + residual,
                entry.sd(),
                entry.unit(),
                adjustment.redundancyNumber(entry.observation()),
                sign * adjustment.normalised(entry.observation()));
    }

    private Optional<GlobalTest> globalTest(double risk) {
        int freedom = adjustment.degreesOfFreedom();
        if (freedom == 0) {
            return Optional.empty();
        }
        double limit = new ChiSquaredDistribution(freedom).inverseCumulativeProbability(1 - risk);
        return Optional.of(new GlobalTest(adjustment.weightedSquares(), limit, risk));
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
