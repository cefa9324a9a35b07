package borderwright.engine.survey.checks;

import borderwright.engine.geometry.Point;
import borderwright.engine.message.Message;
import borderwright.engine.survey.network.ErrorEllipse;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
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
     * @param unnoticed the largest slip in it that the others would not show
     */
    public record Reading(
            String where,
            Message what,
            double measured,
            double adjusted,
            double sd,
            String unit,
            double redundancyNumber,
            double normalised,
            Unnoticed unnoticed) {
        /** Adjusted minus measured, in the reading's unit. */
        public double residual() {
            return adjusted - measured;
        }

        /** The least slip in it that would show; empty where none would. */
        public Optional<Message> leastSlip() {
            OptionalDouble least = unnoticed.slip();
            return least.isEmpty()
                    ? Optional.empty()
                    : Optional.of(DisagreementMessage.value(least.getAsDouble(), unit));
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
            private Unnoticed unnoticed = Unnoticed.NOT_ON_THE_PLAN;

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

            public Builder unnoticed(Unnoticed set) {
                unnoticed = set;
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
                        Objects.requireNonNull(normalised, "normalised"),
                        unnoticed);
            }
        }
    }

    /**
     * The largest slip in a reading that the others would not show, and what it does to the border.
     *
     * @param slip in the reading's unit; empty where nothing would show one of any size
     * @param movesMm how far it then moves a corner, square to an edge; 0 where it moves none; empty where by any amount
     * @param corner where it moves one most against the room there
     * @param roomMm the gap that is kept at that edge, or what may be out where none is kept
     */
    public record Unnoticed(OptionalDouble slip, OptionalDouble movesMm, String corner, double roomMm) {
        /** Of a reading that says nothing of where corners lie on the plan. */
        static final Unnoticed NOT_ON_THE_PLAN =
                new Unnoticed(OptionalDouble.empty(), OptionalDouble.of(0), "", UnnoticedSlips.ROOM_WITHOUT_GAP_MM);

        /** How far it moves a corner, over the room there; infinite where by any amount. */
        public double share() {
            return movesMm.orElse(Double.POSITIVE_INFINITY) / roomMm;
        }

        public boolean isHarmless() {
            return share() <= 1;
        }
    }

    /** What may be claimed of the border. */
    public enum Verdict {
        /** The readings agree, and no slip that would go unnoticed moves a corner by more than the room there. */
        SHOWN,
        /** The readings agree, but a slip could go unnoticed and spoil a gap. */
        NOT_SHOWN,
        /** The readings contradict each other. */
        DISAGREES
    }

    public Verdict verdict() {
        if (!suspects.candidates().isEmpty()
                || globalTest.filter(test -> !test.agrees()).isPresent()) {
            return Verdict.DISAGREES;
        }
        return globalTest.isPresent() && weakest().unnoticed().isHarmless() ? Verdict.SHOWN : Verdict.NOT_SHOWN;
    }

    /** The reading in which an unnoticed slip would do most harm; the first of several alike. */
    public Reading weakest() {
        return readings.stream()
                .reduce((a, b) -> b.unnoticed().share() > a.unnoticed().share() ? b : a)
                .orElseThrow();
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
