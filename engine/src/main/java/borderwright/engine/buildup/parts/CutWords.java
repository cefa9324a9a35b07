package borderwright.engine.buildup.parts;

import borderwright.engine.buildup.parts.EndCut.LongPoint;
import borderwright.engine.garden.SawSpec;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.message.Message;

/** The end cuts of a piece: their angles, and the messages that describe them. */
public final class CutWords {
    private final SawBench bench;
    private final CutSteps steps;

    public CutWords(SawBench bench, CutSteps steps) {
        this.bench = bench;
        this.steps = steps;
    }

    /** How a piece lies on the saw's table. */
    public enum Lie {
        /** Its ends are bevelled, through the thickness. */
        ON_EDGE,
        /** Its ends are mitred, across the width. */
        FLAT
    }

    /**
     * What the two sides of a piece are called.
     *
     * @param near the marked face of a board on edge, the lower edge of one lying flat
     * @param far the hidden face, or the upper edge
     */
    public record SideNames(CutMessage near, CutMessage far) {
        public static final SideNames WALL = new SideNames(CutMessage.OUTSIDE_FACE, CutMessage.INSIDE_FACE);
        public static final SideNames RING = new SideNames(CutMessage.OUTER_EDGE, CutMessage.INNER_EDGE);
        public static final SideNames MARKED = new SideNames(CutMessage.MARKED_FACE, CutMessage.UNMARKED_FACE);
        public static final SideNames FLAT = new SideNames(CutMessage.LOWER_EDGE, CutMessage.UPPER_EDGE);
    }

    /** The cut at the left end of a strip. */
    public EndCut left(Strip strip, SectionSpec section, Lie lie, SideNames names) {
        return cut(strip.left().mirrored(), "left", strip, section, lie, names);
    }

    /** The cut at the right end of a strip. */
    public EndCut right(Strip strip, SectionSpec section, Lie lie, SideNames names) {
        return cut(strip.right(), "right", strip, section, lie, names);
    }

    /** A square end of an upright piece. */
    public EndCut square(SectionSpec section, double lengthMm) {
        return square(new SawBench.Cut(0, 0, section, lengthMm, lengthMm));
    }

    private EndCut square(SawBench.Cut cut) {
        SawBench.How how = bench.how(cut);
        return new EndCut(0, 0, LongPoint.NONE, 0, CutMessage.SQUARE_CUT.of(), how.words(), how.inRange());
    }

    /**
     * One end.
     *
     * @param end its reach beyond the piece on either line: the greater is the long point
     */
    private EndCut cut(Strip.End end, String hand, Strip strip, SectionSpec section, Lie lie, SideNames names) {
        boolean flat = lie == Lie.FLAT;
        double back = StrictMath.abs(end.nearMm() - end.farMm());
        if (back == 0) {
            return square(new SawBench.Cut(0, 0, section, strip.shortestMm(), strip.overallMm()));
        }
        double across = strip.farMm() - strip.nearMm();
        double exact = StrictMath.toDegrees(StrictMath.atan2(back, across));
        SawBench.Cut cut = cutAt(steps.upDeg(exact, SawSpec.USUAL_ANGLE_STEP_DEG), strip, section, lie);
        SawSpec saw = bench.how(cut).saw();
        if (saw != null) {
            cut = cutAt(steps.upDeg(exact, saw.angleStepDeg()), strip, section, lie);
        }
        double degrees = cut.tiltDeg() + cut.fenceDeg();
        double cutBack = steps.isFinest() ? back : across * StrictMath.tan(StrictMath.toRadians(degrees));
        boolean near = end.nearMm() > end.farMm();
        LongPoint point = flat
                ? near ? LongPoint.LOWER_EDGE : LongPoint.UPPER_EDGE
                : near ? LongPoint.MARKED_FACE : LongPoint.HIDDEN_FACE;
        SawBench.How how = bench.how(cut);
        Message words = (flat ? CutMessage.MITRED_END : CutMessage.BEVELLED_END)
                .of(
                        degrees,
                        hand,
                        (near ? names.near() : names.far()).of(),
                        cutBack,
                        (near ? names.far() : names.near()).of());
        return new EndCut(cut.tiltDeg(), cut.fenceDeg(), point, cutBack, words, how.words(), how.inRange());
    }

    private static SawBench.Cut cutAt(double degrees, Strip strip, SectionSpec section, Lie lie) {
        boolean flat = lie == Lie.FLAT;
        return new SawBench.Cut(flat ? 0 : degrees, flat ? degrees : 0, section, strip.shortestMm(), strip.overallMm());
    }
}
