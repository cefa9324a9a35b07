package borderwright.pack.figures;

import borderwright.engine.message.Message;
import borderwright.engine.plan.Comparison;
import borderwright.engine.survey.checks.SurveyReport;
import borderwright.engine.survey.checks.SurveyReport.Reading;
import borderwright.engine.survey.checks.SurveyReport.Unnoticed;
import java.util.List;
import org.joda.money.Money;

/** Results of a plan as sentences: its survey, and its designs side by side. */
public final class ResultWords {
    private ResultWords() {}

    /** Whether the survey's readings agree and what could go unnoticed, in a sentence. */
    public static String verdict(SurveyReport survey, PrintedFigures f) {
        return f.text(
                switch (survey.verdict()) {
                    case SHOWN ->
                        ResultMessage.READINGS_SHOWN.of(
                                survey.weakest().unnoticed().movesMm().orElseThrow());
                    case NOT_SHOWN -> notShown(survey);
                    case DISAGREES -> ResultMessage.READINGS_DISAGREE.of();
                });
    }

    private static Message notShown(SurveyReport survey) {
        Message next = survey.next().what();
        Reading weakest = survey.weakest();
        Unnoticed unnoticed = weakest.unnoticed();
        if (survey.globalTest().isEmpty()) {
            return ResultMessage.READINGS_UNCHECKED.of(next);
        }
        if (unnoticed.slip().isEmpty() || unnoticed.movesMm().isEmpty()) {
            return ResultMessage.READINGS_NOT_CHECKED.of(weakest.what(), next);
        }
        return ResultMessage.READINGS_NOT_SHOWN.of(
                weakest.leastSlip().orElseThrow(),
                weakest.what(),
                unnoticed.corner(),
                unnoticed.movesMm().getAsDouble(),
                unnoticed.roomMm(),
                next);
    }

    /** What a slip that would not show could do to the border. */
    public static String moves(Reading reading, PrintedFigures f) {
        Unnoticed unnoticed = reading.unnoticed();
        if (unnoticed.movesMm().isEmpty()) {
            return f.text(ResultMessage.CORNER_MOVES_FREELY.of(unnoticed.corner()));
        }
        double moves = unnoticed.movesMm().getAsDouble();
        return moves == 0 ? "" : f.text(ResultMessage.CORNER_MOVES.of(unnoticed.corner(), moves));
    }

    /** The figures of the test of all readings together; empty where nothing checks them. */
    public static String test(SurveyReport survey, PrintedFigures f) {
        return survey.globalTest()
                .map(test -> f.text(ResultMessage.READINGS_TEST.of(
                        test.statistic(), test.limit(), test.risk(), survey.redundancy())))
                .orElse("");
    }

    /** How much less a design costs than another; more when negative. */
    public static String less(Money less, PrintedFigures f) {
        return f.text(
                (less.isNegative() ? ResultMessage.DESIGN_COSTS_MORE : ResultMessage.DESIGN_COSTS_LESS).of(less.abs()));
    }

    /** How many shortfalls a design has, and how many of them the garden as given does not have. */
    public static String shortfallsAgainst(Comparison.Row row, Comparison.Row asGiven, PrintedFigures f) {
        int all = row.unmet().size();
        int more = moreShortfalls(row, asGiven, f).size();
        if (all == 0) {
            return f.text(ResultMessage.SHORTFALLS_NONE.of());
        }
        if (row.equals(asGiven)) {
            return f.text(ResultMessage.SHORTFALLS_ABOVE.of(all));
        }
        return f.text(
                more == 0 ? ResultMessage.SHORTFALLS_AS_ABOVE.of(all) : ResultMessage.SHORTFALLS_BELOW.of(all, more));
    }

    /** Shortfalls of a design that the garden as given does not have; what would be right stands in plan.json. */
    public static List<String> moreShortfalls(Comparison.Row row, Comparison.Row asGiven, PrintedFigures f) {
        return row.unmet().stream()
                .filter(s -> !asGiven.unmet().contains(s))
                .map(problem -> firstSentence(f.sentence(problem)))
                .toList();
    }

    private static String firstSentence(String text) {
        int end = text.indexOf(". ");
        return end < 0 ? text : text.substring(0, end + 1);
    }
}
