package borderwright.engine.filling;

import borderwright.engine.problem.Problem;
import java.util.List;
import java.util.Optional;

/**
 * All that goes into the boxes and onto them.
 *
 * @param planters what fills each planter, in build order
 * @param materials what that is made of, bottom layer first
 * @param settlement how far it sinks
 * @param floorFabricM2 fabric over the slats of platforms, turned up 100 mm at the walls, m2
 * @param liner liner on the inner faces; empty where none is wished
 * @param finish finish and preservative
 * @param weights box by box
 * @param notes what a person should know, each a sentence with numbers
 * @param unmet what stops the work until someone has decided
 */
public record FillPlan(
        List<SoilVolume> planters,
        List<Material> materials,
        Settlement settlement,
        double floorFabricM2,
        Optional<LinerPlan> liner,
        FinishPlan finish,
        List<BoxWeight> weights,
        List<String> notes,
        List<Problem> unmet) {
    public FillPlan {
        planters = List.copyOf(planters);
        materials = List.copyOf(materials);
        weights = List.copyOf(weights);
        notes = List.copyOf(notes);
        unmet = List.copyOf(unmet);
    }

    /** Volume of all planters once settled, m3. */
    public double filledM3() {
        return planters.stream().mapToDouble(SoilVolume::filledM3).sum();
    }

    /** Loose volume of all materials, m3. */
    public double orderedM3() {
        return materials.stream().mapToDouble(Material::orderedM3).sum();
    }

    /** Weight of all boxes, filled and soaked, kg. */
    public double filledKg() {
        return weights.stream().mapToDouble(BoxWeight::filledKg).sum();
    }
}
