package borderwright.engine.sequence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.TestBoxes;
import borderwright.engine.TestGarden;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.filling.FillPlan;
import borderwright.engine.filling.Filling;
import borderwright.engine.garden.FirstPlanter;
import borderwright.engine.garden.Garden;
import borderwright.engine.garden.given.GivenDays;
import borderwright.engine.garden.given.GivenFilling;
import borderwright.engine.garden.given.GivenFilling.GivenFinish;
import borderwright.engine.garden.given.GivenFirstPlanter;
import borderwright.engine.garden.given.GivenGround;
import borderwright.engine.garden.resolve.SoilResolver;
import borderwright.engine.garden.resolve.SupplyResolver;
import borderwright.engine.garden.vocabulary.ground.GroundSurface;
import borderwright.engine.geometry.Ring;
import borderwright.engine.ground.GroundPlan;
import borderwright.engine.ground.GroundWork;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.English;
import borderwright.engine.sequence.WorkTask.Kind;
import borderwright.engine.sequence.WorkTask.Weather;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BuildSequenceTest {
    private static final LocalDate GOOD_FRIDAY = LocalDate.of(2026, 4, 3);
    private static final GivenFilling FINISHED =
            GivenFilling.builder().finish(new GivenFinish(2, null)).build();

    private static WorkPlan plan(int boxes, GivenDays days) {
        return plan(boxes, days, null);
    }

    private static WorkPlan plan(int boxes, GivenDays days, @Nullable FirstPlanter first) {
        List<Box> built = new ArrayList<>();
        for (int i = 0; i < boxes; i++) {
            double x = (i % 4) * 2000 - 8000;
            double y = (i / 4) * 1000 - 9000;
            built.add(TestBoxes.box("F" + (i + 1), Ring.rectangle(x, y, x + 1500, y + 700), -50, 450, 0));
        }
        return plan(built, days, first);
    }

    private static WorkPlan plan(List<Box> built, GivenDays days, @Nullable FirstPlanter first) {
        Garden asked = TestGarden.with(FINISHED, null, days);
        Garden garden = first == null ? asked : TestGarden.taught(asked, first);
        GroundPlan ground = GroundWork.plan(
                built,
                TestGarden.outline(),
                garden.survey(),
                garden.ground(),
                SoilResolver.usual(),
                10,
                new LengthFormat(UnitSystem.METRIC));
        FillPlan filling = Filling.plan(garden, built, ground);
        return BuildSequence.plan(
                garden, built, ground, filling, new CuttingPlan(List.of(), List.of(), List.of(), List.of(), List.of()));
    }

    private static WorkPlan on(GroundSurface surface) {
        Garden garden =
                TestGarden.with(FINISHED, GivenGround.builder().surface(surface).build(), days(0));
        List<Box> boxes = List.of(TestBoxes.box("F1", Ring.rectangle(0, 0, 1500, 700), -50, 450, 0));
        GroundPlan ground = GroundWork.plan(
                boxes,
                TestGarden.outline(),
                garden.survey(),
                garden.ground(),
                SoilResolver.usual(),
                10,
                new LengthFormat(UnitSystem.METRIC));
        return BuildSequence.plan(
                garden,
                boxes,
                ground,
                Filling.plan(garden, boxes, ground),
                new CuttingPlan(List.of(), List.of(), List.of(), List.of(), List.of()));
    }

    @Test
    void nothingIsDrivenIntoHardGround() {
        for (GroundSurface surface : GroundSurface.values()) {
            List<String> tasks = on(surface).tasks().stream()
                    .map(task -> English.METRIC.text(task.what()))
                    .toList();
            String setOut =
                    "Set out all corners and " + (surface.isHard() ? "chalk a mark at each" : "drive a peg at each");
            assertThat(tasks).as(surface.name()).contains(setOut);
            assertThat(String.join("; ", tasks).contains("peg"))
                    .as(surface.name())
                    .isNotEqualTo(surface.isHard());
        }
    }

    @Test
    void aTaskThatIsNotDoneGoesOnTheNextDay() {
        WorkPlan plan = plan(6, days(0));
        WorkDay day = plan.days().stream()
                .filter(d -> d.slots().stream().anyMatch(slot -> !slot.ends()))
                .findFirst()
                .orElseThrow();
        assertThat(plan.description(day).stream().map(English.METRIC::text))
                .anyMatch(line -> line.matches("\\d+\\. .+ \\(continued next day\\): \\d+\\.\\d person-hours"));
    }

    @Test
    void rainMovesADayThatHasNoWorkUnderARoof() {
        WorkPlan plan = plan(3, days(0));
        assertThat(plan.days()).allSatisfy(day -> {
            boolean outdoors = day.slots().stream()
                    .anyMatch(slot -> plan.task(slot.task()).kind().weather() != Weather.ANY);
            assertThat(plan.inRain(day).isPresent()).isEqualTo(outdoors);
            plan.inRain(day)
                    .map(English.METRIC::text)
                    .ifPresent(text -> assertThat(text.equals("move the day on"))
                            .isEqualTo(day.whenItRains().isEmpty()));
        });
    }

    private static GivenDays days(int helpers) {
        return GivenDays.builder()
                .start(GOOD_FRIDAY)
                .workDays(List.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY))
                .away(List.of(LocalDate.of(2026, 4, 12)))
                .hours(6.0)
                .helpers(helpers)
                .delivery(5)
                .build();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3, 12, 30, 60})
    void theCalendarKeepsOrderWaitsDaysAndHours(int boxes) {
        WorkPlan plan = plan(boxes, days(2));
        Map<Integer, LocalDate> ended = new HashMap<>();
        Map<Integer, Double> spent = new HashMap<>();
        for (WorkDay day : plan.days()) {
            assertThat(day.date().getDayOfWeek()).isIn(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY);
            assertThat(day.date()).isNotEqualTo(LocalDate.of(2026, 4, 12));
            assertThat(day.slots().stream()
                            .mapToDouble(WorkDay.Slot::personHours)
                            .sum())
                    .isLessThanOrEqualTo(3 * 6 + 1e-9);
            for (WorkDay.Slot slot : day.slots()) {
                WorkTask task = plan.tasks().get(slot.task() - 1);
                for (int before : task.after()) {
                    LocalDate done = ended.get(before);
                    assertThat(done)
                            .as("task %d before %d", before, task.number())
                            .isNotNull();
                    assertThat(day.date())
                            .isAfterOrEqualTo(
                                    done.plusDays(plan.tasks().get(before - 1).waitDays()));
                }
                spent.merge(slot.task(), slot.personHours(), Double::sum);
                if (slot.ends()) {
                    ended.put(slot.task(), day.date());
                }
            }
        }
        assertThat(ended).hasSize(plan.tasks().size());
        for (WorkTask task : plan.tasks()) {
            assertThat(spent.get(task.number())).isCloseTo(task.personHours(), within(1e-6));
        }
    }

    @Test
    void goodsComeBeforeTheyAreNeededAndCoatsDryADay() {
        WorkPlan plan = plan(3, days(0));
        LocalDate cut = firstDay(plan, Kind.CUT);
        assertThat(cut).isAfterOrEqualTo(firstDay(plan, Kind.ORDER).plusDays(5));
        List<LocalDate> coats = plan.days().stream()
                .filter(d -> d.slots().stream()
                        .anyMatch(s -> plan.tasks().get(s.task() - 1).kind() == Kind.BRUSH && s.ends()))
                .map(WorkDay::date)
                .toList();
        assertThat(coats).hasSize(2).doesNotHaveDuplicates();
    }

    private static LocalDate firstDay(WorkPlan plan, Kind kind) {
        return plan.days().stream()
                .filter(d -> d.slots().stream()
                        .anyMatch(s -> plan.tasks().get(s.task() - 1).kind() == kind))
                .findFirst()
                .orElseThrow()
                .date();
    }

    @Test
    void sixtyBoxesAreWorkedInGroups() {
        WorkPlan plan = plan(60, days(2));
        assertThat(plan.tasks().size()).isLessThan(60);
        assertThat(plan.tasks().stream()
                        .filter(t -> t.kind() == Kind.FILL)
                        .mapToInt(t -> t.boxes().size())
                        .sum())
                .isEqualTo(60);
    }

    @Test
    void theFirstPlanterTeachesTheRest() {
        WorkPlan reckoned = plan(4, days(0));
        double first = reckoned.tasks().stream()
                .filter(t -> t.boxes().equals(List.of("F1")) && (t.kind() == Kind.CUT || t.kind() == Kind.BUILD))
                .mapToDouble(WorkTask::personHours)
                .sum();
        double cut = hours(reckoned, Kind.CUT);
        double built = hours(reckoned, Kind.BUILD);
        assertThat(cut + built).isCloseTo(first, within(1e-9));
        WorkPlan taught = plan(
                4,
                days(0),
                SupplyResolver.firstPlanter(GivenFirstPlanter.builder()
                        .cutting(2 * cut)
                        .building(2 * built)
                        .build()));
        assertThat(taught.cutFactor()).isCloseTo(2, within(1e-9));
        assertThat(taught.buildFactor()).isCloseTo(2, within(1e-9));
        double before = hoursOfRest(reckoned);
        assertThat(hoursOfRest(taught)).isCloseTo(2 * before, within(1e-9));
    }

    @Test
    void cuttingAndBuildingAreLearntApart() {
        WorkPlan reckoned = plan(4, days(0));
        WorkPlan taught = plan(
                4,
                days(0),
                SupplyResolver.firstPlanter(GivenFirstPlanter.builder()
                        .cutting(3 * hours(reckoned, Kind.CUT))
                        .build()));
        assertThat(taught.cutFactor()).isCloseTo(3, within(1e-9));
        assertThat(taught.buildFactor()).isEqualTo(1);
    }

    private static double hours(WorkPlan plan, Kind kind) {
        return plan.tasks().stream()
                .filter(t -> t.boxes().equals(List.of("F1")) && t.kind() == kind)
                .mapToDouble(WorkTask::personHours)
                .sum();
    }

    private static double hoursOfRest(WorkPlan plan) {
        return plan.tasks().stream()
                .filter(t -> (t.kind() == Kind.CUT || t.kind() == Kind.BUILD)
                        && !t.boxes().equals(List.of("F1")))
                .mapToDouble(WorkTask::personHours)
                .sum();
    }

    @Test
    void whenItRainsWorkUnderARoofIsNamed() {
        WorkPlan plan = plan(6, days(0));
        assertThat(plan.days())
                .filteredOn(d -> !d.whenItRains().isEmpty())
                .isNotEmpty()
                .allSatisfy(d -> assertThat(d.whenItRains())
                        .allMatch(n -> plan.tasks().get(n - 1).kind().weather() == Weather.ANY));
    }

    @Test
    void withoutAStartThereIsNoCalendarButHours() {
        WorkPlan plan = plan(2, GivenDays.builder().build());
        assertThat(plan.days()).isEmpty();
        assertThat(plan.personHours()).isPositive();
        assertThat(plan.tasks()).anyMatch(WorkTask::critical);
    }
}
