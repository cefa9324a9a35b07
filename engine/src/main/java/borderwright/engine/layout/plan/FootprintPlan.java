package borderwright.engine.layout.plan;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One box on the plan: a simple polygon of walls, divided into one or more planters by dividers.
 *
 * <p>A joined run is one box with dividers; a separate planter is a box with one bay. Where the bed level steps, a new
 * box begins.
 *
 * @param name short and unique, such as {@code F1} or {@code F1-F4}; printed on every piece
 * @param run name of the run that it came from
 * @param outline the outer faces of its walls, anticlockwise, mm
 * @param sides side {@code i} runs from corner {@code i} to the next
 * @param dividers across the box, in order along the run; none touches another
 * @param planters names of its planters in order: one more than dividers
 * @param bedMm level of the bed under the bottom course, mm above the datum
 * @param heightMm height of the finished wall above the bed, mm
 * @param platformMm height of the false floor above the bed, mm; 0 for none
 * @param capped whether it has a capping ring
 */
public record FootprintPlan(
        String name,
        String run,
        Ring outline,
        List<SidePlan> sides,
        List<DividerLine> dividers,
        List<String> planters,
        double bedMm,
        double heightMm,
        double platformMm,
        boolean capped) {
    /** Cosine of a corner that is square to a hundredth of a millimetre in 10 m. */
    private static final double SQUARE_COSINE = 1e-6;
    /** A length so little below whole steps is whole: a tick's rounding. */
    private static final double SAME_STEPS = 0.004;

    public FootprintPlan {
        sides = List.copyOf(sides);
        dividers = List.copyOf(dividers);
        planters = List.copyOf(planters);
        if (sides.size() != outline.size()) {
            throw new IllegalArgumentException(
                    "one side for each of " + outline.size() + " corners, got " + sides.size());
        }
        if (planters.size() != dividers.size() + 1) {
            throw new IllegalArgumentException(
                    "one more planter than dividers, got " + planters.size() + " and " + dividers.size());
        }
    }

    /** The same box with a false floor at another height, mm above the bed; 0 for none. */
    public FootprintPlan withPlatform(double otherMm) {
        return FootprintPlan.builder()
                .name(name)
                .run(run)
                .outline(outline)
                .sides(sides)
                .dividers(dividers)
                .planters(planters)
                .bedMm(bedMm)
                .heightMm(heightMm)
                .platformMm(otherMm)
                .capped(capped)
                .build();
    }

    /** Whether its outline is a rectangle. */
    public boolean isRectangle() {
        if (outline.size() != 4) {
            return false;
        }
        for (int i = 0; i < outline.size(); i++) {
            if (StrictMath.abs(outline.direction(i).dot(outline.direction(i + 1))) > SQUARE_COSINE) {
                return false;
            }
        }
        return true;
    }

    /** The same, a rectangle drawn in at its far sides until its sides are whole steps long; no other shape is changed. */
    public FootprintPlan inWholeSteps(double stepMm) {
        if (!isRectangle()) {
            return this;
        }
        Point first = outline.corner(0);
        Point along = outline.direction(0).times(StrictMath.floor(outline.sideMm(0) / stepMm + SAME_STEPS) * stepMm);
        Point across =
                outline.direction(0).left().times(StrictMath.floor(outline.sideMm(1) / stepMm + SAME_STEPS) * stepMm);
        return with(new Ring(List.of(first, first.plus(along), first.plus(along).plus(across), first.plus(across))));
    }

    private FootprintPlan with(Ring other) {
        return new FootprintPlan(name, run, other, sides, dividers, planters, bedMm, heightMm, platformMm, capped);
    }

    public static Builder builder() {
        return new Builder();
    }

    /** Sets the parts one by one; what may be left out has a value here. */
    public static final class Builder {
        private @Nullable String name;
        private @Nullable String run;
        private @Nullable Ring outline;
        private @Nullable List<SidePlan> sides;
        private List<DividerLine> dividers = List.of();
        private @Nullable List<String> planters;
        private @Nullable Double bedMm;
        private @Nullable Double heightMm;
        private double platformMm = 0;
        private boolean capped;

        private Builder() {}

        public Builder name(String set) {
            name = set;
            return this;
        }

        public Builder run(String set) {
            run = set;
            return this;
        }

        public Builder outline(Ring set) {
            outline = set;
            return this;
        }

        public Builder sides(List<SidePlan> set) {
            sides = set;
            return this;
        }

        public Builder dividers(List<DividerLine> set) {
            dividers = set;
            return this;
        }

        public Builder planters(List<String> set) {
            planters = set;
            return this;
        }

        public Builder bedMm(double set) {
            bedMm = set;
            return this;
        }

        public Builder heightMm(double set) {
            heightMm = set;
            return this;
        }

        public Builder platformMm(double set) {
            platformMm = set;
            return this;
        }

        public Builder capped(boolean set) {
            capped = set;
            return this;
        }

        /**
         * With all that was set.
         *
         * @throws NullPointerException where a part without a value is missing; its name is the message
         */
        public FootprintPlan build() {
            return new FootprintPlan(
                    Objects.requireNonNull(name, "name"),
                    Objects.requireNonNull(run, "run"),
                    Objects.requireNonNull(outline, "outline"),
                    Objects.requireNonNull(sides, "sides"),
                    dividers,
                    Objects.requireNonNull(planters, "planters"),
                    Objects.requireNonNull(bedMm, "bedMm"),
                    Objects.requireNonNull(heightMm, "heightMm"),
                    platformMm,
                    capped);
        }
    }
}
