package borderwright.engine.cautions;

import static borderwright.engine.cautions.CautionCode.*;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
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
import borderwright.engine.ground.NearbyPlace;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.message.Message;
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

    /**
     * From higher rims a fall is for the rules on guards and soft landings, mm (EN 1176-1, greatest free fall onto a surface
     * that is not soft, and NHBC Standards 2020, 10.2.5, drop that wants a guard: both 600, from summaries).
     */
    public static final double FALL_MM = 600;

    /** More than this, filled and soaked, is not moved in one day, kg (common practice, no source). */
    public static final double DAY_KG = 1000;

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
                        stage(
                                CautionStage.SAWING,
                                SAW_MANUAL,
                                SAWDUST,
                                ROUGH_BOARDS,
                                FREEHAND_CUTS,
                                NAILER,
                                SCREW_POINTS),
                        finder.lifting(),
                        finder.after()),
                finder.lifts());
    }

    private StageCautions before() {
        List<Message> cautions = new ArrayList<>();
        cautions.add(BOUNDARY_AND_PERMITS.of());
        cautions.add(engineer());
        if (faces(EdgeKind.HOUSE)) {
            double below = new LengthFormat(garden.units()).rule(GroundWork.BELOW_DAMP_COURSE_MM);
            cautions.add(SOIL_BELOW_DAMP_COURSE.of(below));
        }
        if (faces(EdgeKind.FENCE)) {
            cautions.add(FENCE_CARRIES_NO_SOIL.of());
        }
        if (surface() == GroundSurface.ROOF) {
            cautions.add(ROOF_LOAD_LIMIT.of());
            cautions.add(CLEAR_OF_GUARDS.of(tallestMm()));
        }
        return new StageCautions(CautionStage.BEFORE, cautions);
    }

    private Message engineer() {
        double tallest = tallestMm();
        return tallest > ENGINEER_WALL_MM
                ? ENGINEER_FOR_TALL_WALLS.of(tallest, ENGINEER_WALL_MM)
                : ENGINEER_FOR_RETAINING_WALLS.of();
    }

    private StageCautions ground() {
        if (surface().isHard()) {
            return stage(CautionStage.HARD_GROUND, KEEP_RUN_OFF_AWAY);
        }
        List<Message> cautions = new ArrayList<>();
        cautions.add(DIG_ENQUIRY.of());
        garden.ground().keepClearOf().forEach(thing -> near(thing).ifPresent(cautions::add));
        cautions.addAll(stage(CautionStage.DIGGING, FOOTINGS_AND_ROOTS, STRUCK_MAIN, TAMPER, FOOD_IN_DUG_EARTH, TETANUS)
                .cautions());
        return new StageCautions(CautionStage.DIGGING, cautions);
    }

    /** What is given as lying here; others may lie here too. */
    private static Optional<Message> near(NearbyThing thing) {
        Message place = NearbyPlace.name(thing);
        if (thing.what().isService()) {
            return Optional.of(
                    thing.depth().isEmpty()
                            ? TRACE_SERVICE_OF_UNKNOWN_DEPTH.of(place)
                            : TRACE_SERVICE.of(place, thing.depth().get().mm()));
        }
        return thing.what() == NearbyKind.TREE
                ? Optional.of(LEAVE_ROOTS_ALONE.of(place, thing.rootsMm()))
                : Optional.empty();
    }

    private StageCautions wood() {
        boolean treated = garden.sections().stream().anyMatch(SectionSpec::isTreated);
        return treated
                ? stage(CautionStage.WOOD, TREATED_BOARDS, FOOD_BESIDE_TREATED_WOOD, RECLAIMED_WOOD)
                : stage(CautionStage.WOOD, RECLAIMED_WOOD);
    }

    private StageCautions lifting() {
        List<Message> cautions = new ArrayList<>(filling.notes());
        cautions.add(ASK_FOR_HELP.of(Filling.LIFT_KG));
        if (filling.filledKg() > DAY_KG) {
            cautions.add(STAGGER_LIFTING.of(filling.filledKg()));
        }
        cautions.add(PROP_WALLS.of());
        cautions.add(ON_THE_ROAD.of());
        return new StageCautions(CautionStage.LIFTING, cautions);
    }

    private StageCautions after() {
        List<Message> cautions = new ArrayList<>();
        cautions.add(FIT_TIES_FIRST.of());
        cautions.add(BAGS_AND_DUST.of());
        if (surface().isHard()) {
            cautions.add(TETANUS.of());
        }
        cautions.add(RIMS_ARE_NO_STEPS.of());
        cautions.add(tallestMm() > FALL_MM ? CHILDREN_CLIMB_HIGH.of(tallestMm(), FALL_MM) : CHILDREN_CLIMB.of());
        if (filling.finish().coats() > 0) {
            cautions.add(FINISH_RAGS.of());
        }
        cautions.add(YEARLY_LOOK.of());
        return new StageCautions(CautionStage.AFTER, cautions);
    }

    private List<PieceLift> lifts() {
        Map<String, SectionSpec> sections = new TreeMap<>();
        garden.sections().forEach(section -> sections.put(section.name(), section));
        List<PieceLift> lifts = new ArrayList<>();
        for (Box box : boxes) {
            for (Piece piece : box.pieces()) {
                double kg = Weights.pieceKg(piece, sections);
                if (kg > 0) {
                    lifts.add(new PieceLift(piece.label(), kg, Weights.people(kg, Filling.LIFT_KG)));
                }
            }
        }
        return lifts;
    }

    private double tallestMm() {
        return boxes.stream().mapToDouble(Box::builtMm).max().orElse(0);
    }

    private GroundSurface surface() {
        return garden.ground().surface();
    }

    private boolean faces(EdgeKind kind) {
        return outline.edges().stream().anyMatch(edge -> edge.kind() == kind);
    }

    private static StageCautions stage(CautionStage stage, CautionCode... codes) {
        List<Message> cautions = new ArrayList<>();
        for (CautionCode code : codes) {
            cautions.add(code.of());
        }
        return new StageCautions(stage, cautions);
    }
}
