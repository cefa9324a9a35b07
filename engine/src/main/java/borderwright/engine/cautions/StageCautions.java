package borderwright.engine.cautions;

import borderwright.engine.message.Message;
import java.util.List;

/**
 * Cautions of one stage of the work.
 *
 * @param stage of the work
 * @param cautions the gravest first
 */
public record StageCautions(CautionStage stage, List<Message> cautions) {
    public StageCautions {
        cautions = List.copyOf(cautions);
    }
}
