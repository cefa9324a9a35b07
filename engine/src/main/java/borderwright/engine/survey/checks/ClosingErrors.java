package borderwright.engine.survey.checks;

import borderwright.engine.garden.Measure;
import borderwright.engine.geometry.Point;
import borderwright.engine.message.Message;
import borderwright.engine.survey.checks.SurveyReport.Closing;
import borderwright.engine.survey.fieldbook.FieldBook;
import borderwright.engine.survey.fieldbook.Sureness;
import borderwright.engine.survey.network.Adjustment;
import borderwright.engine.survey.network.Network;
import borderwright.engine.survey.network.Observation;
import borderwright.engine.survey.network.Positions;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * Closing errors: what two ways to the same length differ by, in mm, each with what chance alone would give.
 *
 * <p>Repeated tapes; one pull against short lengths; a gauge angle against the three tapes of its triangle; a walk round
 * the border by sides and angles; the sixth length of four points against the other five; level loops. When none of these
 * occurs but there is redundancy, the best checked length stands against all the rest.
 */
public final class ClosingErrors {
    private static final int MOST_BRACED = 20;

    private final FieldBook book;
    private final Adjustment adjustment;
    private final Network network;
    private final List<Taped> tapes = new ArrayList<>();
    private final Map<List<Integer>, Taped> between = new LinkedHashMap<>();
    private final List<Closing> closings = new ArrayList<>();

    private record Taped(int a, int b, double lengthMm, double sdMm) {
        boolean joins(int p, int q) {
            return (a == p && b == q) || (a == q && b == p);
        }
    }

    public ClosingErrors(FieldBook book, Adjustment adjustment) {
        this.book = book;
        this.adjustment = adjustment;
        this.network = adjustment.network();
        for (Observation observation : network.observations()) {
            if (observation instanceof Observation.Distance d) {
                tapes.add(new Taped(d.a(), d.b(), d.measured(), d.sd()));
            } else if (observation instanceof Observation.SlopeDistance s) {
                Positions at = adjustment.positions();
                double rise = at.height(s.b()) - at.height(s.a());
                double level = Math.sqrt(Math.max(s.measured() * s.measured() - rise * rise, 0));
                tapes.add(new Taped(s.a(), s.b(), level, s.sd()));
            }
        }
        for (Taped tape : tapes) {
            between.putIfAbsent(pair(tape.a, tape.b), tape);
        }
    }

    public List<Closing> all() {
        repeated();
        chains();
        gauges();
        walkRound();
        braced();
        closings.addAll(new LevelLoops(book, adjustment).all());
        if (closings.isEmpty() && adjustment.degreesOfFreedom() > 0) {
            bestChecked();
        }
        return List.copyOf(closings);
    }

    private static List<Integer> pair(int a, int b) {
        return List.of(Math.min(a, b), Math.max(a, b));
    }

    private String name(int a, int b) {
        return network.name(a) + "-" + network.name(b);
    }

    private void repeated() {
        for (Taped first : between.values()) {
            List<Taped> same =
                    tapes.stream().filter(t -> t.joins(first.a, first.b)).toList();
            if (same.size() > 1) {
                Taped least = first;
                Taped most = first;
                for (Taped tape : same) {
                    least = tape.lengthMm < least.lengthMm ? tape : least;
                    most = tape.lengthMm > most.lengthMm ? tape : most;
                }
                closings.add(new Closing(
                        ClosingMessage.CLOSING_REPEATED.of(name(first.a, first.b), same.size()),
                        most.lengthMm - least.lengthMm,
                        StrictMath.hypot(least.sdMm, most.sdMm)));
            }
        }
    }

    private void chains() {
        for (Measure measure : book.notes().measures()) {
            if (measure instanceof Measure.TapeChain chain) {
                List<Integer> points = chain.chain().list().stream()
                        .map(network.names()::indexOf)
                        .toList();
                for (Taped tape : tapes) {
                    int i = points.indexOf(tape.a);
                    int j = points.indexOf(tape.b);
                    if (Math.min(i, j) >= 0 && Math.abs(i - j) > 1) {
                        chain(chain, tape, Math.min(i, j), Math.max(i, j));
                    }
                }
            }
        }
    }

    private void chain(Measure.TapeChain chain, Taped single, int from, int to) {
        double sum = 0;
        double variance = single.sdMm * single.sdMm;
        for (int j = from; j < to; j++) {
            double length = chain.lengths().get(j).mm();
            double sd = Sureness.ofTape(length, chain.sure(), chain.by());
            sum += length;
            variance += sd * sd;
        }
        closings.add(new Closing(
                ClosingMessage.CLOSING_CHAIN.of(name(single.a, single.b), to - from),
                single.lengthMm - sum,
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
        Taped first = between.get(pair(at, from));
        Taped second = between.get(pair(at, to));
        Taped third = between.get(pair(from, to));
        if (first == null || second == null || third == null) {
            return;
        }
        double[] values = {first.lengthMm, second.lengthMm, angle, third.lengthMm};
        double[] sds = {first.sdMm, second.sdMm, sd, third.sdMm};
        add(
                ClosingMessage.CLOSING_ANGLE.of(name(third.a, third.b), network.name(at)),
                values,
                sds,
                v -> side(v[0], v[1], v[2]) - v[3]);
    }

    private static double side(double a, double b, double angle) {
        return Math.sqrt(Math.max(a * a + b * b - 2 * a * b * StrictMath.cos(angle), 0));
    }

    private void add(Message what, double[] values, double[] sds, ToDoubleFunction<double[]> error) {
        double variance = 0;
        for (int i = 0; i < values.length; i++) {
            double step = sds[i] / 100;
            double[] ahead = values.clone();
            double[] behind = values.clone();
            ahead[i] += step;
            behind[i] -= step;
            double change = (error.applyAsDouble(ahead) - error.applyAsDouble(behind)) / (2 * step) * sds[i];
            variance += change * change;
        }
        closings.add(new Closing(what, error.applyAsDouble(values), Math.sqrt(variance)));
    }

    /** Sides and angles all the way round: where the walk ends beside where it began. */
    private void walkRound() {
        List<Integer> ring = book.order().corners();
        int n = ring.size();
        if (!book.order().closed()) {
            return;
        }
        double[] values = new double[2 * n - 1];
        double[] sds = new double[2 * n - 1];
        for (int i = 0; i < n; i++) {
            Taped side = between.get(pair(ring.get(i), ring.get((i + 1) % n)));
            if (side == null || (i > 0 && !insideAngle(ring, i, values, sds))) {
                return;
            }
            values[i] = side.lengthMm;
            sds[i] = side.sdMm;
        }
        add(ClosingMessage.CLOSING_WALK_ROUND.of(), values, sds, v -> misclosure(v, n));
    }

    /** Finds the angle inside the border at corner {@code i} and puts it behind the sides. */
    private boolean insideAngle(List<Integer> ring, int i, double[] values, double[] sds) {
        int n = ring.size();
        int before = ring.get(i - 1);
        int at = ring.get(i);
        int after = ring.get((i + 1) % n);
        for (Observation observation : network.observations()) {
            double angle = 0;
            if (observation instanceof Observation.Gauge g && g.at() == at) {
                angle = joins(g.from(), g.to(), before, after) ? g.measured() * (g.from() == after ? 1 : -1) : 0;
            } else if (observation instanceof Observation.Turn t && t.at() == at) {
                angle = joins(t.from(), t.to(), before, after) ? t.measured() * (t.from() == after ? 1 : -1) : 0;
            }
            if (angle != 0) {
                values[n + i - 1] = angle < 0 ? angle + 2 * StrictMath.PI : angle;
                sds[n + i - 1] = observation.sd();
                return true;
            }
        }
        return false;
    }

    private static boolean joins(int from, int to, int before, int after) {
        return (from == before && to == after) || (from == after && to == before);
    }

    private static double misclosure(double[] values, int sides) {
        Point at = new Point(0, 0);
        double bearing = 0;
        for (int i = 0; i < sides; i++) {
            bearing += i == 0 ? 0 : StrictMath.PI - values[sides + i - 1];
            at = at.plus(new Point(StrictMath.cos(bearing), StrictMath.sin(bearing)).times(values[i]));
        }
        return at.lengthMm();
    }

    private void braced() {
        int found = 0;
        int n = network.points();
        for (int a = 0; a < n; a++) {
            for (int b = a + 1; b < n; b++) {
                for (int c = b + 1; between.containsKey(pair(a, b)) && c < n; c++) {
                    boolean triangle = between.containsKey(pair(a, c)) && between.containsKey(pair(b, c));
                    for (int d = c + 1; triangle && d < n && found < MOST_BRACED; d++) {
                        if (between.containsKey(pair(a, d))
                                && between.containsKey(pair(b, d))
                                && between.containsKey(pair(c, d))) {
                            braced(a, b, c, d);
                            found++;
                        }
                    }
                }
            }
        }
    }

    /** The longest of the six is compared: it is a diagonal, and the other five make two triangles. */
    private void braced(int a, int b, int c, int d) {
        int[][] sixes = {{a, b, c, d}, {a, c, b, d}, {a, d, b, c}, {c, d, a, b}, {b, d, a, c}, {b, c, a, d}};
        int[] best = sixes[0];
        for (int[] six : sixes) {
            best = length(six[0], six[1]) > length(best[0], best[1]) ? six : best;
        }
        int p = best[0];
        int q = best[1];
        int r = best[2];
        int s = best[3];
        List<Taped> used = List.of(tape(r, s), tape(p, r), tape(p, s), tape(q, r), tape(q, s), tape(p, q));
        double[] values = used.stream().mapToDouble(Taped::lengthMm).toArray();
        double[] sds = used.stream().mapToDouble(Taped::sdMm).toArray();
        double apart = adjustment
                        .positions()
                        .at(s)
                        .minus(adjustment.positions().at(r))
                        .cross(adjustment
                                .positions()
                                .at(p)
                                .minus(adjustment.positions().at(r)))
                * adjustment
                        .positions()
                        .at(s)
                        .minus(adjustment.positions().at(r))
                        .cross(adjustment
                                .positions()
                                .at(q)
                                .minus(adjustment.positions().at(r)));
        add(ClosingMessage.CLOSING_BRACED.of(name(p, q)), values, sds, v -> v[5] - across(v, apart < 0));
    }

    private Taped tape(int a, int b) {
        Taped tape = between.get(pair(a, b));
        if (tape == null) {
            throw new IllegalArgumentException("no tape " + name(a, b));
        }
        return tape;
    }

    private double length(int a, int b) {
        return tape(a, b).lengthMm;
    }

    /** Distance between the tips of two triangles on one base, on opposite sides of it or on the same. */
    private static double across(double[] v, boolean opposite) {
        double x1 = (v[0] * v[0] + v[1] * v[1] - v[2] * v[2]) / (2 * v[0]);
        double x2 = (v[0] * v[0] + v[3] * v[3] - v[4] * v[4]) / (2 * v[0]);
        double y1 = Math.sqrt(Math.max(v[1] * v[1] - x1 * x1, 0));
        double y2 = Math.sqrt(Math.max(v[3] * v[3] - x2 * x2, 0));
        return StrictMath.hypot(x2 - x1, opposite ? y2 + y1 : y2 - y1);
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
