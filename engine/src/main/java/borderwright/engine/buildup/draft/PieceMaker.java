package borderwright.engine.buildup.draft;

import borderwright.engine.buildup.parts.CutWords.SideNames;
import borderwright.engine.buildup.parts.EndCut;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.Piece.Axis;
import borderwright.engine.buildup.parts.Piece.Notch;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.buildup.parts.Strip;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.geometry.Prism;
import borderwright.engine.geometry.Ring;
import borderwright.engine.measure.Length;
import borderwright.engine.message.Message;
import java.util.List;

/** Turns placed solids into pieces with their cuts. */
public final class PieceMaker {
    private final Draft draft;

    public PieceMaker(Draft draft) {
        this.draft = draft;
    }

    /**
     * What a piece is, apart from where it lies.
     *
     * @param label its label
     * @param planter the planter that it is called after
     * @param role what it does
     * @param course its course, 0 for none
     * @param side its side, -1 for none
     * @param section what it is cut from
     * @param names what its two sides are called
     * @param faceOut which face goes out or up
     * @param waits cut only after its gap has been re-measured
     * @param touchesGround whether it stands on the bed
     */
    public record Part(
            String label,
            String planter,
            Role role,
            int course,
            int side,
            SectionSpec section,
            SideNames names,
            Message faceOut,
            boolean waits,
            boolean touchesGround) {}

    /** A board on edge. */
    public Piece onEdge(Part part, Strip strip, double bottomMm, double topMm) {
        Strip cut = strip.squared();
        return lying(part, cut, cut.outline(), List.of(), false, bottomMm, topMm);
    }

    /** A board lying flat. */
    public Piece flat(Part part, Strip strip, double bottomMm, double topMm) {
        Strip cut = strip.squared();
        return lying(part, cut, cut.outline(), List.of(), true, bottomMm, topMm);
    }

    /** A board lying flat with notches: {@code outline} is what is left of the strip. */
    public Piece notched(Part part, Strip strip, Ring outline, List<Notch> notches, double bottomMm, double topMm) {
        return lying(part, strip, outline, notches, true, bottomMm, topMm);
    }

    private Piece lying(
            Part part, Strip strip, Ring outline, List<Notch> notches, boolean flat, double bottomMm, double topMm) {
        return new Piece(
                part.label,
                draft.plan.name(),
                part.planter,
                part.role,
                part.course,
                part.side,
                part.section.name(),
                Length.ofMm(strip.overallMm()),
                draft.words.left(strip, part.section, flat, part.names),
                draft.words.right(strip, part.section, flat, part.names),
                null,
                notches,
                part.faceOut,
                part.waits,
                part.touchesGround,
                new Prism(outline, bottomMm, topMm),
                new Axis(strip.along().xMm(), strip.along().yMm(), 0));
    }

    /** An upright piece: its left end is its foot. */
    public Piece upright(Part part, UprightPlan upright, double bottomMm, double topMm) {
        EndCut square = draft.words.square(part.section, topMm - bottomMm);
        return new Piece(
                part.label,
                draft.plan.name(),
                part.planter,
                part.role,
                part.course,
                part.side,
                part.section.name(),
                Length.ofMm(topMm - bottomMm),
                square,
                square,
                upright.rip(),
                List.of(),
                part.faceOut,
                part.waits,
                part.touchesGround,
                new Prism(upright.plan(), bottomMm, topMm),
                new Axis(0, 0, 1));
    }
}
