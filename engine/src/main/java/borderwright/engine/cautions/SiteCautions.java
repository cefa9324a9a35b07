package borderwright.engine.cautions;

import java.util.List;

/**
 * Cautions for a whole garden.
 *
 * @param stages those that have cautions, in the order of the work
 * @param lifts every piece whose section has a weight, in the order of the boxes
 */
public record SiteCautions(List<StageCautions> stages, List<PieceLift> lifts) {
    public SiteCautions {
        stages = List.copyOf(stages);
        lifts = List.copyOf(lifts);
    }
}
