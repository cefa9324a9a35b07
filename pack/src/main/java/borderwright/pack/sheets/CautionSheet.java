package borderwright.pack.sheets;

import java.util.List;

/**
 * Cautions for this garden, stage by stage.
 *
 * @param stages in the order of the job
 */
public record CautionSheet(List<CautionWords.Stage> stages) implements Sheet {
    public CautionSheet {
        stages = List.copyOf(stages);
    }

    @Override
    public String title() {
        return "Cautions by stage";
    }
}
