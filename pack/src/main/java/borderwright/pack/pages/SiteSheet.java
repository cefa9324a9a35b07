package borderwright.pack.pages;

import borderwright.engine.filling.BoxWeight;
import borderwright.engine.filling.LinerPlan;
import borderwright.engine.filling.SoilVolume;
import borderwright.engine.floors.FloorOption;
import borderwright.engine.ground.BoxGround;
import borderwright.engine.ground.SheetPlan;
import borderwright.engine.ground.SiteClearance;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.plan.Plan;
import borderwright.engine.planting.CropFit;
import borderwright.engine.planting.PlantingPlan;
import borderwright.engine.sequence.WorkDay;
import borderwright.engine.sequence.WorkTask;
import borderwright.engine.settingout.PegList;
import borderwright.pack.paper.Drawing;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A sheet of what is done to the site besides wood. */
public interface SiteSheet extends Sheet.Site {

    /**
     * What is dug and laid.
     *
     * @param plan the plan
     * @param pegs for the pegs' numbers
     * @param section the bed cut through
     */
    record GroundSheet(Plan plan, PegList pegs, Drawing section) implements SiteSheet {
        @Override
        public String title() {
            return "Ground sheet";
        }

        /** Boxes whose ground reads the same. */
        public List<Alike<BoxGround>> boxes(PrintedFigures f) {
            return Alike.group(
                    plan.site().ground().boxes(),
                    BoxGround::box,
                    b -> f.lengths().area(b.areaM2())
                            + f.roughVolume(b.dugM3())
                            + f.roughVolume(b.gravelM3())
                            + f.length(b.dugToMm())
                            + f.length(b.bedMm()));
        }

        /** Boxes whose corners read the same. */
        public List<Alike<BoxGround>> corners(PrintedFigures f) {
            return Alike.group(plan.site().ground().boxes(), BoxGround::box, b -> corners(f, b));
        }

        private static String corners(PrintedFigures f, BoxGround box) {
            StringBuilder out = new StringBuilder();
            box.corners().forEach(c -> out.append('|').append(f.dig(c.cutMm())).append(f.dig(c.fillMm())));
            return out.toString();
        }

        /** What planters keep clear of, those that read the same in one row. */
        public List<Alike<SiteClearance>> clearances(PrintedFigures f) {
            return Alike.group(
                    plan.site().ground().clearances(),
                    SiteClearance::box,
                    c -> c.what()
                            + '|'
                            + c.from()
                            + '|'
                            + f.length(c.wantedMm())
                            + '|'
                            + f.length(c.gotMm())
                            + '|'
                            + c.verdict());
        }

        /** A verdict in words. */
        public static String said(SiteClearance.Verdict verdict) {
            return switch (verdict) {
                case HOLDS -> "holds";
                case DOES_NOT_HOLD -> "does not hold";
                case NOT_SHOWN -> "not shown to hold";
            };
        }

        /** Number of the peg at a box's first corner. */
        public int firstPeg(String box) {
            return pegs.pegs().stream()
                    .filter(p -> p.box().equals(box))
                    .mapToInt(PegList.Peg::number)
                    .findFirst()
                    .orElseThrow();
        }

        /** Boxes whose sides stand alike in the ground. */
        public List<Alike<BoxGround>> sides(PrintedFigures f) {
            return Alike.group(plan.site().ground().boxes(), BoxGround::box, b -> {
                StringBuilder out = new StringBuilder();
                b.sides()
                        .forEach(s -> out.append(f.roughLength(s.shownLeastMm()))
                                .append(f.roughLength(s.shownMostMm()))
                                .append(s.buried())
                                .append(s.partBuried())
                                .append('|'));
                return out.toString();
            });
        }

        /** How much wall shows at the highest and at the lowest ground before each side; said once where all are alike. */
        public String shown(BoxGround box, PrintedFigures f) {
            List<String> sides = box.sides().stream()
                    .map(s -> range(f.roughLength(s.shownLeastMm()), f.roughLength(s.shownMostMm())))
                    .toList();
            return perSide(sides);
        }

        /** Courses in the ground; empty where none is. */
        public String courses(BoxGround box) {
            List<String> sides = box.sides().stream()
                    .map(s -> s.buried() + s.partBuried() == 0
                            ? "none"
                            : (s.buried() > 0 ? s.buried() + " buried" : "")
                                    + (s.buried() > 0 && s.partBuried() > 0 ? ", " : "")
                                    + (s.partBuried() > 0 ? s.partBuried() + " partly" : ""))
                    .toList();
            return perSide(sides);
        }

        private static String range(String least, String most) {
            return least.equals(most) ? least : least + " to " + most;
        }

        private static String perSide(List<String> sides) {
            if (sides.stream().distinct().count() == 1) {
                return "every side: " + sides.get(0);
            }
            List<String> said = new ArrayList<>();
            for (int i = 0; i < sides.size(); i++) {
                said.add("side " + (char) ('a' + i) + ": " + sides.get(i));
            }
            return String.join("; ", said);
        }

        /** Strips of the membrane that are alike, box by box. */
        public List<Alike<SheetPlan.Strip>> strips(PrintedFigures f) {
            return Alike.group(
                    plan.site().ground().sheet().orElseThrow().strips(),
                    s -> s.box() + ", roll " + s.roll(),
                    s -> f.length(s.lengthMm()) + f.length(s.widthMm()));
        }
    }

    /**
     * What goes into the boxes and onto them.
     *
     * @param plan the plan
     */
    record FillSheet(Plan plan) implements SiteSheet {
        /** One kg/m2, exact: 0.3048 squared over 0.45359237. */
        private static final double LB_PER_SQ_FT = 0.204816143622;

        @Override
        public String title() {
            return "Fill sheet";
        }

        /** What does not hold or cannot be met with another floor, beyond what is so with the floor as wished. */
        public List<String> floorTrouble(FloorOption row) {
            List<String> already = plan.site().platforms().stream()
                    .filter(FloorOption::asWished)
                    .flatMap(own -> own.unmet().stream())
                    .toList();
            return row.unmet().stream().filter(s -> !already.contains(s)).toList();
        }

        /** Planters that take the same. */
        public List<Alike<SoilVolume>> planters(PrintedFigures f) {
            return Alike.group(
                    plan.site().filling().planters(),
                    SoilVolume::planter,
                    p -> f.length(p.depthMm())
                            + f.lengths().area(p.growingM2())
                            + f.roughVolume(p.filledM3())
                            + f.roughVolume(p.orderedM3()));
        }

        /** What a filled, soaked box lays on the ground under it, to 10 kg/m2 or a pound a square foot. */
        public String load(BoxWeight weight, PrintedFigures f) {
            return f.units() == UnitSystem.IMPERIAL
                    ? f.decimal(weight.kgPerM2() * LB_PER_SQ_FT, 0) + " lb/sq ft"
                    : f.decimal(weight.kgPerM2() / 10, 0) + "0 kg/m2";
        }

        /** Boxes that weigh the same. */
        public List<Alike<BoxWeight>> weights(PrintedFigures f) {
            return Alike.group(
                    plan.site().filling().weights(),
                    BoxWeight::box,
                    w -> f.lengths().weight(w.woodKg())
                            + f.roughWeight(w.filledKg())
                            + w.carriers()
                            + f.lengths().weight(w.heaviestKg()));
        }

        /** Strips of the liner that are alike. */
        public List<Alike<LinerPlan.Strip>> strips(PrintedFigures f) {
            return Alike.group(
                    plan.site().filling().liner().orElseThrow().strips(),
                    LinerPlan.Strip::planter,
                    s -> f.length(s.lengthMm()) + f.length(s.widthMm()));
        }
    }

    /**
     * What can grow where.
     *
     * @param plan the plan
     */
    record PlantingSheet(Plan plan) implements SiteSheet {
        @Override
        public String title() {
            return "Planting sheet";
        }

        public String names(PlantingPlan.Depth depth) {
            return Alike.said(depth.planters());
        }

        public String month(int month) {
            return Month.of(month).getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
        }

        /** What a planter of that depth is for a crop, in words. */
        public String verdict(CropFit fit) {
            return switch (fit.verdict()) {
                case ROOMY -> "room as in open ground";
                case ENOUGH -> "enough, watered often";
                case TOO_SHALLOW -> "too shallow";
            };
        }

        /** A watering in litres for each square metre; with imperial units as a depth of rain. */
        public String water(CropFit fit, PrintedFigures f) {
            return f.units() == UnitSystem.IMPERIAL
                    ? f.length(fit.watering().readyMm()) + " of rain"
                    : f.decimal(fit.watering().readyMm(), 0) + " litres/m2";
        }

        /** Planters with the same hours of sun. */
        public List<Alike<PlantingPlan.Sun>> sun(PrintedFigures f) {
            return Alike.group(plan.site().planting().sun(), PlantingPlan.Sun::planter, s -> {
                StringBuilder out = new StringBuilder(f.decimal(s.meanHours(), 1));
                s.months().forEach(m -> out.append('|').append(f.decimal(m.hours(), 1)));
                return out.toString();
            });
        }

        /** Boxes with the same rim. */
        public List<Alike<PlantingPlan.Rim>> rims(PrintedFigures f) {
            return Alike.group(
                    plan.site().planting().rims(),
                    PlantingPlan.Rim::box,
                    r -> f.roughLength(r.leastMm()) + f.roughLength(r.mostMm()) + r.suits());
        }
    }

    /**
     * Tasks and days.
     *
     * @param plan the plan
     */
    record WorkSheet(Plan plan) implements SiteSheet {
        @Override
        public String title() {
            return "Build sequence";
        }

        /** Slots that are worth a line: less than three minutes is a crumb of rounding. */
        public List<WorkDay.Slot> slots(WorkDay day) {
            return day.slots().stream()
                    .filter(slot -> slot.personHours() >= 0.05 || slot.ends())
                    .toList();
        }

        public WorkTask task(int number) {
            return plan.work().tasks().get(number - 1);
        }

        /** Numbers of the tasks that one waits for. */
        public String after(WorkTask task) {
            return task.after().stream().map(String::valueOf).collect(Collectors.joining(", "));
        }

        /** A day's name and date. */
        public String day(WorkDay day) {
            return day.date().getDayOfWeek().getDisplayName(TextStyle.SHORT, Locale.ENGLISH) + " " + day.date();
        }

        /** What can be done under a roof that day; else that the day moves. */
        public String rain(WorkDay day) {
            boolean outdoors = day.slots().stream()
                    .anyMatch(slot -> task(slot.task()).kind().weather() != WorkTask.Weather.ANY);
            if (!outdoors) {
                return "";
            }
            return day.whenItRains().isEmpty()
                    ? "move the day on"
                    : day.whenItRains().stream()
                            .map(number -> number + ". " + task(number).what())
                            .collect(Collectors.joining("; "));
        }
    }

    /**
     * Every planter with boxes to tick, for the wall of the workshop.
     *
     * @param plan the plan
     */
    record WallChart(Plan plan) implements SiteSheet {
        @Override
        public String title() {
            return "Wall chart";
        }

        /** The steps that each planter goes through. */
        public List<String> steps() {
            List<String> steps = new ArrayList<>();
            boolean hard = plan.garden().groundOrHabit().surfaceOrHabit().isHard();
            steps.add("pegs");
            steps.add(hard ? "feet" : "dug");
            if (!hard && plan.site().ground().gravelM3() > 0) {
                steps.add("gravel");
            }
            steps.add("cut");
            if (plan.site().filling().finish().coats() > 0) {
                steps.add("brushed");
            }
            steps.add("gaps measured");
            steps.add("built");
            steps.add("ties in");
            if (plan.site().filling().liner().isPresent()) {
                steps.add("lined");
            }
            steps.add("filled");
            steps.add("planted");
            return steps;
        }
    }

    /**
     * Cautions for this garden, stage by stage.
     *
     * @param stages in the order of the job
     */
    record CautionSheet(List<CautionNotes.Stage> stages) implements SiteSheet {
        public CautionSheet {
            stages = List.copyOf(stages);
        }

        @Override
        public String title() {
            return "Cautions by stage";
        }
    }

    /**
     * Labels to cut out.
     *
     * @param pages full of labels
     */
    record LabelSheet(List<Drawing> pages) implements SiteSheet {
        public LabelSheet {
            pages = List.copyOf(pages);
        }

        @Override
        public String title() {
            return "Labels to cut out";
        }
    }
}
