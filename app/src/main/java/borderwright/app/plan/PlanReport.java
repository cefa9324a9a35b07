package borderwright.app.plan;

import borderwright.engine.measure.LengthFormat;
import borderwright.engine.message.Sentences;
import borderwright.engine.plan.Comparison;
import borderwright.engine.plan.Costs;
import borderwright.engine.plan.Plan;
import borderwright.engine.problem.Problem;
import borderwright.pack.language.Language;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Collection;
import org.joda.money.Money;

/** A plan in short, for the console: shortfalls first. */
final class PlanReport {
    private PlanReport() {}

    static void print(Plan plan, Comparison comparison, Collection<String> files, Path folder, PrintWriter out) {
        LengthFormat format = new LengthFormat(plan.garden().units());
        Sentences sentences = Language.english().in(plan.garden().units());
        Plan.Totals totals = plan.totals();
        out.println(plan.garden().name());
        for (Problem shortfall : plan.shortfalls()) {
            out.println("  ! " + shortfall.sentence(sentences));
        }
        out.println("  strength " + sentences.text(plan.strength()));
        out.println("  " + totals.planters() + " planters, " + totals.pieces() + " pieces, "
                + format.weight(totals.timberKg())
                + " of wood, " + format.area(totals.growingM2()) + " to grow in, " + format.volume(totals.soilM3())
                + " of soil");
        costs(plan, sentences, out);
        out.println("  next measure worth taking: "
                + sentences.text(plan.survey().next().what()));
        if (comparison.rows().size() > 1) {
            comparison.rows().forEach(row -> out.println("  " + row(row, format)));
            out.println("  " + sentences.text(comparison.conclusion()));
            comparison.cheaperOnes().forEach(fails -> out.println("  " + sentences.text(fails)));
        }
        out.println("  written into " + folder + ": " + String.join(", ", files));
    }

    private static void costs(Plan plan, Sentences sentences, PrintWriter out) {
        Costs costs = plan.totals().costs();
        costs.unpriced().forEach(item -> out.println("  not priced by anyone: " + sentences.text(item.line())));
        costs.inAll()
                .ifPresent(sum -> out.println("  in all " + sum
                        + costs.againstBudget()
                                .map(budget -> ": " + sentences.text(budget))
                                .orElse("")));
        out.println("  " + sentences.text(costs.covers()));
        out.println("  " + sentences.text(costs.proof(plan.basket())));
    }

    private static String row(Comparison.Row row, LengthFormat format) {
        String unmet = row.meetsEverything()
                ? "; meets everything"
                : "; not met: " + row.unmet().size();
        return "\"" + row.name() + "\": " + row.cost().map(Money::toString).orElse("no cost") + ", "
                + format.area(row.growingM2()) + " to grow in" + unmet;
    }
}
