package borderwright.engine.ground;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.PostHole;
import borderwright.engine.garden.GroundSpec;
import borderwright.engine.garden.GroundSpec.MembraneSpec;
import borderwright.engine.garden.SoilSpec;
import borderwright.engine.garden.SurveySpec;
import borderwright.engine.garden.vocabulary.ground.GravelBed;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.message.Message;
import borderwright.engine.problem.Problem;
import borderwright.engine.survey.Outline;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;

/** From boxes on the ground to the ground made ready for them: the one question that this stage answers. */
public final class GroundWork {
    /** Soil and ground stay at least so far below a damp-proof course, mm (common practice in building-defects textbooks). */
    public static final double BELOW_DAMP_COURSE_MM = 150;

    private final Outline outline;
    private final GroundSpec spec;
    private final LengthFormat format;

    private GroundWork(Outline outline, GroundSpec spec, LengthFormat format) {
        this.outline = outline;
        this.spec = spec;
        this.format = format;
    }

    /**
     * The ground for some boxes.
     *
     * @param boxes as built up; none overlaps another
     * @param outline the border with its ground
     * @param survey what was given of its edges, for damp-proof courses
     * @param spec how the ground is made ready
     * @param soil for how far soil stays below the rim
     * @param bowMm how far a wall may bow out, for fences, mm
     * @param format for rules of the trade in whole units
     */
    public static GroundPlan plan(
            List<Box> boxes,
            Outline outline,
            SurveySpec survey,
            GroundSpec spec,
            SoilSpec soil,
            double bowMm,
            LengthFormat format) {
        return new GroundWork(outline, spec, format).plan(boxes, survey, soil, bowMm);
    }

    private GroundPlan plan(List<Box> boxes, SurveySpec survey, SoilSpec soil, double bowMm) {
        List<Geometry> areas = DugAreas.of(boxes, outline.ring(), spec);
        List<BoxGround> grounds = grounds(boxes, areas);
        Spoil spoil = Spoil.of(
                grounds.stream().mapToDouble(BoxGround::turfM3).sum(),
                grounds.stream().mapToDouble(BoxGround::dugM3).sum(),
                spec);
        double gravel = grounds.stream().mapToDouble(BoxGround::gravelM3).sum();
        Optional<SheetPlan> sheet =
                spec.surface().isHard() ? Optional.empty() : spec.membrane().map(m -> sheet(boxes, areas, m));
        List<Message> notes = new ArrayList<>();
        List<Problem> unmet = new ArrayList<>();
        note(boxes, notes);
        List<SiteClearance> clearances = new ArrayList<>();
        if (spec.surface().isHard()) {
            clearances.addAll(
                    new RunOff(outline, format.units(), spec.feet().lowestMm()).of(boxes, grounds, notes, unmet));
        }
        List<BoxWork> works = BoxWork.of(boxes, grounds, areas, spec, soil.belowRimMm());
        ClearanceFinder keeps = new ClearanceFinder(outline, format, works, notes, unmet);
        new DampCourse(outline, format, notes, unmet)
                .check(survey.edges(), works)
                .forEach(keeps::keep);
        List<Optional<NearbyPlace>> near = NearbyPlace.of(spec.keepClearOf(), outline);
        clearances.addAll(keeps.of(near, bowMm));
        return new GroundPlan.Builder(grounds, spoil)
                .gravel(gravel, gravel * spec.gravel().looseFactor())
                .sheet(sheet)
                .near(near.stream().flatMap(Optional::stream).toList(), clearances, keeps.standing())
                .notes(notes, unmet)
                .build();
    }

    private List<BoxGround> grounds(List<Box> boxes, List<Geometry> areas) {
        BoxGroundMaker maker = new BoxGroundMaker(outline.ground(), spec);
        List<BoxGround> grounds = new ArrayList<>();
        for (int i = 0; i < boxes.size(); i++) {
            Geometry dug = DugAreas.dug(boxes.get(i), areas.get(i), spec);
            grounds.add(maker.make(boxes.get(i), areas.get(i), dug));
        }
        return grounds;
    }

    /** With fewest seams, unless least sheet saves a roll. */
    private static SheetPlan sheet(List<Box> boxes, List<Geometry> areas, MembraneSpec membrane) {
        SheetPlan fewSeams = sheet(boxes, areas, membrane, SheetStrips.Aim.FEWEST_SEAMS);
        SheetPlan leastSheet = sheet(boxes, areas, membrane, SheetStrips.Aim.LEAST_SHEET);
        return leastSheet.rolls() < fewSeams.rolls() ? leastSheet : fewSeams;
    }

    private static SheetPlan sheet(List<Box> boxes, List<Geometry> areas, MembraneSpec membrane, SheetStrips.Aim aim) {
        SheetCutter cutter = new SheetCutter(membrane.widthMm(), membrane.lengthMm(), membrane.overlapMm());
        int pins = 0;
        for (int i = 0; i < boxes.size(); i++) {
            SheetStrips strips = SheetStrips.over(
                    areas.get(i), boxes.get(i).plan().outline(), membrane.widthMm(), membrane.overlapMm(), aim);
            String box = boxes.get(i).plan().name();
            strips.stripsMm().forEach(length -> cutter.strip(box, membrane.widthMm(), length));
            pins += pins(areas.get(i), strips.seamMm(), membrane.pinsMm());
        }
        return cutter.plan(pins);
    }

    /** Round the edge and along seams at the spacing, across the middle at twice the spacing each way. */
    private static int pins(Geometry area, double seamMm, double apartMm) {
        return (int) (Math.ceil(area.getLength() / apartMm)
                + Math.ceil(seamMm / apartMm)
                + Math.floor(area.getArea() / (4 * apartMm * apartMm)));
    }

    private void note(List<Box> boxes, List<Message> notes) {
        List<PostHole> holes = boxes.stream()
                .flatMap(box -> PostHole.of(box.pieces(), box.plan().bedMm()).stream())
                .toList();
        if (!holes.isEmpty()) {
            notes.add(GroundMessage.DIG_INCLUDES_POST_HOLES.of(
                    holes.size(),
                    holes.stream().mapToDouble(PostHole::widthMm).max().orElse(0),
                    holes.stream().mapToDouble(PostHole::depthMm).max().orElse(0)));
        }
        boolean floored = boxes.stream().anyMatch(b -> b.plan().platformMm() > 0);
        if (spec.surface().isHard() && boxes.stream().anyMatch(b -> b.plan().platformMm() == 0)) {
            notes.add(GroundMessage.NO_FLOOR_ON_HARD_GROUND.of());
        }
        if (!spec.surface().isHard() && floored && spec.bed() != GravelBed.WHOLE) {
            notes.add(GroundMessage.FLOOR_LEGS_WITHOUT_GRAVEL.of(spec.bed()));
        }
        if (outline.ground().spots().isEmpty()) {
            notes.add(GroundMessage.NO_LEVELS_TAKEN.of());
        }
    }
}
