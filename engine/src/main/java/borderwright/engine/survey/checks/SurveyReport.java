package borderwright.engine.survey.checks;

import borderwright.engine.geometry.Point;
import borderwright.engine.message.Message;
import borderwright.engine.survey.network.ErrorEllipse;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How well the measures agree, and how far the positions may be out.
 *
 * @param points every point with its uncertainty, corners first
 * @param readings every reading with its residual, in document order
 * @param closings loops and repeated lengths with their closing errors
 * @param redundancy measures beyond the least number needed (degrees of freedom)
 * @param globalTest the statistical verdict on all readings together; empty when redundancy is 0
 * @param suspects readings that may be wrong; empty when they agree
 * @param next the measure that would help most, and what it would do
 */
public record SurveyReport(
        List<SurveyedPoint> points,
        List<Reading> readings,
        List<Closing> closings,
        int redundancy,
        Optional<GlobalTest> globalTest,
        Suspects suspects,
        NextMeasure next) {
    public SurveyReport {
        points = List.copyOf(points);
        readings = List.copyOf(readings);
        closings = List.copyOf(closings);
    }

    /**
     * One adjusted point.
     *
     * @param name its name
     * @param at where, mm
     * @param sdXMm standard deviation along x, mm
     * @param sdYMm standard deviation along y, mm
     * @param ellipse its standard error ellipse
     */
    public record SurveyedPoint(String name, Point at, double sdXMm, double sdYMm, ErrorEllipse ellipse) {}

    /**
     * One reading and what the adjustment made of it.
     *
     * @param where field path in the garden document
     * @param what its name, such as {@code tape A-B}
     * @param measured value read, in {@code unit}
     * @param adjusted value after adjustment, in {@code unit}
     * @param sd its standard deviation, in {@code unit}
     * @param unit {@code mm} or {@code deg}
     * @param redundancyNumber share of an error in it that shows in its own residual, 0 to 1
     * @param normalised residual over its standard deviation; 0 where the redundancy number is 0
     */
    public record Reading(
            String where,
            Message what,
            double measured,
            double adjusted,
            double sd,
            String unit,
            double redundancyNumber,
            double normalised) {
        /** Adjusted minus measured, in the reading's unit. */
        public double residual() {
            return adjusted - measured;
        }

        public static Builder builder() {
            return new Builder();
        }

        /** Sets the parts one by one; none may be left out. */
        public static final class Builder {
            private @Nullable String where;
            private @Nullable Message what;
            private @Nullable Double measured;
            private @Nullable Double adjusted;
            private @Nullable Double sd;
            private @Nullable String unit;
            private @Nullable Double redundancyNumber;
            private @Nullable Double normalised;

            private Builder() {}

            public Builder where(String set) {
                where = set;
                return this;
            }

            public Builder what(Message set) {
                what = set;
                return this;
            }

            public Builder measured(double set) {
                measured = set;
                return this;
            }

            public Builder adjusted(double set) {
                adjusted = set;
                return this;
            }

            public Builder sd(double set) {
                sd = set;
                return this;
            }

            public Builder unit(String set) {
                unit = set;
                return this;
            }

            public Builder redundancyNumber(double set) {
                redundancyNumber = set;
                return this;
            }

            public Builder normalised(double set) {
                normalised = set;
                return this;
            }

            /**
             * With all that was set.
             *
             * @throws NullPointerException where a part without a value is missing; its name is the message
             */
            public Reading build() {
                return new Reading(
                        Objects.requireNonNull(where, "where"),
                        Objects.requireNonNull(what, "what"),
                        Objects.requireNonNull(measured, "measured"),
                        Objects.requireNonNull(adjusted, "adjusted"),
                        Objects.requireNonNull(sd, "sd"),
                        Objects.requireNonNull(unit, "unit"),
                        Objects.requireNonNull(redundancyNumber, "redundancyNumber"),
                        Objects.requireNonNull(normalised, "normalised"));
            }
        }
    }

    /**
     * One closing error.
     *
     * @param what what is compared, such as A-B in one pull against eight lengths
     * @param errorMm how far it fails to close, mm
     * @param sdMm what chance alone would give, one standard deviation, mm
     */
    public record Closing(Message what, double errorMm, double sdMm) {}

    /**
     * Chi-squared test of the weighted sum of squared residuals.
     *
     * @param statistic the weighted sum
     * @param limit its limit at the risk stated
     * @param risk chance of calling a sound survey wrong
     */
    public record GlobalTest(double statistic, double limit, double risk) {
        public boolean agrees() {
            return statistic <= limit;
        }
    }

    /**
     * Readings that may be wrong.
     *
     * @param named whether the readings single one out; otherwise all candidates are listed and none is accused
     * @param candidates worst first
     * @param separating the measure that would tell the candidates apart, and by which values; empty when {@code named}
     */
    public record Suspects(boolean named, List<Candidate> candidates, Optional<Message> separating) {
        public static final Suspects NONE = new Suspects(false, List.of(), Optional.empty());

        public Suspects {
            candidates = List.copyOf(candidates);
        }
    }

    /**
     * One reading that may be wrong.
     *
     * @param reading its position in the report's list
     * @param implied the value that the other readings imply, in the reading's unit
     * @param sdImplied its standard deviation
     * @param slip the likely slip; empty when none fits
     */
    public record Candidate(int reading, double implied, double sdImplied, Optional<Message> slip) {}

    /**
     * The measure that would help most.
     *
     * @param what the measure, such as a tape from B to D
     * @param why what it would do
     */
    public record NextMeasure(Message what, Message why) {}
}
