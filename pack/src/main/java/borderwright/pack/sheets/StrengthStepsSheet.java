package borderwright.pack.sheets;

import borderwright.engine.message.Message;
import borderwright.engine.strength.StrengthReport;
import borderwright.engine.strength.worked.Check;
import java.util.List;

/**
 * The most used checks of the weakest box step by step, and what all checks take for granted.
 *
 * @param report of the weakest box
 * @param taken what the checks of all boxes assume, each once
 */
public record StrengthStepsSheet(StrengthReport report, List<Message> taken) implements Sheet {
    /** Checks that are printed step by step; the others stand in plan.json. */
    private static final int WORKED = 3;

    public StrengthStepsSheet {
        taken = List.copyOf(taken);
    }

    @Override
    public String title() {
        return "Strength, step by step";
    }

    @Override
    public Part part() {
        return Part.WORKING;
    }

    public List<Check> worked() {
        return report.checks().stream().limit(WORKED).toList();
    }
}
