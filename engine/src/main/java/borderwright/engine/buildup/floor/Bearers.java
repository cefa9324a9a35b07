package borderwright.engine.buildup.floor;

import borderwright.engine.buildup.draft.Draft;
import borderwright.engine.buildup.draft.PieceMaker;
import borderwright.engine.buildup.draft.UprightPlan;
import borderwright.engine.buildup.parts.Box.Hold;
import borderwright.engine.buildup.parts.CutWords.SideNames;
import borderwright.engine.buildup.parts.FaceMessage;
import borderwright.engine.buildup.parts.FixingMessage;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.buildup.parts.Strip;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Prism;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.List;

/** The bearers of a platform and the legs under them. */
final class Bearers {
    /** Between legs (common practice, no source). */
    private static final double LEG_SPACING_MM = 600;

    /** Between a bearer's end and the wall, mm. */
    private static final double CLEAR_MM = 5;

    private static final double SHORTEST_MM = 100;

    private static final double STEEPEST_DEG = 45;

    private final Draft draft;
    private final FalseFloor.Lay lay;

    Bearers(Draft draft, FalseFloor.Lay lay) {
        this.draft = draft;
        this.lay = lay;
    }

    /**
     * A bearer in place.
     *
     * @param atMm its middle along the slats
     * @param fromMm where it starts across them
     * @param toMm where it ends
     */
    record Laid(double atMm, double fromMm, double toMm) {
        boolean carries(double w) {
            return fromMm <= w && w <= toMm;
        }
    }

    /** Lays a bearer about a place along the slats, moved aside where uprights stand. */
    List<Laid> lay(PieceMaker maker, Ring planter, Point origin, Point along, double wantedMm) {
        for (double off = 0; off <= 150; off += 10) {
            for (double at : off == 0 ? List.of(wantedMm) : List.of(wantedMm - off, wantedMm + off)) {
                Point start = origin.plus(along.times(at));
                double half = lay.acrossMm() / 2;
                List<Strip> strips = new StripsInRing(start, along.left(), -half, half, CLEAR_MM, STEEPEST_DEG)
                        .in(planter).stream()
                                .filter(strip -> squareMm(strip) >= StrictMath.max(SHORTEST_MM, legMm()))
                                .toList();
                if (!strips.isEmpty() && strips.stream().allMatch(this::isFree)) {
                    return take(maker, strips, at);
                }
            }
        }
        return List.of();
    }

    /** Length over which it has its whole width. */
    private static double squareMm(Strip strip) {
        return StrictMath.min(strip.right().nearMm(), strip.right().farMm())
                - StrictMath.max(strip.left().nearMm(), strip.left().farMm());
    }

    /** Width of a leg along its bearer. */
    private double legMm() {
        SectionSpec section = draft.sections.bearers();
        return lay.acrossMm() == section.thickness().mm()
                ? section.width().mm()
                : section.thickness().mm();
    }

    private boolean isFree(Strip strip) {
        return draft.clearance.isFree(solid(strip));
    }

    private double bottomMm() {
        return draft.stack.bottomMm() + lay.legMm();
    }

    private Prism solid(Strip strip) {
        return new Prism(strip.outline(), bottomMm(), bottomMm() + lay.heightMm());
    }

    private List<Laid> take(PieceMaker maker, List<Strip> strips, double at) {
        List<Laid> laid = new ArrayList<>();
        for (Strip strip : strips) {
            draft.clearance.take(solid(strip));
            strip.cutAt(joints(strip)).forEach(part -> build(maker, part));
            laid.add(new Laid(
                    at,
                    StrictMath.max(strip.left().nearMm(), strip.left().farMm()),
                    StrictMath.min(strip.right().nearMm(), strip.right().farMm())));
        }
        return laid;
    }

    /** Even parts where no board is long enough; each stands on legs of its own. */
    private List<Double> joints(Strip strip) {
        double longest = draft.means.longestMm(draft.sections.bearers().name());
        long parts = (long) StrictMath.ceil(strip.overallMm() / longest - 1e-9);
        double from = StrictMath.min(strip.left().nearMm(), strip.left().farMm());
        List<Double> joints = new ArrayList<>();
        for (long k = 1; k < parts; k++) {
            joints.add(from + strip.overallMm() * k / parts);
        }
        return joints;
    }

    private void build(PieceMaker maker, Strip strip) {
        String planter = draft.planterAt(
                strip.at(StrictMath.max(strip.left().nearMm(), strip.left().farMm()) + 10, 0));
        PieceMaker.Part part = PieceMaker.Part.builder()
                .label(draft.labels.next(planter, Role.BEARER))
                .planter(planter)
                .role(Role.BEARER)
                .section(draft.sections.bearers())
                .names(lay.flat() ? SideNames.FLAT : SideNames.MARKED)
                .faceOut(lay.flat() ? FaceMessage.ANY_FACE_UP.of() : FaceMessage.ANY_FACE_RISING_EDGE_UP.of())
                .touchesGround(lay.legMm() == 0)
                .build();
        Prism solid = solid(strip);
        draft.add(
                lay.flat()
                        ? maker.flat(part, strip, solid.bottomMm(), solid.topMm())
                        : maker.onEdge(part, strip, solid.bottomMm(), solid.topMm()));
        if (lay.legMm() > 0) {
            legs(maker, strip, planter);
        }
    }

    private void legs(PieceMaker maker, Strip strip, String planter) {
        SectionSpec section = draft.sections.bearers();
        double lengthwise = legMm();
        double from = StrictMath.max(strip.left().nearMm(), strip.left().farMm()) + lengthwise / 2;
        double to = StrictMath.min(strip.right().nearMm(), strip.right().farMm()) - lengthwise / 2;
        long spaces = StrictMath.max(1, (long) StrictMath.ceil((to - from) / LEG_SPACING_MM));
        if (to - from < lengthwise) {
            spaces = 0;
        }
        for (long k = 0; k <= spaces; k++) {
            double at = spaces == 0 ? (from + to) / 2 : from + (to - from) * k / spaces;
            Strip foot = new Strip(
                    strip.origin(),
                    strip.along(),
                    strip.nearMm(),
                    strip.farMm(),
                    Strip.End.square(at - lengthwise / 2),
                    Strip.End.square(at + lengthwise / 2));
            UprightPlan leg = UprightPlan.onOneFace(foot.outline(), section);
            PieceMaker.Part part = PieceMaker.Part.builder()
                    .label(draft.labels.next(planter, Role.LEG))
                    .planter(planter)
                    .role(Role.LEG)
                    .section(section)
                    .names(SideNames.MARKED)
                    .faceOut(FaceMessage.ANY_FACE_OF_UPRIGHT.of())
                    .touchesGround(true)
                    .build();
            double bed = draft.stack.bottomMm();
            draft.add(maker.upright(part, leg, bed, bed + lay.legMm()));
            draft.fixings.add(
                    draft.screws.screw(StrictMath.min(lay.heightMm(), 50), StrictMath.max(lay.legMm(), 60)),
                    Hold.OTHER,
                    FixingMessage.BEARERS_TO_LEGS.of(),
                    2);
        }
    }
}
