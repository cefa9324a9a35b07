package borderwright.engine.buildup.floor;

import borderwright.engine.buildup.draft.Draft;
import borderwright.engine.buildup.draft.PieceMaker;
import borderwright.engine.buildup.parts.Box.Hold;
import borderwright.engine.buildup.parts.BuildMessage;
import borderwright.engine.buildup.parts.CutWords.SideNames;
import borderwright.engine.buildup.parts.FaceWords;
import borderwright.engine.buildup.parts.FixingMessage;
import borderwright.engine.buildup.parts.Piece.Notch;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.buildup.parts.Strip;
import borderwright.engine.buildup.walls.BoardJoining;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Prism;
import borderwright.engine.geometry.Ring;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The slats of a platform, notched round the uprights that they meet. */
final class Slats {
    private static final double CLEAR_MM = 5;

    private final Draft draft;
    private final double gapMm;
    private final double topMm;
    private double widestGapMm;

    /**
     * The slats of a box.
     *
     * @param gapMm least gap between slats
     * @param heightMm height of their top above the bed
     */
    Slats(Draft draft, double gapMm, double heightMm) {
        this.draft = draft;
        this.gapMm = gapMm;
        this.topMm = draft.stack.bottomMm() + heightMm;
    }

    /** From and to across the slats, mm. */
    record Extent(double fromMm, double toMm) {}

    double leastGapMm() {
        return gapMm;
    }

    /** Gap between whole slats over an extent; the extent itself where none fits. */
    double gapMm(Extent extent) {
        double width = draft.sections.slats().width().mm();
        double room = extent.toMm - extent.fromMm;
        double count = StrictMath.floor((room - gapMm) / (width + gapMm));
        return count < 1 ? room : (room - count * width) / (count + 1);
    }

    double widestGapMm() {
        return widestGapMm;
    }

    void lay(PieceMaker maker, Ring planter, Point origin, Point along, Extent extent, List<Bearers.Laid> bearers) {
        double width = draft.sections.slats().width().mm();
        double room = extent.toMm - extent.fromMm;
        long count = (long) StrictMath.floor((room - gapMm) / (width + gapMm));
        if (count == 0) {
            draft.note(BuildMessage.PLANTER_TOO_NARROW_FOR_SLATS.of(
                    draft.plan.name(), draft.sections.slats().name()));
            return;
        }
        double gap = gapMm(extent);
        widestGapMm = StrictMath.max(widestGapMm, gap);
        for (long k = 0; k < count; k++) {
            double near = extent.fromMm + gap + k * (width + gap);
            List<Strip> strips = new StripsInRing(
                            origin, along, near, near + width, CLEAR_MM, draft.bench.greatestFenceDeg())
                    .in(planter);
            for (Strip strip : strips) {
                lay(maker, strip, bearers);
            }
        }
    }

    private void lay(PieceMaker maker, Strip whole, List<Bearers.Laid> bearers) {
        double middle = (whole.nearMm() + whole.farMm()) / 2;
        List<Double> under = bearers.stream()
                .filter(bearer -> bearer.carries(middle))
                .map(Bearers.Laid::atMm)
                .filter(at -> at > lesser(whole.left()) && at < greater(whole.right()))
                .sorted()
                .toList();
        Optional<List<Double>> joints = BoardJoining.choose(
                lesser(whole.left()),
                greater(whole.right()),
                draft.means.longestMm(draft.sections.slats().name()),
                under,
                Set.of());
        if (under.size() < 2 || joints.isEmpty()) {
            draft.note(BuildMessage.SLAT_LEFT_OUT.of(
                    draft.plan.name(), draft.planterAt(whole.at(greater(whole.left()) + 10, middle))));
            return;
        }
        for (Strip strip : whole.cutAt(joints.get())) {
            new NotchedSlat(draft.clearance, topMm - thickness(), topMm)
                    .of(strip)
                    .forEach(slat -> add(maker, slat, under));
        }
    }

    private double thickness() {
        return draft.sections.slats().thickness().mm();
    }

    private void add(PieceMaker maker, NotchedSlat.Slat slat, List<Double> bearers) {
        SectionSpec section = draft.sections.slats();
        Strip strip = slat.strip();
        long crossings = bearers.stream()
                .filter(at -> at >= lesser(strip.left()) && at <= greater(strip.right()))
                .count();
        String planter = draft.planterAt(strip.at(greater(strip.left()) + 10, (strip.nearMm() + strip.farMm()) / 2));
        PieceMaker.Part part = PieceMaker.Part.builder()
                .label(draft.labels.next(planter, Role.SLAT))
                .planter(planter)
                .role(Role.SLAT)
                .section(section)
                .names(SideNames.FLAT)
                .faceOut(FaceWords.up(draft.rules))
                .build();
        List<Notch> notches = slat.notches();
        Prism solid = new Prism(slat.outline(), topMm - thickness(), topMm);
        draft.add(maker.notched(part, strip, slat.outline(), notches, solid.bottomMm(), solid.topMm()));
        draft.fixings.add(draft.screws.screw(thickness(), 40), Hold.OTHER, FixingMessage.SLATS_TO_BEARERS.of(), (int)
                (2 * crossings));
    }

    private static double lesser(Strip.End end) {
        return StrictMath.min(end.nearMm(), end.farMm());
    }

    private static double greater(Strip.End end) {
        return StrictMath.max(end.nearMm(), end.farMm());
    }
}
