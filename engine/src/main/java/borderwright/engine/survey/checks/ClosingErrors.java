package borderwright.engine.survey.checks;

import borderwright.engine.garden.Measure;
import borderwright.engine.survey.checks.SurveyReport.Closing;
import borderwright.engine.survey.checks.Tapes.Taped;
import borderwright.engine.survey.fieldbook.FieldBook;
import borderwright.engine.survey.network.Adjustment;
import borderwright.engine.survey.network.Network;
import borderwright.engine.survey.network.Observation;
import java.util.ArrayList;
import java.util.List;

/**
 * Closing errors: what two ways to the same length differ by, in mm, each with what chance alone would give.
 *
 * <p>Repeated tapes; one pull against short lengths; a gauge angle against the three tapes of its triangle; a walk round
 * the border by sides and angles; the sixth length of four points against the other five; level loops. When none of these
 * occurs but there is redundancy, the best checked length stands against all the rest.
 */
public final class ClosingErrors {
    private final FieldBook book;
    private final Adjustment adjustment;
    private final Network network;
    private final Tapes tapes;
    private final List<Closing> closings = new ArrayList<>();

    public ClosingErrors(FieldBook book, Adjustment adjustment) {
        this.book = book;
        this.adjustment = adjustment;
        this.network = adjustment.network();
        this.tapes = new Tapes(adjustment);
    }

    public List<Closing> all() {
        repeated();
        chains();
        gauges();
        new WalkRound(book, tapes).closing().ifPresent(closings::add);
        closings.addAll(new BracedFours(adjustment, tapes).all());
        closings.addAll(new LevelLoops(book, adjustment).all());
        if (closings.isEmpty() && adjustment.degreesOfFreedom() > 0) {
            bestChecked();
        }
        return List.copyOf(closings);
    }

    private void repeated() {
        for (Taped first : tapes.first()) {
            List<Taped> same = tapes.between(first.a(), first.b());
            if (same.size() > 1) {
                Taped least = first;
                Taped most = first;
                for (Taped tape : same) {
                    least = tape.lengthMm() < least.lengthMm() ? tape : least;
                    most = tape.lengthMm() > most.lengthMm() ? tape : most;
                }
                closings.add(new Closing(
                        ClosingMessage.CLOSING_REPEATED.of(tapes.name(first.a(), first.b()), same.size()),
                        most.lengthMm() - least.lengthMm(),
                        StrictMath.hypot(least.sdMm(), most.sdMm())));
            }
        }
    }

    private void chains() {
        for (Measure measure : book.notes().measures()) {
            if (measure instanceof Measure.TapeChain chain) {
                List<Integer> points = chain.chain().list().stream()
                        .map(network.names()::indexOf)
                        .toList();
                for (Taped tape : tapes.all()) {
                    int i = points.indexOf(tape.a());
                    int j = points.indexOf(tape.b());
                    if (Math.min(i, j) >= 0 && Math.abs(i - j) > 1) {
                        chain(chain, tape, Math.min(i, j), Math.max(i, j));
                    }
                }
            }
        }
    }

    private void chain(Measure.TapeChain chain, Taped single, int from, int to) {
        double sum = 0;
        double variance = single.sdMm() * single.sdMm();
        for (int j = from; j < to; j++) {
            double length = chain.lengths().get(j).mm();
            double sd = chain.lengths().get(j).sdMm();
            sum += length;
            variance += sd * sd;
        }
        closings.add(new Closing(
                ClosingMessage.CLOSING_CHAIN.of(tapes.name(single.a(), single.b()), to - from),
                single.lengthMm() - sum,
                Math.sqrt(variance)));
    }

    private void gauges() {
        for (Observation observation : network.observations()) {
            if (observation instanceof Observation.Gauge gauge) {
                gauge(gauge.at(), gauge.from(), gauge.to(), gauge.shown(), gauge.sd());
            } else if (observation instanceof Observation.Turn turn) {
                gauge(turn.at(), turn.from(), turn.to(), turn.measured(), turn.sd());
            }
        }
    }

    private void gauge(int at, int from, int to, double angle, double sd) {
        Taped first = tapes.firstBetween(at, from);
        Taped second = tapes.firstBetween(at, to);
        Taped third = tapes.firstBetween(from, to);
        if (first == null || second == null || third == null) {
            return;
        }
        double[] values = {first.lengthMm(), second.lengthMm(), angle, third.lengthMm()};
        double[] sds = {first.sdMm(), second.sdMm(), sd, third.sdMm()};
        closings.add(Propagation.closing(
                ClosingMessage.CLOSING_ANGLE.of(tapes.name(third.a(), third.b()), network.name(at)),
                values,
                sds,
                v -> side(v[0], v[1], v[2]) - v[3]));
    }

    private static double side(double a, double b, double angle) {
        return Math.sqrt(Math.max(a * a + b * b - 2 * a * b * StrictMath.cos(angle), 0));
    }

    private void bestChecked() {
        FieldBook.Entry best = null;
        for (FieldBook.Entry entry : book.entries()) {
            if (entry.kind() == FieldBook.Kind.LENGTH
                    && entry.observation() >= 0
                    && (best == null
                            || adjustment.redundancyNumber(entry.observation())
                                    > adjustment.redundancyNumber(best.observation()))) {
                best = entry;
            }
        }
        if (best == null || adjustment.redundancyNumber(best.observation()) == 0) {
            return;
        }
        double r = adjustment.redundancyNumber(best.observation());
        double errorMm = best.inItsUnit(
                network.observations().get(best.observation()), -adjustment.residual(best.observation()) / r);
        closings.add(
                new Closing(ClosingMessage.CLOSING_BEST_CHECKED.of(best.name()), errorMm, best.sd() / Math.sqrt(r)));
    }
}
