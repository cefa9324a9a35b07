package borderwright.engine.cautions;

import static borderwright.engine.cautions.CautionCode.*;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.filling.BoxWeight;
import borderwright.engine.filling.FillPlan;
import borderwright.engine.filling.Filling;
import borderwright.engine.filling.Weights;
import borderwright.engine.garden.Garden;
import borderwright.engine.garden.NearbyThing;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.garden.vocabulary.NearbyKind;
import borderwright.engine.garden.vocabulary.ground.GroundSurface;
import borderwright.engine.ground.GroundWork;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.survey.Outline;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Finds the cautions that a garden gives cause for. */
public final class CautionFinder {
    /** Higher walls are for an engineer to look at, mm (common practice, no source; local rules differ). */
    public static final double ENGINEER_WALL_MM = 600;

    private final Garden garden;
    private final Outline outline;
    private final List<Box> boxes;
    private final FillPlan filling;

    private CautionFinder(Garden garden, Outline outline, List<Box> boxes, FillPlan filling) {
        this.garden = garden;
        this.outline = outline;
        this.boxes = boxes;
        this.filling = filling;
    }

    /**
     * All cautions of a garden.
     *
     * @param garden as given
     * @param outline its border as adjusted
     * @param boxes as built up
     * @param filling of the same boxes
     */
    public static SiteCautions find(Garden garden, Outline outline, List<Box> boxes, FillPlan filling) {
        CautionFinder finder = new CautionFinder(garden, outline, boxes, filling);
        return new SiteCautions(
                List.of(
                        finder.before(),
                        finder.ground(),
                        finder.wood(),
                        stage(CautionStage.SAWING, SAW_MANUAL, ROUGH_BOARDS, FREEHAND_CUTS, NAILER, SCREW_POINTS),
                        finder.lifting(),
                        finder.after()),
                finder.lifts());
    }

    private StageCautions before() {
        List<Caution> cautions = new ArrayList<>();
        cautions.add(Caution.of(BOUNDARY_AND_PERMITS));
        cautions.add(engineer());
        if (faces(EdgeKind.HOUSE)) {
            double below = new LengthFormat(garden.units()).rule(GroundWork.BELOW_DAMP_COURSE_MM);
            cautions.add(Caution.limited(SOIL_BELOW_DAMP_COURSE, below));
        }
        if (faces(EdgeKind.FENCE)) {
            cautions.add(Caution.of(FENCE_CARRIES_NO_SOIL));
        }
        if (surface() == GroundSurface.ROOF) {
            cautions.add(Caution.of(ROOF_LOAD_LIMIT));
        }
        return new StageCautions(CautionStage.BEFORE, cautions);
    }

    private Caution engineer() {
        double tallest =
                boxes.stream().mapToDouble(box -> box.plan().heightMm()).max().orElse(0);
        return tallest > ENGINEER_WALL_MM
                ? new Caution(
                        ENGINEER_FOR_TALL_WALLS, Optional.empty(), Optional.of(tallest), Optional.of(ENGINEER_WALL_MM))
                : Caution.of(ENGINEER_FOR_RETAINING_WALLS);
    }

    private StageCautions ground() {
        if (surface().isHard()) {
            return stage(CautionStage.HARD_GROUND, RUN_OFF);
        }
        List<Caution> cautions = new ArrayList<>();
        cautions.add(Caution.of(DIG_ENQUIRY));
        garden.ground().keepClearOf().forEach(thing -> near(thing).ifPresent(cautions::add));
        cautions.addAll(stage(CautionStage.DIGGING, FOOTINGS_AND_ROOTS, STRUCK_MAIN, TAMPER)
                .cautions());
        return new StageCautions(CautionStage.DIGGING, cautions);
    }

    /** What was stated to lie here; others may lie here too. */
    private static Optional<Caution> near(NearbyThing thing) {
        Optional<String> place = Optional.of(thing.what().inWords() + " at " + thing.edge());
        if (thing.what().isService()) {
            Optional<Double> depth = thing.depth().map(Length::mm);
            return Optional.of(new Caution(SERVICE_NEAR, place, depth, Optional.empty()));
        }
        return thing.what() == NearbyKind.TREE
                ? Optional.of(new Caution(TREE_ROOTS, place, Optional.empty(), Optional.of(thing.rootsMm())))
                : Optional.empty();
    }

    private StageCautions wood() {
        boolean treated = garden.sections().stream().anyMatch(SectionSpec::isTreated);
        return treated
                ? stage(CautionStage.WOOD, TREATED_BOARDS, FOOD_BESIDE_TREATED_WOOD, RECLAIMED_WOOD)
                : stage(CautionStage.WOOD, RECLAIMED_WOOD);
    }

    private StageCautions lifting() {
        double heaviest = filling.weights().stream()
                .mapToDouble(BoxWeight::heaviestKg)
                .max()
                .orElse(0);
        return new StageCautions(
                CautionStage.LIFTING,
                List.of(
                        Caution.limited(people(heaviest) > 1 ? TWO_PEOPLE_LIFT : ASK_FOR_HELP, Filling.LIFT_KG),
                        Caution.of(PROP_WALLS),
                        Caution.of(ON_THE_ROAD)));
    }

    private StageCautions after() {
        return filling.finish().coats() > 0
                ? stage(CautionStage.AFTER, TIES_BEFORE_SOIL, BAGS_AND_DUST, FINISH_RAGS, YEARLY_LOOK)
                : stage(CautionStage.AFTER, TIES_BEFORE_SOIL, BAGS_AND_DUST, YEARLY_LOOK);
    }

    private List<PieceLift> lifts() {
        Map<String, SectionSpec> sections = new TreeMap<>();
        garden.sections().forEach(section -> sections.put(section.name(), section));
        List<PieceLift> lifts = new ArrayList<>();
        for (Box box : boxes) {
            for (Piece piece : box.pieces()) {
                double kg = Weights.pieceKg(piece, sections);
                if (kg > 0) {
                    lifts.add(new PieceLift(piece.label(), kg, people(kg)));
                }
            }
        }
        return lifts;
    }

    private static int people(double kg) {
        return kg > Filling.LIFT_KG ? 2 : 1;
    }

    private GroundSurface surface() {
        return garden.ground().surface();
    }

    private boolean faces(EdgeKind kind) {
        return outline.edges().stream().anyMatch(edge -> edge.kind() == kind);
    }

    private static StageCautions stage(CautionStage stage, CautionCode... codes) {
        List<Caution> cautions = new ArrayList<>();
        for (CautionCode code : codes) {
            cautions.add(Caution.of(code));
        }
        return new StageCautions(stage, cautions);
    }
}
