package borderwright.engine.ground;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.PostHole;
import borderwright.engine.garden.GroundSpec;
import borderwright.engine.garden.GroundSpec.MembraneSpec;
import borderwright.engine.garden.SoilSpec;
import borderwright.engine.garden.SurveySpec;
import borderwright.engine.garden.vocabulary.ground.GravelBed;
import borderwright.engine.measure.LengthFormat;
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
    private final GroundSpec wish;
    private final LengthFormat format;

    private GroundWork(Outline outline, GroundSpec wish, LengthFormat format) {
        this.outline = outline;
        this.wish = wish;
        this.format = format;
    }

    /**
     * The ground for some boxes.
     *
     * @param boxes as built up; none overlaps another
     * @param outline the border with its ground
     * @param survey what was said of its edges, for damp-proof courses
     * @param wish how the ground is made ready
     * @param soil for how far soil stays below the rim
     * @param bowMm how far a wall may bow out, for fences, mm
     * @param format for sentences
     */
    public static GroundPlan plan(
            List<Box> boxes,
            Outline outline,
            SurveySpec survey,
            GroundSpec wish,
            SoilSpec soil,
            double bowMm,
            LengthFormat format) {
        return new GroundWork(outline, wish, format).plan(boxes, survey, soil, bowMm);
    }

    private GroundPlan plan(List<Box> boxes, SurveySpec survey, SoilSpec soil, double bowMm) {
        List<Geometry> areas = DugAreas.of(boxes, outline.ring(), wish);
        BoxGroundMaker maker = new BoxGroundMaker(outline.ground(), wish);
        List<BoxGround> grounds = new ArrayList<>();
        for (int i = 0; i < boxes.size(); i++) {
            Geometry dug = DugAreas.dug(boxes.get(i), areas.get(i), wish);
            grounds.add(maker.make(boxes.get(i), areas.get(i), dug));
        }
        Spoil spoil = Spoil.of(
                grounds.stream().mapToDouble(BoxGround::turfM3).sum(),
                grounds.stream().mapToDouble(BoxGround::dugM3).sum(),
                wish);
        double gravel = grounds.stream().mapToDouble(BoxGround::gravelM3).sum();
        Optional<SheetPlan> sheet =
                wish.surface().isHard() ? Optional.empty() : wish.membrane().map(m -> sheet(boxes, areas, m));
        List<String> notes = new ArrayList<>();
        List<Problem> unmet = new ArrayList<>();
        tell(boxes, notes);
        List<SiteClearance> clearances = new ArrayList<>();
        if (wish.surface().isHard()) {
            clearances.addAll(new RunOff(outline, format, wish.feet().lowestMm()).of(boxes, grounds, notes, unmet));
        }
        List<BoxWork> works = BoxWork.of(boxes, grounds, areas, wish, soil.belowRimMm());
        ClearanceFinder keeps = new ClearanceFinder(outline, format, works, notes, unmet);
        new DampCourse(outline, format, notes, unmet)
                .check(survey.edges(), works)
                .forEach(keeps::keep);
        List<Optional<NearbyPlace>> near = NearbyPlace.of(wish.keepClearOf(), outline, format);
        clearances.addAll(keeps.of(near, bowMm));
        return new GroundPlan(
                grounds,
                spoil,
                gravel,
                gravel * wish.gravel().looseFactor(),
                sheet,
                near.stream().flatMap(Optional::stream).toList(),
                clearances,
                keeps.standing(),
                notes,
                unmet);
    }

    /** With fewest seams, unless least sheet saves a roll. */
    private static SheetPlan sheet(List<Box> boxes, List<Geometry> areas, MembraneSpec membrane) {
        SheetPlan fewSeams = sheet(boxes, areas, membrane, true);
        SheetPlan leastSheet = sheet(boxes, areas, membrane, false);
        return leastSheet.rolls() < fewSeams.rolls() ? leastSheet : fewSeams;
    }

    private static SheetPlan sheet(List<Box> boxes, List<Geometry> areas, MembraneSpec membrane, boolean fewest) {
        SheetCutter cutter = new SheetCutter(membrane.widthMm(), membrane.lengthMm(), membrane.overlapMm());
        int pins = 0;
        for (int i = 0; i < boxes.size(); i++) {
            SheetStrips strips = SheetStrips.over(
                    areas.get(i), boxes.get(i).plan().outline(), membrane.widthMm(), membrane.overlapMm(), fewest);
            String box = boxes.get(i).plan().name();
            strips.stripsMm().forEach(length -> cutter.strip(box, membrane.widthMm(), length));
            pins += pins(areas.get(i), strips.seamMm(), membrane.pinsMm());
        }
        return cutter.plan(pins);
    }

    /** Round the edge and along seams at the spacing, in the field at twice the spacing each way. */
    private static int pins(Geometry area, double seamMm, double apartMm) {
        return (int) (Math.ceil(area.getLength() / apartMm)
                + Math.ceil(seamMm / apartMm)
                + Math.floor(area.getArea() / (4 * apartMm * apartMm)));
    }

    private void tell(List<Box> boxes, List<String> notes) {
        List<PostHole> holes = boxes.stream()
                .flatMap(box -> PostHole.of(box.pieces(), box.plan().bedMm()).stream())
                .toList();
        if (!holes.isEmpty()) {
            notes.add("The earth counts " + holes.size() + " holes for posts and braces, up to "
                    + format.length(
                            holes.stream().mapToDouble(PostHole::widthMm).max().orElse(0))
                    + " across and "
                    + format.length(
                            holes.stream().mapToDouble(PostHole::depthMm).max().orElse(0))
                    + " below the bed; look for cables and pipes before you dig.");
        }
        boolean floored = boxes.stream().anyMatch(b -> b.plan().platformMm() > 0);
        if (wish.surface().isHard() && boxes.stream().anyMatch(b -> b.plan().platformMm() == 0)) {
            notes.add(
                    "A box without a floor on hard ground lets soil and water out under its boards: wish a platform, or"
                            + " line it and expect the stain.");
        }
        if (!wish.surface().isHard() && floored && wish.bed() != GravelBed.WHOLE) {
            notes.add("The legs of a platform stand on the compacted gravel, but gravel is wished "
                    + (wish.bed() == GravelBed.NONE ? "nowhere" : "under the walls only")
                    + ": lay a slab or a pad of gravel under each leg, or say `bed: whole`.");
        }
        if (outline.ground().spots().isEmpty()) {
            notes.add("No levels were taken, so the ground is taken as level at the datum: take levels at the corners"
                    + " before ordering gravel or a skip.");
        }
    }
}
