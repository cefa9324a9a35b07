package borderwright.engine.plan;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buying.why.Basket;
import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.garden.Garden;
import borderwright.engine.layout.plan.Layout;
import borderwright.engine.message.Message;
import borderwright.engine.problem.Problem;
import borderwright.engine.sequence.WorkPlan;
import borderwright.engine.shopping.ShoppingItem;
import borderwright.engine.strength.StrengthReport;
import borderwright.engine.survey.Outline;
import borderwright.engine.survey.checks.SurveyReport;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * All that follows from a garden.
 *
 * @param garden as it is planned: resolved, with what was measured at the first planter
 * @param outline the border as adjusted
 * @param survey how well the measures agree
 * @param layout boxes on the plan
 * @param boxes every box with its pieces, in the order of {@code layout.boxes()}
 * @param strength what the strength of all boxes comes to
 * @param strengthReports what is known of the strength of each box, in the order of {@code boxes}
 * @param site ground and what else is done to the site
 * @param shopping everything to buy that is not a board
 * @param basket what to buy where
 * @param cutting which piece comes from which board
 * @param work tasks, hours and days of work
 * @param totals figures for the brief
 * @param shortfalls what does not hold or cannot be met, the reason first; empty when all is well
 */
public record Plan(
        Garden garden,
        Outline outline,
        SurveyReport survey,
        Layout layout,
        List<Box> boxes,
        Message strength,
        List<StrengthReport> strengthReports,
        SiteWork site,
        List<ShoppingItem> shopping,
        Basket basket,
        CuttingPlan cutting,
        WorkPlan work,
        Totals totals,
        List<Problem> shortfalls) {
    public Plan {
        boxes = List.copyOf(boxes);
        strengthReports = List.copyOf(strengthReports);
        shopping = List.copyOf(shopping);
        shortfalls = List.copyOf(shortfalls);
    }

    /**
     * Figures for the brief; each is a sum over the plan.
     *
     * @param planters number of planters
     * @param pieces number of pieces
     * @param pieceMetres length of all pieces, m
     * @param boardMetres length of all boards cut into, bought or owned, m
     * @param timberM3 volume of all pieces, m3
     * @param timberKg weight of all pieces as they arrive, kg
     * @param growingM2 area inside the walls, m2
     * @param soilM3 soil to fill them, settlement included, m3
     * @param costs what everything that the job needs costs
     */
    public record Totals(
            int planters,
            int pieces,
            double pieceMetres,
            double boardMetres,
            double timberM3,
            double timberKg,
            double growingM2,
            double soilM3,
            Costs costs) {
        public static Builder builder() {
            return new Builder();
        }

        /** Sets the parts one by one; none may be left out. */
        public static final class Builder {
            private @Nullable Integer planters;
            private @Nullable Integer pieces;
            private @Nullable Double pieceMetres;
            private @Nullable Double boardMetres;
            private @Nullable Double timberM3;
            private @Nullable Double timberKg;
            private @Nullable Double growingM2;
            private @Nullable Double soilM3;
            private @Nullable Costs costs;

            private Builder() {}

            public Builder planters(int set) {
                planters = set;
                return this;
            }

            public Builder pieces(int set) {
                pieces = set;
                return this;
            }

            public Builder pieceMetres(double set) {
                pieceMetres = set;
                return this;
            }

            public Builder boardMetres(double set) {
                boardMetres = set;
                return this;
            }

            public Builder timberM3(double set) {
                timberM3 = set;
                return this;
            }

            public Builder timberKg(double set) {
                timberKg = set;
                return this;
            }

            public Builder growingM2(double set) {
                growingM2 = set;
                return this;
            }

            public Builder soilM3(double set) {
                soilM3 = set;
                return this;
            }

            public Builder costs(Costs set) {
                costs = set;
                return this;
            }

            /**
             * With all that was set.
             *
             * @throws NullPointerException where a part without a value is missing; its name is the message
             */
            public Totals build() {
                return new Totals(
                        Objects.requireNonNull(planters, "planters"),
                        Objects.requireNonNull(pieces, "pieces"),
                        Objects.requireNonNull(pieceMetres, "pieceMetres"),
                        Objects.requireNonNull(boardMetres, "boardMetres"),
                        Objects.requireNonNull(timberM3, "timberM3"),
                        Objects.requireNonNull(timberKg, "timberKg"),
                        Objects.requireNonNull(growingM2, "growingM2"),
                        Objects.requireNonNull(soilM3, "soilM3"),
                        Objects.requireNonNull(costs, "costs"));
            }
        }
    }

    public static Builder builder() {
        return new Builder();
    }

    /** Sets the parts one by one; what may be left out has a value here. */
    public static final class Builder {
        private @Nullable Garden garden;
        private @Nullable Outline outline;
        private @Nullable SurveyReport survey;
        private @Nullable Layout layout;
        private @Nullable List<Box> boxes;
        private @Nullable Message strength;
        private @Nullable List<StrengthReport> strengthReports;
        private @Nullable SiteWork site;
        private @Nullable List<ShoppingItem> shopping;
        private @Nullable Basket basket;
        private @Nullable CuttingPlan cutting;
        private @Nullable WorkPlan work;
        private @Nullable Totals totals;
        private List<Problem> shortfalls = List.of();

        private Builder() {}

        public Builder garden(Garden set) {
            garden = set;
            return this;
        }

        public Builder outline(Outline set) {
            outline = set;
            return this;
        }

        public Builder survey(SurveyReport set) {
            survey = set;
            return this;
        }

        public Builder layout(Layout set) {
            layout = set;
            return this;
        }

        public Builder boxes(List<Box> set) {
            boxes = set;
            return this;
        }

        public Builder strength(Message set) {
            strength = set;
            return this;
        }

        public Builder strengthReports(List<StrengthReport> set) {
            strengthReports = set;
            return this;
        }

        public Builder site(SiteWork set) {
            site = set;
            return this;
        }

        public Builder shopping(List<ShoppingItem> set) {
            shopping = set;
            return this;
        }

        public Builder basket(Basket set) {
            basket = set;
            return this;
        }

        public Builder cutting(CuttingPlan set) {
            cutting = set;
            return this;
        }

        public Builder work(WorkPlan set) {
            work = set;
            return this;
        }

        public Builder totals(Totals set) {
            totals = set;
            return this;
        }

        public Builder shortfalls(List<Problem> set) {
            shortfalls = set;
            return this;
        }

        /**
         * With all that was set.
         *
         * @throws NullPointerException where a part without a value is missing; its name is the message
         */
        public Plan build() {
            return new Plan(
                    Objects.requireNonNull(garden, "garden"),
                    Objects.requireNonNull(outline, "outline"),
                    Objects.requireNonNull(survey, "survey"),
                    Objects.requireNonNull(layout, "layout"),
                    Objects.requireNonNull(boxes, "boxes"),
                    Objects.requireNonNull(strength, "strength"),
                    Objects.requireNonNull(strengthReports, "strengthReports"),
                    Objects.requireNonNull(site, "site"),
                    Objects.requireNonNull(shopping, "shopping"),
                    Objects.requireNonNull(basket, "basket"),
                    Objects.requireNonNull(cutting, "cutting"),
                    Objects.requireNonNull(work, "work"),
                    Objects.requireNonNull(totals, "totals"),
                    shortfalls);
        }
    }
}
