package borderwright.engine.cautions;

import java.util.List;

/**
 * Cautions of one stage of the work.
 *
 * @param stage of the work
 * @param cautions the gravest first
 */
public record StageCautions(CautionStage stage, List<Caution> cautions) {
    public StageCautions {
        cautions = List.copyOf(cautions);
    }
}
