package borderwright.pack.pages;

import borderwright.engine.garden.NearbyThing;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.garden.vocabulary.GroundSurface;
import borderwright.engine.garden.vocabulary.NearbyKind;
import borderwright.engine.plan.Plan;
import borderwright.pack.figures.PrintedFigures;
import java.util.ArrayList;
import java.util.List;

/**
 * The usual cautions, stage by stage, those that this garden gives cause for. They are common practice; local codes and licensed
 * people decide, and each tool's own manual comes first.
 */
public final class CautionNotes {
    /** Walls higher than these, free-standing or beside a path, are for an engineer to look at (habit; local rules differ). */
    private static final double TALL_MM = 600;

    private static final double HEAVY_KG = 25;

    private final Plan plan;
    private final PrintedFigures f;
    private final List<Stage> stages = new ArrayList<>();

    private CautionNotes(Plan plan, PrintedFigures f) {
        this.plan = plan;
        this.f = f;
    }

    /**
     * A stage of the job.
     *
     * @param name in words
     * @param sentences its cautions
     */
    public record Stage(String name, List<String> sentences) {
        public Stage {
            sentences = List.copyOf(sentences);
        }
    }

    public static List<Stage> of(Plan plan, PrintedFigures f) {
        CautionNotes cautions = new CautionNotes(plan, f);
        cautions.before();
        cautions.digging();
        cautions.wood();
        cautions.sawing();
        cautions.lifting();
        cautions.after();
        return List.copyOf(cautions.stages);
    }

    private void before() {
        List<String> said = new ArrayList<>();
        said.add(
                "Ask first who owns the boundary, and whether covenants, protected trees or a limit on raised ground apply. This"
                        + " plan does not know them.");
        double tallest = plan.boxes().stream()
                .mapToDouble(b -> b.plan().heightMm())
                .max()
                .orElse(0);
        if (tallest > TALL_MM) {
            said.add("Walls stand up to " + f.length(tallest)
                    + ". Stop and have an engineer look at walls higher than " + f.length(TALL_MM)
                    + ", and at any wall that holds back a slope, a drive or a building.");
        } else {
            said.add("Stop and have an engineer look at any wall that holds back a slope, a drive or a building.");
        }
        if (faces(EdgeKind.HOUSE)) {
            said.add("Beside the house keep soil at least " + f.length(150)
                    + " below the damp-proof course, and air bricks, vents and cladding clear.");
        }
        if (faces(EdgeKind.FENCE)) {
            said.add("A fence carries no soil: every box here has its own back wall and a gap.");
        }
        if (surface() == GroundSurface.ROOF) {
            said.add(
                    "Roof or balcony: get the load limit in writing from the building's engineer before anything is bought; wet"
                            + " soil, people, snow and wind all count, and so does the edge.");
        }
        add("Before you start", said);
    }

    private void digging() {
        if (surface().isHard()) {
            add(
                    "Standing on hard ground",
                    List.of(
                            "Keep run-off away from doors, air bricks and neighbours; leave the gaps under the boards open."));
            return;
        }
        List<String> said = new ArrayList<>();
        said.add("Call the dig-enquiry service before the spade goes in. Take every cable and pipe as live; dig trial"
                + " holes by hand.");
        plan.garden().ground().near().forEach(thing -> near(thing, said));
        said.add("Never dig below the footing of a wall, nor near a tree's main roots.");
        said.add("Gas or a struck main: leave, keep others away, call from outside.");
        said.add("Tamper or plate: boots, ears, gloves, and short turns.");
        add("Digging", said);
    }

    /** What was said to lie here; others may lie here too. */
    private void near(NearbyThing thing, List<String> said) {
        String words = thing.what().inWords() + " at " + thing.edge();
        String name = Character.toUpperCase(words.charAt(0)) + words.substring(1);
        if (thing.what().isService()) {
            said.add(name
                    + (thing.depth() == null
                            ? ", its depth not known"
                            : ", said to lie " + f.length(thing.depth().mm()) + " deep")
                    + ": have it traced, dig by hand near it, drive nothing over it. Others may lie here that nobody"
                    + " stated.");
        } else if (thing.what() == NearbyKind.TREE) {
            said.add(name + ": leave the ground within " + f.length(thing.rootsMm())
                    + " of its trunk as it is; no digging, no heaps, no barrow runs.");
        }
    }

    private void wood() {
        boolean treated = plan.garden().sections().stream().anyMatch(SectionSpec::isTreated);
        List<String> said = new ArrayList<>();
        if (treated) {
            said.add(
                    "Treated boards: gloves while wet, a mask for dust, no burning, no composting; wash before you eat. Brush"
                            + " every cut end twice. Do not rip them along.");
            said.add(
                    "Food beside treated wood: advice differs between institutions; ask for the rule of the house and line the"
                            + " box if in doubt.");
        }
        said.add(
                "Reclaimed wood that is painted, smells of tar or is of unknown treatment does not go near food, seats or play.");
        add("Wood", said);
    }

    private void sawing() {
        add(
                "Sawing and fixing",
                List.of(
                        "The saw's manual comes first. Guard on, eyes and ears covered, a residual-current device outdoors.",
                        "Rough boards rock and pinch: hollow side down, both sides of the cut borne, the cut-off piece never"
                                + " caught against a stop.",
                        "No freehand cuts on a table saw, no fence as a stop, nothing short without a jig.",
                        "Nailer: hand out of line with the nail, off the air or battery before you clear it.",
                        "No points or ends of screws left standing out."));
    }

    private void lifting() {
        List<String> said = new ArrayList<>();
        plan.site().filling().notes().forEach(said::add);
        double heaviest = plan.site().filling().weights().stream()
                .mapToDouble(w -> w.heaviestKg())
                .max()
                .orElse(0);
        said.add((heaviest > HEAVY_KG ? "Two people" : "Ask for help") + " over "
                + f.wholeWeight(HEAVY_KG)
                + " or three metres; less when you lift often, twist or reach. A filter, not a safe limit.");
        said.add("Stay unbraced walls until their ties are in; nobody under a lifted board.");
        said.add("On the road: the car's load limit, two straps, and what sticks out marked as the law there says.");
        add("Lifting and carrying", said);
    }

    private void after() {
        List<String> said = new ArrayList<>();
        said.add("Ties first, then soil, both sides evenly, no jumping on it.");
        said.add("Open bags of soil and compost away from your face, damp the dust, wash your hands.");
        if (plan.site().filling().finish().coats() > 0) {
            said.add(
                    "Finish: air the room, keep it off the soil, lay oily rags flat to dry outdoors: heaped they can catch fire.");
        }
        said.add("Once a year: measure the bow, probe for rot, look at screws and capping.");
        add("Filling and after", said);
    }

    private GroundSurface surface() {
        return plan.garden().ground().surface();
    }

    private boolean faces(EdgeKind kind) {
        return plan.outline().edges().stream().anyMatch(e -> e.kind() == kind);
    }

    private void add(String name, List<String> sentences) {
        stages.add(new Stage(name, sentences));
    }
}
