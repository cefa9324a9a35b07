package borderwright.app.plan;

import borderwright.engine.measure.LengthFormat;
import borderwright.engine.message.Sentences;
import borderwright.engine.plan.Comparison;
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
        out.println("  basket " + totals.boardsAndFixings() + budget(totals) + "; "
                + (plan.basket().proven()
                        ? "nothing can be cheaper"
                        : "nothing can be under " + plan.basket().bound()));
        plan.basket()
                .unpriced()
                .forEach(item -> out.println("  not priced by anyone: " + item.quantity() + " " + item.item()));
        out.println("  next measure worth taking: "
                + sentences.text(plan.survey().next().what()));
        if (comparison.rows().size() > 1) {
            comparison.rows().forEach(row -> out.println("  " + row(row, format)));
            out.println("  " + sentences.text(comparison.conclusion()));
        }
        out.println("  written into " + folder + ": " + String.join(", ", files));
    }

    private static String budget(Plan.Totals totals) {
        return totals.overBudget()
                .map(over -> over.isPositive() ? ", " + over + " over budget" : ", " + over.negated() + " under budget")
                .orElse("");
    }

    private static String row(Comparison.Row row, LengthFormat format) {
        String unmet = row.unmet().isEmpty() ? "" : "; not met: " + row.unmet().size();
        return "\"" + row.name() + "\": " + row.cost().map(Money::toString).orElse("no plan") + ", "
                + format.area(row.growingM2()) + " to grow in" + unmet;
    }
}
