package borderwright.engine.survey.checks;

import borderwright.engine.message.Message;
import borderwright.engine.survey.checks.PossibleMeasures.Possible;
import borderwright.engine.survey.checks.SurveyReport.NextMeasure;
import borderwright.engine.survey.fieldbook.FieldBook;
import borderwright.engine.survey.network.Adjustment;
import borderwright.engine.survey.network.Network;
import borderwright.engine.survey.network.Observation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Heights that nothing checks, and the rise that would check most of them. */
final class UncheckedHeights {
    /** A height with a redundancy number below this is not checked, and is checked from {@link #CHECKED} on. */
    private static final double NOT_CHECKED = 0.05;

    private static final double CHECKED = 0.1;

    private final FieldBook book;
    private final Adjustment adjustment;
    private final Network network;
    private final PossibleMeasures measures;

    UncheckedHeights(FieldBook book, Adjustment adjustment, PossibleMeasures measures) {
        this.book = book;
        this.adjustment = adjustment;
        this.network = adjustment.network();
        this.measures = measures;
    }

    /** The rise that checks most of the heights that nothing checks; empty where none checks one. */
    Optional<NextMeasure> rise() {
        Possible best = null;
        List<FieldBook.Entry> most = List.of();
        for (Possible rise : measures.rises()) {
            List<FieldBook.Entry> checks = checks(rise.observation());
            if (checks.size() > most.size()) {
                most = checks;
                best = rise;
            }
        }
        return best == null ? Optional.empty() : Optional.of(new NextMeasure(best.name(), checksHeights(most)));
    }

    private static Message checksHeights(List<FieldBook.Entry> checks) {
        return checks.size() == 1
                ? NextMeasureMessage.NEXT_CHECKS_ONE.of(checks.get(0).name())
                : NextMeasureMessage.NEXT_CHECKS_MANY.of(checks.size());
    }

    private List<FieldBook.Entry> checks(Observation added) {
        Adjustment.Influence influence = adjustment.influence(added);
        double spread = added.sd() * added.sd() + influence.on(added);
        List<FieldBook.Entry> checks = new ArrayList<>();
        for (FieldBook.Entry entry : book.entries()) {
            if (entry.observation() < 0 || entry.kind() != FieldBook.Kind.HEIGHT) {
                continue;
            }
            Observation its = network.observations().get(entry.observation());
            double before = adjustment.redundancyNumber(entry.observation());
            if (before < NOT_CHECKED && with(before, influence.on(its), spread, its.sd()) >= CHECKED) {
                checks.add(entry);
            }
        }
        return checks;
    }

    /** The redundancy number that an observation of this standard deviation has with one more that it has this covariance with. */
    static double with(double redundancy, double covariance, double spread, double sd) {
        return redundancy + covariance * covariance / spread / (sd * sd);
    }
}
