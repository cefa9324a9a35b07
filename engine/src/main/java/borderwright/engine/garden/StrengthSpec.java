package borderwright.engine.garden;

import borderwright.engine.garden.vocabulary.TimberRules;
import borderwright.engine.garden.vocabulary.ground.FoundationSoil;
import borderwright.engine.garden.vocabulary.ground.SoilPush;
import borderwright.engine.garden.vocabulary.ground.SoilWater;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the walls must stand.
 *
 * @param bulgeLimitMm how far a side may end up bowing out
 * @param rules for timber and screws
 * @param load how the soil pushes
 * @param kneelingN weight of a person on the edge of a wall; 0 for none
 * @param foundation what lies under the gravel; nothing on paving or a roof
 * @param bedFriction of the bottom course that may be counted on; nothing where none is given
 * @param fasteners what screws and straps bear
 */
public record StrengthSpec(
        double bulgeLimitMm,
        TimberRules rules,
        SoilLoad load,
        double kneelingN,
        Optional<FoundationSoil> foundation,
        OptionalDouble bedFriction,
        Fasteners fasteners) {

    /**
     * How the soil pushes on the walls.
     *
     * @param frictionRad its angle of friction, radians
     * @param push which coefficient turns weight into push
     * @param water how wet it comes to be for a while
     * @param heapedMm how high it is heaped above its level surface
     * @param treadingKnPerM2 load of treading it in
     * @param support whether narrow soil may hang on its walls
     */
    public record SoilLoad(
            double frictionRad,
            SoilPush push,
            SoilWater water,
            double heapedMm,
            double treadingKnPerM2,
            SoilSupport support) {
        /** Whether narrow soil may hang on its walls. */
        public boolean arching() {
            return support == SoilSupport.WALLS;
        }
    }

    /** What bears the weight of soil in a narrow planter: the bed alone, or the walls in part. */
    public enum SoilSupport {
        BED,
        WALLS
    }

    /**
     * What screws and straps bear.
     *
     * @param withdrawalNPerMm2 withdrawal parameter of the screws
     * @param pullThroughNPerMm2 head pull-through parameter of the screws
     * @param screwStiffnessNPerMm stiffness of one screw pulled; nothing where its maker declares none
     * @param strapN what one corner strap carries for good; nothing where its maker declares none
     */
    public record Fasteners(
            double withdrawalNPerMm2,
            double pullThroughNPerMm2,
            OptionalDouble screwStiffnessNPerMm,
            OptionalDouble strapN) {}
}
