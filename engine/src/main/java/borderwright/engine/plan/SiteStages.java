package borderwright.engine.plan;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.cautions.CautionFinder;
import borderwright.engine.filling.FillPlan;
import borderwright.engine.filling.Filling;
import borderwright.engine.floors.FloorOptionFinder;
import borderwright.engine.garden.Garden;
import borderwright.engine.ground.GroundPlan;
import borderwright.engine.ground.GroundWork;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.planting.Planting;
import borderwright.engine.planting.PlantingPlan;
import borderwright.engine.prices.PriceLists;
import borderwright.engine.settingout.SettingOut;
import borderwright.engine.shopping.BagChoice;
import borderwright.engine.survey.Outline;
import borderwright.engine.survey.SurveyAnswer;
import java.util.List;

/** Works out what is done to the site, stage by stage. */
public final class SiteStages {
    private SiteStages() {}

    /**
     * The work on the site of a garden.
     *
     * @param garden the resolved garden
     * @param border as adjusted
     * @param boxes every box as built up
     * @param prices resolved from the same garden
     */
    public static SiteWork of(Garden garden, SurveyAnswer.Adjusted border, List<Box> boxes, PriceLists prices) {
        SiteWork work = ofVariant(garden, border.outline(), boxes);
        return new SiteWork(
                work.ground(),
                work.filling(),
                work.planting(),
                work.cautions(),
                SettingOut.of(
                        border.report(),
                        border.outline(),
                        boxes.stream().map(Box::plan).toList(),
                        garden.ground().surface(),
                        work.ground()),
                BagChoice.of(garden, work.filling().materials(), prices),
                FloorOptionFinder.of(garden, boxes, prices));
    }

    /** The same without setting out and the other ways to buy and floor it, which no comparison of designs shows. */
    static SiteWork ofVariant(Garden garden, Outline outline, List<Box> boxes) {
        LengthFormat format = new LengthFormat(garden.units());
        GroundPlan ground = GroundWork.plan(
                boxes,
                outline,
                garden.survey(),
                garden.ground(),
                garden.soil(),
                garden.strength().bulgeLimitMm(),
                format);
        FillPlan filling = Filling.plan(garden, boxes, ground);
        PlantingPlan planting = Planting.plan(garden, outline, boxes, ground, filling);
        return new SiteWork(
                ground,
                filling,
                planting,
                CautionFinder.find(garden, outline, boxes, filling),
                SettingOut.NONE,
                List.of(),
                List.of());
    }
}
