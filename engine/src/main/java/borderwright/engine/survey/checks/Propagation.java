package borderwright.engine.survey.checks;

import borderwright.engine.message.Message;
import borderwright.engine.survey.checks.SurveyReport.Closing;
import java.util.function.ToDoubleFunction;

/** The law of propagation of errors: what independent readings give for the standard deviation of what follows from them. */
final class Propagation {
    private Propagation() {}

    /**
     * A closing error with what chance alone would give.
     *
     * @param what it closes
     * @param values the readings
     * @param sds their standard deviations, each in the unit of its reading
     * @param error that follows from the readings, mm
     */
    static Closing closing(Message what, double[] values, double[] sds, ToDoubleFunction<double[]> error) {
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
        return new Closing(what, error.applyAsDouble(values), Math.sqrt(variance));
    }
}
