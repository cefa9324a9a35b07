package borderwright.pack.sheets;

import borderwright.engine.cautions.StageCautions;
import java.util.ArrayList;
import java.util.List;

/**
 * Cautions for this garden, stage by stage.
 *
 * @param stages in the order of the job
 */
public record CautionSheet(List<StageCautions> stages) implements Sheet {
    private static final int HEADING_LINES = 2;
    private static final int LINES_EACH = 2;

    public CautionSheet {
        stages = List.copyOf(stages);
    }

    /** Stages side by side in two columns of about the same length. */
    public List<List<StageCautions>> columns() {
        int all = stages.stream().mapToInt(CautionSheet::lines).sum();
        List<StageCautions> left = new ArrayList<>();
        int filled = 0;
        for (StageCautions stage : stages) {
            if (filled + lines(stage) / 2 > all / 2) {
                break;
            }
            left.add(stage);
            filled += lines(stage);
        }
        return List.of(left, stages.subList(left.size(), stages.size()));
    }

    private static int lines(StageCautions stage) {
        return HEADING_LINES + LINES_EACH * stage.cautions().size();
    }

    @Override
    public String title() {
        return "Cautions by stage";
    }

    /** Its columns stand on one page. */
    @Override
    public boolean startsPage() {
        return true;
    }

    @Override
    public Part part() {
        return Part.BRIEF;
    }
}
