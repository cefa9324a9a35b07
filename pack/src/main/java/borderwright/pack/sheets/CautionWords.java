package borderwright.pack.sheets;

import borderwright.engine.cautions.Caution;
import borderwright.engine.cautions.CautionCode;
import borderwright.engine.cautions.CautionStage;
import borderwright.engine.cautions.StageCautions;
import borderwright.engine.plan.Plan;
import borderwright.pack.figures.PrintedFigures;
import java.util.ArrayList;
import java.util.List;

/** The engine's cautions as sentences, stage by stage. */
public final class CautionWords {
    private final PrintedFigures f;

    private CautionWords(PrintedFigures f) {
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

    static List<Stage> of(Plan plan, PrintedFigures f) {
        CautionWords words = new CautionWords(f);
        return plan.site().cautions().stages().stream()
                .map(stage -> words.stage(stage, plan))
                .toList();
    }

    private Stage stage(StageCautions stage, Plan plan) {
        List<String> sentences = new ArrayList<>();
        if (stage.stage() == CautionStage.LIFTING) {
            sentences.addAll(plan.site().filling().notes());
        }
        stage.cautions().forEach(caution -> sentences.add(sentence(caution)));
        return new Stage(name(stage.stage()), sentences);
    }

    private static String name(CautionStage stage) {
        return switch (stage) {
            case BEFORE -> "Before you start";
            case HARD_GROUND -> "Standing on hard ground";
            case DIGGING -> "Digging";
            case WOOD -> "Wood";
            case SAWING -> "Sawing and fixing";
            case LIFTING -> "Lifting and carrying";
            case AFTER -> "Filling and after";
        };
    }

    private String sentence(Caution caution) {
        return switch (caution.code()) {
            case ENGINEER_FOR_TALL_WALLS ->
                "Walls stand up to "
                        + f.length(caution.found().orElseThrow())
                        + ". Stop and have an engineer look at walls higher than " + f.length(limit(caution))
                        + ", and at any wall that holds back a slope, a drive or a building.";
            case SOIL_BELOW_DAMP_COURSE ->
                "Beside the house keep soil at least " + f.length(limit(caution))
                        + " below the damp-proof course, and air bricks, vents and cladding clear.";
            case SERVICE_NEAR ->
                capital(caution.place().orElseThrow())
                        + caution.found()
                                .map(depth -> ", said to lie " + f.length(depth) + " deep")
                                .orElse(", its depth not known")
                        + ": have it traced, dig by hand near it, drive nothing over it. Others may lie here that nobody"
                        + " stated.";
            case TREE_ROOTS ->
                capital(caution.place().orElseThrow()) + ": leave the ground within "
                        + f.length(limit(caution))
                        + " of its trunk as it is; no digging, no heaps, no barrow runs.";
            case TWO_PEOPLE_LIFT -> "Two people" + lift(caution);
            case ASK_FOR_HELP -> "Ask for help" + lift(caution);
            default -> ground(caution.code());
        };
    }

    private static double limit(Caution caution) {
        return caution.limit().orElseThrow();
    }

    private String lift(Caution caution) {
        return " over " + f.wholeWeight(limit(caution))
                + " or three metres; less when you lift often, twist or reach. A filter, not a safe limit.";
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /** Cautions without a figure, of the site and the ground. */
    private static String ground(CautionCode code) {
        return switch (code) {
            case BOUNDARY_AND_PERMITS ->
                "Ask first who owns the boundary, and whether covenants, protected trees or a limit on raised ground apply. This"
                        + " plan does not know them.";
            case ENGINEER_FOR_RETAINING_WALLS ->
                "Stop and have an engineer look at any wall that holds back a slope, a drive or a building.";
            case FENCE_CARRIES_NO_SOIL -> "A fence carries no soil: every box here has its own back wall and a gap.";
            case ROOF_LOAD_LIMIT ->
                "Roof or balcony: get the load limit in writing from the building's engineer before anything is bought; wet"
                        + " soil, people, snow and wind all count, and so does the edge.";
            case RUN_OFF ->
                "Keep run-off away from doors, air bricks and neighbours; leave the gaps under the boards open.";
            case DIG_ENQUIRY ->
                "Call the dig-enquiry service before the spade goes in. Take every cable and pipe as live; dig trial"
                        + " holes by hand.";
            case FOOTINGS_AND_ROOTS -> "Never dig below the footing of a wall, nor near a tree's main roots.";
            case STRUCK_MAIN -> "Gas or a struck main: leave, keep others away, call from outside.";
            case TAMPER -> "Tamper or plate: boots, ears, gloves, and short turns.";
            default -> wood(code);
        };
    }

    /** Those of wood and saws. */
    private static String wood(CautionCode code) {
        return switch (code) {
            case TREATED_BOARDS ->
                "Treated boards: gloves while wet, a mask for dust, no burning, no composting; wash before you eat. Brush"
                        + " every cut end twice. Do not rip them along.";
            case FOOD_BESIDE_TREATED_WOOD ->
                "Food beside treated wood: advice differs between institutions; ask for the rule of the house and line the"
                        + " box if in doubt.";
            case RECLAIMED_WOOD ->
                "Reclaimed wood that is painted, smells of tar or is of unknown treatment does not go near food, seats or play.";
            case SAW_MANUAL ->
                "The saw's manual comes first. Guard on, eyes and ears covered, a residual-current device outdoors.";
            case ROUGH_BOARDS ->
                "Rough boards rock and pinch: hollow side down, both sides of the cut borne, the cut-off piece never"
                        + " caught against a stop.";
            case FREEHAND_CUTS -> "No freehand cuts on a table saw, no fence as a stop, nothing short without a jig.";
            case NAILER -> "Nailer: hand out of line with the nail, off the air or battery before you clear it.";
            case SCREW_POINTS -> "No points or ends of screws left standing out.";
            default -> after(code);
        };
    }

    /** Those of lifting, and of what comes after. */
    private static String after(CautionCode code) {
        return switch (code) {
            case PROP_WALLS -> "Stay unbraced walls until their ties are in; nobody under a lifted board.";
            case ON_THE_ROAD ->
                "On the road: the car's load limit, two straps, and what sticks out marked as the law there says.";
            case TIES_BEFORE_SOIL -> "Ties first, then soil, both sides evenly, no jumping on it.";
            case BAGS_AND_DUST -> "Open bags of soil and compost away from your face, damp the dust, wash your hands.";
            case FINISH_RAGS ->
                "Finish: air the room, keep it off the soil, lay oily rags flat to dry outdoors: heaped they can catch fire.";
            case YEARLY_LOOK -> "Once a year: measure the bulge, probe for rot, look at screws and capping.";
            default -> throw new IllegalArgumentException("no sentence for the caution " + code);
        };
    }
}
