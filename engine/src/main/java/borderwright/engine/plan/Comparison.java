package borderwright.engine.plan;

import borderwright.engine.message.Message;
import borderwright.engine.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * A garden's plan and its variants side by side.
 *
 * @param rows the garden as given first, then its variants in the order in which they were written
 * @param cheapest position in {@code rows} of the cheapest among the designs that meet everything; -1 where none does
 * @param conclusion which one that is and what it saves, or that none meets everything
 * @param cheaperOnes for each design that costs less than that one (or, where none meets everything, than the one that leaves
 *     the least unmet): what it fails first and that one does not
 */
public record Comparison(List<Row> rows, int cheapest, Message conclusion, List<Message> cheaperOnes) {
    /** Nothing to compare. */
    public static final Comparison NONE =
            new Comparison(List.of(), -1, ComparisonMessage.NO_DESIGN_PLANNED.of(), List.of());

    public Comparison {
        rows = List.copyOf(rows);
        cheaperOnes = List.copyOf(cheaperOnes);
    }

    /**
     * One design.
     *
     * @param name {@code as given} or the variant's name
     * @param changed field paths in which it differs
     * @param cost what it costs in all; empty when it was not planned or has no basket
     * @param less how much less that is than the garden as given, negative when more; empty for the garden itself and where
     *     either has no cost
     * @param boardMetres length of all boards cut into, m
     * @param timberM3 volume of its pieces, m3
     * @param growingM2 area inside its walls, m2
     * @param soilM3 soil to order, m3
     * @param planters number of planters
     * @param unmet what cannot be met or does not hold in it
     */
    public record Row(
            String name,
            List<String> changed,
            Optional<Money> cost,
            Optional<Money> less,
            double boardMetres,
            double timberM3,
            double growingM2,
            double soilM3,
            int planters,
            List<Problem> unmet) {
        public Row {
            changed = List.copyOf(changed);
            unmet = List.copyOf(unmet);
        }

        /** Whether it has a cost and nothing is left unmet in it. */
        public boolean meetsEverything() {
            return cost.isPresent() && unmet.isEmpty();
        }

        public static Builder builder() {
            return new Builder();
        }

        /** Sets the parts one by one; money left out is money not known. */
        public static final class Builder {
            private @Nullable String name;
            private @Nullable List<String> changed;
            private Optional<Money> cost = Optional.empty();
            private Optional<Money> less = Optional.empty();
            private @Nullable Double boardMetres;
            private @Nullable Double timberM3;
            private @Nullable Double growingM2;
            private @Nullable Double soilM3;
            private @Nullable Integer planters;
            private @Nullable List<Problem> unmet;

            private Builder() {}

            public Builder name(String set) {
                name = set;
                return this;
            }

            public Builder changed(List<String> set) {
                changed = set;
                return this;
            }

            public Builder cost(Optional<Money> set) {
                cost = set;
                return this;
            }

            public Builder less(Optional<Money> set) {
                less = set;
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

            public Builder growingM2(double set) {
                growingM2 = set;
                return this;
            }

            public Builder soilM3(double set) {
                soilM3 = set;
                return this;
            }

            public Builder planters(int set) {
                planters = set;
                return this;
            }

            public Builder unmet(List<Problem> set) {
                unmet = set;
                return this;
            }

            /**
             * With all that was set.
             *
             * @throws NullPointerException where a part without a value is missing; its name is the message
             */
            public Row build() {
                return new Row(
                        Objects.requireNonNull(name, "name"),
                        Objects.requireNonNull(changed, "changed"),
                        cost,
                        less,
                        Objects.requireNonNull(boardMetres, "boardMetres"),
                        Objects.requireNonNull(timberM3, "timberM3"),
                        Objects.requireNonNull(growingM2, "growingM2"),
                        Objects.requireNonNull(soilM3, "soilM3"),
                        Objects.requireNonNull(planters, "planters"),
                        Objects.requireNonNull(unmet, "unmet"));
            }
        }
    }

    /**
     * One design and what planning it came to.
     *
     * @param name {@code as given} or the variant's name
     * @param changed field paths in which it differs
     * @param answer its plan, or why there is none
     */
    public record Design(String name, List<String> changed, PlanAnswer answer) {
        public Design {
            changed = List.copyOf(changed);
        }
    }

    /** Lays designs side by side; the first is the garden as given. */
    public static Comparison of(List<Design> designs) {
        Optional<Money> asGiven = designs.isEmpty() ? Optional.empty() : cost(designs.get(0));
        List<Row> rows = new ArrayList<>();
        for (Design design : designs) {
            rows.add(row(design, rows.isEmpty() ? Optional.empty() : asGiven));
        }
        return ofRows(rows);
    }

    static Comparison ofRows(List<Row> rows) {
        Verdict verdict = Verdict.of(rows);
        return new Comparison(rows, verdict.cheapest(), verdict.conclusion(), verdict.cheaperOnes());
    }

    private static Optional<Money> cost(Design design) {
        return design.answer() instanceof PlanAnswer.Planned planned
                ? planned.plan().totals().costs().inAll()
                : Optional.empty();
    }

    private static Row row(Design design, Optional<Money> asGiven) {
        if (design.answer() instanceof PlanAnswer.Planned planned) {
            Plan plan = planned.plan();
            Plan.Totals totals = plan.totals();
            return Row.builder()
                    .name(design.name())
                    .changed(design.changed())
                    .cost(totals.costs().inAll())
                    .less(asGiven.flatMap(money -> totals.costs().inAll().map(money::minus)))
                    .boardMetres(totals.boardMetres())
                    .timberM3(totals.timberM3())
                    .growingM2(totals.growingM2())
                    .soilM3(totals.soilM3())
                    .planters(totals.planters())
                    .unmet(plan.shortfalls())
                    .build();
        }
        PlanAnswer.NotPlanned none = (PlanAnswer.NotPlanned) design.answer();
        return Row.builder()
                .name(design.name())
                .changed(design.changed())
                .cost(Optional.empty())
                .less(Optional.empty())
                .boardMetres(0)
                .timberM3(0)
                .growingM2(0)
                .soilM3(0)
                .planters(0)
                .unmet(none.reasons())
                .build();
    }
}
