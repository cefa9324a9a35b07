package borderwright.engine.survey.checks;

import borderwright.engine.geometry.Point;
import borderwright.engine.survey.checks.SurveyReport.Closing;
import borderwright.engine.survey.checks.Tapes.Taped;
import borderwright.engine.survey.network.Adjustment;
import borderwright.engine.survey.network.Positions;
import java.util.ArrayList;
import java.util.List;

/** Four points with all six lengths between them taped: the sixth length against what the other five give for it. */
final class BracedFours {
    private static final int MOST_BRACED = 20;

    private final Adjustment adjustment;
    private final Tapes tapes;

    BracedFours(Adjustment adjustment, Tapes tapes) {
        this.adjustment = adjustment;
        this.tapes = tapes;
    }

    List<Closing> all() {
        List<Closing> closings = new ArrayList<>();
        int found = 0;
        int n = adjustment.network().points();
        for (int a = 0; a < n; a++) {
            for (int b = a + 1; b < n; b++) {
                for (int c = b + 1; tapes.has(a, b) && c < n; c++) {
                    boolean triangle = tapes.has(a, c) && tapes.has(b, c);
                    for (int d = c + 1; triangle && d < n && found < MOST_BRACED; d++) {
                        if (tapes.has(a, d) && tapes.has(b, d) && tapes.has(c, d)) {
                            closings.add(closing(a, b, c, d));
                            found++;
                        }
                    }
                }
            }
        }
        return closings;
    }

    /** The longest of the six is compared: it is a diagonal, and the other five make two triangles. */
    private Closing closing(int a, int b, int c, int d) {
        int[][] sixes = {{a, b, c, d}, {a, c, b, d}, {a, d, b, c}, {c, d, a, b}, {b, d, a, c}, {b, c, a, d}};
        int[] best = sixes[0];
        for (int[] six : sixes) {
            best = tapes.get(six[0], six[1]).lengthMm()
                            > tapes.get(best[0], best[1]).lengthMm()
                    ? six
                    : best;
        }
        int p = best[0];
        int q = best[1];
        int r = best[2];
        int s = best[3];
        List<Taped> used = List.of(
                tapes.get(r, s), tapes.get(p, r), tapes.get(p, s), tapes.get(q, r), tapes.get(q, s), tapes.get(p, q));
        double[] values = used.stream().mapToDouble(Taped::lengthMm).toArray();
        double[] sds = used.stream().mapToDouble(Taped::sdMm).toArray();
        Positions at = adjustment.positions();
        Point base = at.at(s).minus(at.at(r));
        double apart =
                base.cross(at.at(p).minus(at.at(r))) * base.cross(at.at(q).minus(at.at(r)));
        return Propagation.closing(
                ClosingMessage.CLOSING_BRACED.of(tapes.name(p, q)), values, sds, v -> v[5] - across(v, apart < 0));
    }

    /** Distance between the tips of two triangles on one base, on opposite sides of it or on the same. */
    private static double across(double[] v, boolean opposite) {
        double x1 = (v[0] * v[0] + v[1] * v[1] - v[2] * v[2]) / (2 * v[0]);
        double x2 = (v[0] * v[0] + v[3] * v[3] - v[4] * v[4]) / (2 * v[0]);
        double y1 = Math.sqrt(Math.max(v[1] * v[1] - x1 * x1, 0));
        double y2 = Math.sqrt(Math.max(v[3] * v[3] - x2 * x2, 0));
        return StrictMath.hypot(x2 - x1, opposite ? y2 + y1 : y2 - y1);
    }
}
