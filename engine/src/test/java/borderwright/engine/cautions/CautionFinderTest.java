package borderwright.engine.cautions;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.TestBoxes;
import borderwright.engine.TestGarden;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.filling.FillPlan;
import borderwright.engine.filling.Filling;
import borderwright.engine.garden.Garden;
import borderwright.engine.geometry.Ring;
import borderwright.engine.ground.GroundWork;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.Message;
import borderwright.engine.message.MessageCode;
import java.util.List;
import org.junit.jupiter.api.Test;

class CautionFinderTest {
    private static SiteCautions of(double heightMm) {
        return of(TestBoxes.box("F1", Ring.rectangle(0, 0, 2400, 1200), 0, heightMm, 0));
    }

    private static SiteCautions of(Box box) {
        Garden garden = TestGarden.with(null, null);
        FillPlan filling = Filling.plan(
                garden,
                List.of(box),
                GroundWork.plan(
                        List.of(box),
                        TestGarden.outline(),
                        garden.survey(),
                        garden.ground(),
                        garden.soil(),
                        10,
                        new LengthFormat(UnitSystem.METRIC)));
        return CautionFinder.find(garden, TestGarden.outline(), List.of(box), filling);
    }

    private static List<MessageCode> codes(SiteCautions cautions, CautionStage stage) {
        return cautions.stages().stream()
                .filter(s -> s.stage() == stage)
                .flatMap(s -> s.cautions().stream())
                .map(Message::code)
                .toList();
    }

    @Test
    void wallsAboveTheLimitAreForAnEngineerAndThoseAtItAreNot() {
        assertThat(codes(of(600), CautionStage.BEFORE)).contains(CautionCode.ENGINEER_FOR_RETAINING_WALLS);
        assertThat(of(750).stages().get(0).cautions()).contains(CautionCode.ENGINEER_FOR_TALL_WALLS.of(750.0, 600.0));
    }

    @Test
    void aPieceTakesOnePersonForEveryLift() {
        SiteCautions light = of(300);
        SiteCautions heavy = of(TestBoxes.box("F1", Ring.rectangle(0, 0, 16_000, 1200), 0, 300, 0));

        assertThat(light.lifts()).isNotEmpty().allMatch(lift -> lift.people() == 1 && lift.kg() <= Filling.LIFT_KG);
        assertThat(codes(light, CautionStage.LIFTING)).contains(CautionCode.ASK_FOR_HELP);
        assertThat(heavy.lifts()).anyMatch(lift -> lift.people() >= 2);
        assertThat(heavy.lifts())
                .allMatch(lift -> lift.kg() <= lift.people() * Filling.LIFT_KG
                        && (lift.people() == 1 || lift.kg() > (lift.people() - 1) * Filling.LIFT_KG));
    }

    @Test
    void stagesComeInTheOrderOfTheWork() {
        assertThat(of(300).stages().stream().map(StageCautions::stage))
                .containsExactly(
                        CautionStage.BEFORE,
                        CautionStage.DIGGING,
                        CautionStage.WOOD,
                        CautionStage.SAWING,
                        CautionStage.LIFTING,
                        CautionStage.AFTER);
    }
}
