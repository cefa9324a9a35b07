package borderwright.engine.cautions;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.TestBoxes;
import borderwright.engine.TestGarden;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.filling.FillPlan;
import borderwright.engine.filling.Filling;
import borderwright.engine.garden.Garden;
import borderwright.engine.garden.given.GivenGround;
import borderwright.engine.garden.vocabulary.ground.GroundSurface;
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
        return of(TestGarden.with(null, null), box);
    }

    private static SiteCautions on(GroundSurface surface) {
        Garden garden =
                TestGarden.with(null, GivenGround.builder().surface(surface).build());
        return of(garden, TestBoxes.box("F1", Ring.rectangle(0, 0, 2400, 1200), 0, 450, 0));
    }

    private static List<MessageCode> codes(SiteCautions cautions) {
        return cautions.stages().stream()
                .flatMap(stage -> stage.cautions().stream())
                .map(Message::code)
                .toList();
    }

    private static SiteCautions of(Garden garden, Box box) {
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

    @Test
    void foodInDugEarthIsSaidOnlyWhereEarthIsDug() {
        assertThat(codes(on(GroundSurface.LAWN), CautionStage.DIGGING)).contains(CautionCode.FOOD_IN_DUG_EARTH);
        assertThat(codes(on(GroundSurface.PAVING))).doesNotContain(CautionCode.FOOD_IN_DUG_EARTH);
        assertThat(codes(on(GroundSurface.ROOF))).doesNotContain(CautionCode.FOOD_IN_DUG_EARTH);
    }

    @Test
    void tetanusIsSaidOnceOnEveryGround() {
        for (GroundSurface surface : GroundSurface.values()) {
            assertThat(codes(on(surface))).as("%s", surface).containsOnlyOnce(CautionCode.TETANUS);
        }
        assertThat(codes(on(GroundSurface.PAVING), CautionStage.AFTER)).contains(CautionCode.TETANUS);
        assertThat(codes(on(GroundSurface.LAWN), CautionStage.DIGGING)).contains(CautionCode.TETANUS);
    }

    @Test
    void aRoofNeedsALetterAndClearGuards() {
        assertThat(on(GroundSurface.ROOF).stages().get(0).cautions())
                .contains(CautionCode.ROOF_LOAD_LIMIT.of(), CautionCode.CLEAR_OF_GUARDS.of(450.0));
        assertThat(codes(on(GroundSurface.PAVING)))
                .doesNotContain(CautionCode.ROOF_LOAD_LIMIT, CautionCode.CLEAR_OF_GUARDS);
    }

    @Test
    void aFallFromARimAboveTheLimitIsSaidWithItsHeight() {
        assertThat(codes(of(600), CautionStage.AFTER))
                .contains(CautionCode.RIMS_ARE_NO_STEPS, CautionCode.CHILDREN_CLIMB)
                .doesNotContain(CautionCode.CHILDREN_CLIMB_HIGH);
        assertThat(of(750).stages().get(5).cautions())
                .contains(CautionCode.CHILDREN_CLIMB_HIGH.of(750.0, 600.0))
                .doesNotContain(CautionCode.CHILDREN_CLIMB.of());
    }

    @Test
    void liftingIsStaggeredWhereMoreThanADaysLoadIsMoved() {
        SiteCautions small = of(TestBoxes.box("F1", Ring.rectangle(0, 0, 1000, 1000), 0, 300, 0));

        assertThat(codes(small)).doesNotContain(CautionCode.STAGGER_LIFTING);
        assertThat(codes(of(450), CautionStage.LIFTING)).contains(CautionCode.STAGGER_LIFTING);
    }

    @Test
    void dustAndGlovesAreSaidWhereverBoardsAreSawnAndSoilIsFilled() {
        assertThat(codes(of(300), CautionStage.SAWING)).contains(CautionCode.SAWDUST);
        assertThat(codes(of(300), CautionStage.AFTER)).contains(CautionCode.BAGS_AND_DUST);
    }
}
