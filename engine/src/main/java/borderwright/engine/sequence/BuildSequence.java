package borderwright.engine.sequence;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.filling.FillPlan;
import borderwright.engine.filling.FinishPlan;
import borderwright.engine.garden.FirstPlanter;
import borderwright.engine.garden.Garden;
import borderwright.engine.garden.WorkSpec;
import borderwright.engine.ground.GroundPlan;
import borderwright.engine.sequence.WorkTask.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** From a plan to days of work: the one question that this stage answers. */
public final class BuildSequence {
    /** More boxes than these are worked in groups. */
    private static final int MOST_SINGLE = 12;

    /** So many groups that their tasks stand on one page. */
    private static final int GROUPS = 6;

    private static final double ORDER_HOURS = 1;
    private static final double MINUTES = 60;

    private final WorkSpec wish;
    private final List<BoxHours> hours = new ArrayList<>();
    private final TaskList tasks;
    private final Prototype prototype;
    private final Optional<FirstPlanter> taught;
    private final FinishPlan finish;
    private final int setUps;
    private final boolean waits;

    private BuildSequence(Garden garden, List<Box> boxes, GroundPlan ground, FillPlan filling, CuttingPlan cutting) {
        this.wish = garden.work();
        this.taught = garden.firstPlanter();
        this.prototype = Prototype.of(boxes);
        this.waits = !cutting.waiting().isEmpty();
        this.tasks = new TaskList(boxes.size());
        this.finish = filling.finish();
        this.setUps = cutting.setUps().size();
        for (int i = 0; i < boxes.size(); i++) {
            hours.add(BoxHours.of(boxes.get(i), ground.boxes().get(i), filling, garden.ground(), wish.pace()));
        }
    }

    /**
     * The work of a garden.
     *
     * @param garden what was said of days, pace and ground
     * @param boxes as built up, at least one
     * @param ground made ready for the same boxes
     * @param filling what fills them
     * @param cutting for its saw set-ups
     */
    public static WorkPlan plan(
            Garden garden, List<Box> boxes, GroundPlan ground, FillPlan filling, CuttingPlan cutting) {
        return new BuildSequence(garden, boxes, ground, filling, cutting).plan();
    }

    private WorkPlan plan() {
        BoxHours first = hours.get(prototype.box()).withShare(prototype.share());
        double setUpHours = setUps * wish.pace().setUpMinutes() / MINUTES;
        Factors factors = Factors.of(taught, first, setUpHours);
        write(first, setUpHours, factors);
        CriticalPath path = tasks.times(wish.people(), wish.hours());
        List<WorkTask> all = tasks.tasks(path);
        List<String> notes = new ArrayList<>();
        List<WorkDay> days = List.of();
        if (wish.start().isPresent()) {
            CalendarMaker maker = new CalendarMaker(all, path.times(), wish);
            days = maker.from(wish.start().get());
            if (!maker.allDone()) {
                notes.add(
                        "The work does not end within four years of the start: say more free days, hours or helpers.");
            }
        }
        return new WorkPlan(all, days, wish.people(), path.duration(), factors.cutting, factors.building, notes);
    }

    /** What the first planter took against what was reckoned for it; 1 where it was not timed. */
    private record Factors(double cutting, double building) {
        static Factors of(Optional<FirstPlanter> taught, BoxHours first, double setUpHours) {
            OptionalDouble cutting = taught.map(FirstPlanter::cuttingHours).orElse(OptionalDouble.empty());
            OptionalDouble building = taught.map(FirstPlanter::buildingHours).orElse(OptionalDouble.empty());
            return new Factors(
                    cutting.isPresent() ? cutting.getAsDouble() / (first.cut() + setUpHours) : 1,
                    building.isPresent() ? building.getAsDouble() / first.build() : 1);
        }
    }

    /** All boxes, without the cutting and building that the prototype takes of its own. */
    private List<BoxHours> rest() {
        List<BoxHours> rest = new ArrayList<>(hours);
        BoxHours own = hours.get(prototype.box());
        rest.set(prototype.box(), own.withShare(1 - prototype.share()));
        return rest;
    }

    private void write(BoxHours first, double setUpHours, Factors factors) {
        List<BoxHours> rest = rest();
        int order = tasks.add(
                Kind.ORDER, List.of(), "Order boards, fixings, gravel and soil", ORDER_HOURS, wish.deliveryDays());
        int pegs = tasks.add(Kind.PEGS, List.of(), "Set out and drive all pegs", sum(hours, BoxHours::pegs), 0);
        List<Integer> beds = new ArrayList<>();
        for (List<BoxHours> group : groups()) {
            List<String> names = names(group);
            int dug = tasks.addIfWork(
                    pegs, Kind.DIG, names, "Strip, dig and level for " + said(names), sum(group, BoxHours::dig), pegs);
            int bed = tasks.addIfWork(
                    dug, Kind.BED, names, "Lay the bed of " + said(names), sum(group, BoxHours::bed), dug, order);
            group.forEach(box -> beds.add(bed));
        }
        List<String> one = List.of(first.box());
        String alone =
                prototype.share() < 1 ? "the first bay, " + prototype.name() : "the first box, " + prototype.name();
        int cut = tasks.add(
                Kind.CUT,
                one,
                "Cut " + alone + ", and time it",
                (first.cut() + setUpHours) * factors.cutting,
                0,
                order);
        int built = tasks.add(
                Kind.BUILD,
                one,
                "Build " + alone + ": measure kerf, bulge, waste and minutes",
                first.build() * factors.building,
                0,
                cut,
                beds.get(prototype.box()));
        double cutRest = sum(rest, BoxHours::cut);
        int ready = cutRest <= 0
                ? built
                : tasks.add(
                        Kind.CUT,
                        names(rest.stream().filter(box -> box.cut() > 0).toList()),
                        "Cut the rest, set-up by set-up" + (waits ? ", what waits for its gap left out" : ""),
                        (cutRest + setUpHours) * factors.cutting,
                        0,
                        built);
        ready = brush(ready);
        after(rest, factors.building, built, ready, beds, order);
    }

    /** Coat after coat, a day apart. */
    private int brush(int ready) {
        int last = ready;
        for (int coat = 1; coat <= finish.coats(); coat++) {
            last = tasks.add(
                    Kind.BRUSH,
                    List.of(),
                    "Brush on coat " + coat + " of " + finish.coats() + " of the finish",
                    finish.outerM2() / wish.pace().brushM2AnHour(),
                    1,
                    last);
        }
        return last;
    }

    private void after(List<BoxHours> rest, double factor, int built, int ready, List<Integer> beds, int order) {
        int previous = built;
        List<Integer> filled = new ArrayList<>();
        int at = 0;
        for (List<BoxHours> group : groups()) {
            List<String> names = names(group);
            List<BoxHours> still = rest.subList(at, at + group.size()).stream()
                    .filter(box -> box.build() > 0)
                    .toList();
            int stands = tasks.addIfWork(
                    previous,
                    Kind.BUILD,
                    names(still),
                    "Build " + (partly(still) ? "the rest of " : "") + said(names(still))
                            + (waits ? ", re-measuring each gap first" : ""),
                    sum(still, BoxHours::build) * factor,
                    previous,
                    ready,
                    beds.get(at));
            int lined = tasks.addIfWork(
                    stands, Kind.LINE, names, "Line " + said(names), sum(group, BoxHours::line), stands);
            filled.add(tasks.addIfWork(
                    lined,
                    Kind.FILL,
                    names,
                    "Fill " + said(names) + ", both sides evenly",
                    sum(group, BoxHours::fill),
                    lined,
                    order,
                    // A coat on the first box, that was built before it, dries before soil splashes it.
                    ready));
            // Boxes that wait for no gap stand by themselves: many hands build them side by side.
            previous = waits ? stands : built;
            at += group.size();
        }
        tasks.add(
                Kind.PLANT,
                List.of(),
                "Plant and water in",
                sum(hours, BoxHours::plant),
                0,
                filled.stream().mapToInt(Integer::intValue).toArray());
    }

    /** Whether these are one box of which the prototype is a part. */
    private boolean partly(List<BoxHours> still) {
        return prototype.share() < 1
                && still.size() == 1
                && still.get(0).box().equals(hours.get(prototype.box()).box());
    }

    private List<List<BoxHours>> groups() {
        int size = hours.size() <= MOST_SINGLE ? 1 : (hours.size() + GROUPS - 1) / GROUPS;
        List<List<BoxHours>> groups = new ArrayList<>();
        for (int i = 0; i < hours.size(); i += size) {
            groups.add(hours.subList(i, Math.min(hours.size(), i + size)));
        }
        return groups;
    }

    private static double sum(List<BoxHours> boxes, ToDoubleFunction<BoxHours> hours) {
        return boxes.stream().mapToDouble(hours).sum();
    }

    private static List<String> names(List<BoxHours> boxes) {
        return boxes.stream().map(BoxHours::box).toList();
    }

    private static String said(List<String> names) {
        return switch (names.size()) {
            case 0 -> "";
            case 1 -> names.get(0);
            case 2 -> names.get(0) + " and " + names.get(1);
            default -> String.format(Locale.ROOT, "%s to %s", names.get(0), names.get(names.size() - 1));
        };
    }
}
