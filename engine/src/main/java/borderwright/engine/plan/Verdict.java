package borderwright.engine.plan;

import borderwright.engine.message.Message;
import borderwright.engine.problem.Problem;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.joda.money.Money;

/**
 * What designs side by side come to. Only those that meet everything are compared by their cost: half a run is no saving.
 *
 * @param cheapest position of the cheapest that meets everything; -1 where none does
 * @param conclusion which one that is and what it saves, or that none meets everything
 * @param cheaperOnes for each design that costs less: what it fails first
 */
record Verdict(int cheapest, Message conclusion, List<Message> cheaperOnes) {
    static Verdict of(List<Comparison.Row> rows) {
        Comparator<Integer> byCost =
                Comparator.comparing(i -> rows.get(i).cost().orElseThrow());
        List<Integer> costed = IntStream.range(0, rows.size())
                .filter(i -> rows.get(i).cost().isPresent())
                .boxed()
                .toList();
        Optional<Integer> best =
                costed.stream().filter(i -> rows.get(i).meetsEverything()).min(byCost);
        if (best.isPresent()) {
            return new Verdict(best.get(), saving(rows, best.get()), cheaper(rows, rows.get(best.get())));
        }
        Optional<Integer> least = costed.stream()
                .min(Comparator.comparing((Integer i) -> rows.get(i).unmet().size())
                        .thenComparing(byCost));
        return least.map(i -> new Verdict(-1, least(rows.get(i)), cheaper(rows, rows.get(i))))
                .orElseGet(() -> new Verdict(-1, ComparisonMessage.NO_DESIGN_PLANNED.of(), List.of()));
    }

    private static Message least(Comparison.Row row) {
        return ComparisonMessage.NO_DESIGN_MEETS_EVERYTHING.of(
                row.cost().orElseThrow(), row.name(), row.unmet().size());
    }

    private static List<Message> cheaper(List<Comparison.Row> rows, Comparison.Row best) {
        Money most = best.cost().orElseThrow();
        return rows.stream()
                .filter(row -> row.cost().filter(most::isGreaterThan).isPresent())
                .map(row -> fails(row, best, most.minus(row.cost().orElseThrow())))
                .toList();
    }

    /** Names what the better design meets: a fault of the survey that both have tells nothing of the cheaper one. */
    private static Message fails(Comparison.Row row, Comparison.Row best, Money less) {
        List<Problem> own =
                row.unmet().stream().filter(p -> !best.unmet().contains(p)).toList();
        List<Problem> named = own.isEmpty() ? row.unmet() : own;
        return ComparisonMessage.CHEAPER_DESIGN_FAILS.of(
                row.name(), less, named.size() - 1, named.get(0).message());
    }

    private static Message saving(List<Comparison.Row> rows, int cheapest) {
        Comparison.Row best = rows.get(cheapest);
        Comparison.Row given = rows.get(0);
        if (cheapest == 0 || given.cost().isEmpty()) {
            return ComparisonMessage.CHEAPEST_DESIGN.of(best.name());
        }
        Money saved = given.cost().get().minus(best.cost().orElseThrow());
        double moreM2 = best.growingM2() - given.growingM2();
        double area = Math.abs(moreM2);
        String way = moreM2 < 0 ? "less" : "more";
        if (saved.isZero()) {
            return ComparisonMessage.DESIGN_MEETS_MORE_FOR_NOTHING.of(area, way, best.name());
        }
        return saved.isNegative()
                ? ComparisonMessage.DESIGN_MEETS_MORE_FOR_MONEY.of(saved.negated(), area, way, best.name())
                : ComparisonMessage.CHEAPEST_DESIGN_SAVES.of(saved, area, way, best.name());
    }
}
