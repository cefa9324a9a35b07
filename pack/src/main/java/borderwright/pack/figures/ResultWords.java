package borderwright.pack.figures;

import borderwright.engine.buying.why.Basket;
import borderwright.engine.plan.Comparison;
import borderwright.engine.survey.checks.SurveyReport;
import java.util.List;
import org.joda.money.Money;

/** Results of a plan as sentences: its money, its survey, and its designs side by side. */
public final class ResultWords {
    private ResultWords() {}

    /** How far a total is over or under the budget. */
    public static String budget(Money over, PrintedFigures f) {
        if (over.isZero()) {
            return "Just on the budget.";
        }
        return f.money(over.abs()) + (over.isPositive() ? " over the budget." : " under the budget.");
    }

    /** What is known of whether a basket could be cheaper. */
    public static String proof(Basket basket, PrintedFigures f) {
        return basket.proven()
                ? "Proven: no basket from these price lists that serves the whole list costs less."
                : "The best found. Nothing can cost less than " + f.money(basket.bound()) + ".";
    }

    /** What the survey's readings say of each other, in a sentence. */
    public static String verdict(SurveyReport survey, PrintedFigures f) {
        if (survey.globalTest().isEmpty()) {
            return "Not shown to hold: every reading is needed, so nothing checks them. Best next: "
                    + f.text(survey.next().what()) + ".";
        }
        SurveyReport.GlobalTest test = survey.globalTest().get();
        String figures =
                "test figure " + f.decimal(test.statistic(), 2) + ", limit " + f.decimal(test.limit(), 2) + " at "
                        + f.decimal(test.risk() * 100, 1) + " % risk, "
                        + f.count(survey.redundancy(), "reading to spare", "readings to spare");
        return test.agrees()
                ? "Holds: the readings agree (" + figures + ")."
                : "Does not hold: the readings disagree by more than chance (" + figures + ").";
    }

    /** How much less a design costs than another; more when negative. */
    public static String less(Money less, PrintedFigures f) {
        return f.money(less.abs()) + (less.isNegative() ? " more" : " less");
    }

    /** How many shortfalls a design has, and how many of them the garden as said does not have. */
    public static String shortfallsAgainst(Comparison.Row row, Comparison.Row asSaid, PrintedFigures f) {
        int all = row.unmet().size();
        int more = moreShortfalls(row, asSaid, f).size();
        if (all == 0) {
            return "nothing";
        }
        return row.equals(asSaid) ? all + ", see above" : more == 0 ? all + ", as above" : all + ", " + more + " below";
    }

    /** Shortfalls of a design that the garden as said does not have; what would be right stands in plan.json. */
    public static List<String> moreShortfalls(Comparison.Row row, Comparison.Row asSaid, PrintedFigures f) {
        return row.unmet().stream()
                .filter(s -> !asSaid.unmet().contains(s))
                .map(problem -> firstSentence(f.sentence(problem)))
                .toList();
    }

    private static String firstSentence(String text) {
        int end = text.indexOf(". ");
        return end < 0 ? text : text.substring(0, end + 1);
    }
}
