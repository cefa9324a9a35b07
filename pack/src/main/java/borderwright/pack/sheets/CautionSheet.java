package borderwright.pack.sheets;

import borderwright.engine.cautions.StageCautions;
import java.util.List;

/**
 * Cautions for this garden, stage by stage.
 *
 * @param stages in the order of the job
 */
public record CautionSheet(List<StageCautions> stages) implements Sheet {
    public CautionSheet {
        stages = List.copyOf(stages);
    }

    @Override
    public String title() {
        return "Cautions by stage";
    }

    @Override
    public Part part() {
        return Part.BRIEF;
    }
}
