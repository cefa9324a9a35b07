package borderwright.engine.plan;

import borderwright.engine.buildup.Box;
import borderwright.engine.buying.PriceLists;
import borderwright.engine.filling.FillPlan;
import borderwright.engine.filling.Filling;
import borderwright.engine.garden.Garden;
import borderwright.engine.ground.GroundPlan;
import borderwright.engine.ground.GroundWork;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.planting.Planting;
import borderwright.engine.survey.Outline;
import java.util.List;

/** Works out what is done to the site, stage by stage. */
public final class SiteWorks {
    private SiteWorks() {}

    /**
     * The work on the site of a garden.
     *
     * @param garden what the person said
     * @param outline the border as adjusted
     * @param boxes every box as built up
     * @param prices resolved from the same garden
     */
    public static SiteWork of(Garden garden, Outline outline, List<Box> boxes, PriceLists prices) {
        LengthFormat format = new LengthFormat(garden.unitsOrMetric());
        GroundPlan ground =
                GroundWork.plan(boxes, outline, garden.survey(), garden.groundOrHabit(), garden.soilOrHabit(), format);
        FillPlan filling = Filling.plan(garden, boxes, ground);
        return new SiteWork(
                ground,
                filling,
                Planting.plan(garden, outline, boxes, ground, filling),
                BagChoice.of(garden, filling.materials(), prices),
                PlatformChoices.of(garden, boxes, prices));
    }
}
