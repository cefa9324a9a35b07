package borderwright.engine.plan;

import borderwright.engine.cautions.SiteCautions;
import borderwright.engine.filling.FillPlan;
import borderwright.engine.floors.FloorOption;
import borderwright.engine.ground.GroundPlan;
import borderwright.engine.planting.PlantingPlan;
import borderwright.engine.settingout.SettingOut;
import borderwright.engine.shopping.BagChoice;
import java.util.List;

/**
 * What is done to the site besides wood.
 *
 * @param ground the ground made ready
 * @param filling what goes into the boxes and onto them
 * @param planting what can grow in them
 * @param cautions that the garden gives cause for, and who lifts each piece
 * @param settingOut where the corners of the boxes go
 * @param bags ways to buy each material of the filling, each supplier's bag or load alone
 * @param platforms what a false floor would save, height by height
 */
public record SiteWork(
        GroundPlan ground,
        FillPlan filling,
        PlantingPlan planting,
        SiteCautions cautions,
        SettingOut settingOut,
        List<BagChoice> bags,
        List<FloorOption> platforms) {
    public SiteWork {
        bags = List.copyOf(bags);
        platforms = List.copyOf(platforms);
    }

    /** The same with other rows of platforms. */
    SiteWork withPlatforms(List<FloorOption> others) {
        return new SiteWork(ground, filling, planting, cautions, settingOut, bags, others);
    }
}
