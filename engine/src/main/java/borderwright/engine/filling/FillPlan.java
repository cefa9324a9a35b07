package borderwright.engine.filling;

import borderwright.engine.message.Message;
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
 * @param liner liner on the inner faces; empty where none is given
 * @param finish finish and preservative
 * @param weights box by box
 * @param notes what a person should know
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
        List<Message> notes,
        List<Problem> unmet) {
    public FillPlan {
        planters = List.copyOf(planters);
        materials = List.copyOf(materials);
        weights = List.copyOf(weights);
        notes = List.copyOf(notes);
        unmet = List.copyOf(unmet);
    }

    /** A filling, set part by part; what is left out is empty. */
    static final class Builder {
        private final List<SoilVolume> planters;
        private final List<Material> materials;
        private final Settlement settlement;
        private double floorFabricM2;
        private Optional<LinerPlan> liner = Optional.empty();
        private final FinishPlan finish;
        private List<BoxWeight> weights = List.of();
        private List<Message> notes = List.of();
        private List<Problem> unmet = List.of();

        Builder(List<SoilVolume> planters, List<Material> materials, Settlement settlement, FinishPlan finish) {
            this.planters = planters;
            this.materials = materials;
            this.settlement = settlement;
            this.finish = finish;
        }

        Builder floorFabric(double m2) {
            floorFabricM2 = m2;
            return this;
        }

        Builder liner(Optional<LinerPlan> cut) {
            liner = cut;
            return this;
        }

        Builder weights(List<BoxWeight> ofBoxes) {
            weights = ofBoxes;
            return this;
        }

        Builder notes(List<Message> known, List<Problem> notMet) {
            notes = known;
            unmet = notMet;
            return this;
        }

        FillPlan build() {
            return new FillPlan(planters, materials, settlement, floorFabricM2, liner, finish, weights, notes, unmet);
        }
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
