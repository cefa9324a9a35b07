package borderwright.engine.sequence;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.filling.FillPlan;
import borderwright.engine.filling.FinishPlan;
import borderwright.engine.garden.FirstPlanter;
import borderwright.engine.garden.Garden;
import borderwright.engine.garden.WorkSpec;
import borderwright.engine.ground.GroundPlan;
import borderwright.engine.ground.GroundPlan.CornerMark;
import borderwright.engine.message.Message;
import borderwright.engine.sequence.SequenceMessage.Gaps;
import borderwright.engine.sequence.SequenceMessage.Part;
import borderwright.engine.sequence.WorkTask.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** From a plan to days of work: the one question that this stage answers. */
public final class BuildSequence {
    /** More boxes than these are worked in groups. */
    private static final int MOST_SINGLE = 12;

    /** So many groups that their tasks stand on one page. */
    private static final int GROUPS = 6;

    private static final double ORDER_HOURS = 1;
    private static final double MINUTES = 60;

    private final WorkSpec spec;
    private final List<BoxHours> hours = new ArrayList<>();
    private final TaskList tasks;
    private final Prototype prototype;
    private final Optional<FirstPlanter> taught;
    private final FinishPlan finish;
    private final int setUps;
    private final int skips;
    private final CornerMark mark;
    private final Gaps gaps;

    private BuildSequence(Garden garden, List<Box> boxes, GroundPlan ground, FillPlan filling, CuttingPlan cutting) {
        this.spec = garden.work();
        this.taught = garden.firstPlanter();
        this.prototype = Prototype.of(boxes);
        this.mark = CornerMark.on(garden.ground().surface());
        this.gaps = cutting.waiting().isEmpty() ? Gaps.AS_PLANNED : Gaps.MEASURED_AGAIN;
        this.tasks = new TaskList(boxes.size());
        this.finish = filling.finish();
        this.setUps = cutting.setUps().size();
        this.skips = ground.spoil().skips();
        for (int i = 0; i < boxes.size(); i++) {
            hours.add(BoxHours.of(boxes.get(i), ground.boxes().get(i), filling, garden.ground(), spec.pace()));
        }
    }

    /**
     * The work of a garden.
     *
     * @param garden its days, pace and ground
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
        double setUpHours = setUps * spec.pace().setUpMinutes() / MINUTES;
        Factors factors = Factors.of(taught, first, setUpHours);
        write(first, setUpHours, factors);
        CriticalPath path = tasks.times(spec.people(), spec.hours());
        List<WorkTask> all = tasks.tasks(path);
        List<Message> notes = new ArrayList<>();
        List<WorkDay> days = List.of();
        if (spec.start().isPresent()) {
            CalendarMaker maker = new CalendarMaker(all, path.times(), spec);
            days = maker.from(spec.start().get());
            if (!maker.allDone()) {
                notes.add(SequenceMessage.WORK_DOES_NOT_END.of());
            }
        }
        return new WorkPlan(all, days, spec.people(), path.duration(), factors.cutting, factors.building, notes);
    }

    /** What the first planter took against what was predicted for it; 1 where it was not timed. */
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
        int order =
                tasks.add(Kind.ORDER, List.of(), SequenceMessage.ORDER_GOODS.of(), ORDER_HOURS, spec.deliveryDays());
        List<Integer> beds = beds(order);
        int built = first(first, setUpHours, factors, order, beds.get(prototype.box()));
        List<BoxHours> rest = rest();
        int ready = brush(cut(rest, setUpHours, factors.cutting, built));
        after(rest, factors.building, built, ready, beds, order);
    }

    /** Sets out, digs and lays the beds: the last task of each box. */
    private List<Integer> beds(int order) {
        int pegs = tasks.add(
                Kind.SET_OUT, List.of(), SequenceMessage.SET_OUT_CORNERS.of(mark), sum(hours, Kind.SET_OUT), 0);
        int skip = skips > 0 ? order : 0;
        List<Integer> beds = new ArrayList<>();
        for (List<BoxHours> group : groups()) {
            List<String> names = names(group);
            Message dig = SequenceMessage.DIG_FOR_BOXES.of(inShort(names));
            int dug = tasks.addIfWork(pegs, Kind.DIG, names, dig, sum(group, Kind.DIG), pegs, skip);
            Message lay = SequenceMessage.BED_BOXES.of(mark, inShort(names));
            int bed = tasks.addIfWork(dug, Kind.BED, names, lay, sum(group, Kind.BED), dug, order);
            group.forEach(box -> beds.add(bed));
        }
        return beds;
    }

    /** Cuts and builds the first box, or its first bay, by itself. */
    private int first(BoxHours first, double setUpHours, Factors factors, int order, int bed) {
        List<String> one = List.of(first.box());
        Part part = prototype.share() < 1 ? Part.BAY : Part.WHOLE;
        int cut = tasks.add(
                Kind.CUT,
                one,
                SequenceMessage.CUT_FIRST.of(part, prototype.name()),
                (first.cut() + setUpHours) * factors.cutting,
                0,
                order);
        return tasks.add(
                Kind.BUILD,
                one,
                SequenceMessage.BUILD_FIRST.of(part, prototype.name()),
                first.build() * factors.building,
                0,
                cut,
                bed);
    }

    private int cut(List<BoxHours> rest, double setUpHours, double factor, int built) {
        double hoursOfRest = sum(rest, Kind.CUT);
        return hoursOfRest <= 0
                ? built
                : tasks.add(
                        Kind.CUT,
                        names(rest.stream().filter(box -> box.cut() > 0).toList()),
                        SequenceMessage.CUT_REST.of(gaps),
                        (hoursOfRest + setUpHours) * factor,
                        0,
                        built);
    }

    /** Coat after coat, a day apart. */
    private int brush(int ready) {
        int last = ready;
        for (int coat = 1; coat <= finish.coats(); coat++) {
            last = tasks.add(
                    Kind.BRUSH,
                    List.of(),
                    SequenceMessage.BRUSH_COAT.of(coat, finish.coats()),
                    finish.outerM2() / spec.pace().brushM2AnHour(),
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
            List<BoxHours> still = rest.subList(at, at + group.size()).stream()
                    .filter(box -> box.build() > 0)
                    .toList();
            int stands = tasks.addIfWork(
                    previous,
                    Kind.BUILD,
                    names(still),
                    SequenceMessage.BUILD_BOXES.of(partly(still) ? Part.REST : Part.WHOLE, inShort(names(still)), gaps),
                    sum(still, Kind.BUILD) * factor,
                    previous,
                    ready,
                    beds.get(at));
            filled.add(fill(group, stands, ready, order));
            // Boxes that wait for no gap stand by themselves: many hands build them side by side.
            previous = gaps == Gaps.MEASURED_AGAIN ? stands : built;
            at += group.size();
        }
        tasks.add(
                Kind.PLANT,
                List.of(),
                SequenceMessage.PLANT_AND_WATER.of(),
                sum(hours, Kind.PLANT),
                0,
                filled.stream().mapToInt(Integer::intValue).toArray());
    }

    private int fill(List<BoxHours> group, int stands, int ready, int order) {
        List<String> names = names(group);
        Message line = SequenceMessage.LINE_BOXES.of(inShort(names));
        int lined = tasks.addIfWork(stands, Kind.LINE, names, line, sum(group, Kind.LINE), stands);
        Message fill = SequenceMessage.FILL_BOXES.of(inShort(names));
        // A coat on the first box, that was built before it, dries before soil splashes it.
        return tasks.addIfWork(lined, Kind.FILL, names, fill, sum(group, Kind.FILL), lined, order, ready);
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

    private static double sum(List<BoxHours> boxes, Kind kind) {
        return boxes.stream().mapToDouble(box -> box.of(kind)).sum();
    }

    private static List<String> names(List<BoxHours> boxes) {
        return boxes.stream().map(BoxHours::box).toList();
    }

    private static Message inShort(List<String> names) {
        return names.size() <= 2
                ? SequenceMessage.BOXES_NAMED.of(names)
                : SequenceMessage.BOXES_FROM_TO.of(names.get(0), names.get(names.size() - 1));
    }
}
