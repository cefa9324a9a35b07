package borderwright.engine.stock.row;

import borderwright.engine.buildup.parts.EndCut;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.measure.Length;
import org.jspecify.annotations.Nullable;

/**
 * How far one end of a piece stands back from its long point at the four long edges of the board, and how much of the
 * board's length its saw cut takes. Ticks, rounded so that a plan never lays pieces too near.
 *
 * @param faceUpper at the face that lies up, upper edge
 * @param faceLower at the face that lies up, lower edge
 * @param backUpper at the face that lies down, upper edge
 * @param backLower at the face that lies down, lower edge
 * @param kerfTicks length that the cut takes: kerf / (cos(tilt) cos(fence)), rounded up
 * @param known whether these tell the whole shape; an end that is only known to reach no further shares no cut
 */
public record EndShape(long faceUpper, long faceLower, long backUpper, long backLower, long kerfTicks, boolean known) {
    /** More than this between an end and its section is no rounding: the piece is narrower than its board. */
    private static final double SAME_MM = 0.2;

    /** A square end. */
    public static EndShape square(long kerfTicks) {
        return planar(0, 0, 0, 0, kerfTicks);
    }

    /** An end in one plane, known at all four edges, ticks. */
    static EndShape planar(long faceUpper, long faceLower, long backUpper, long backLower, long kerfTicks) {
        return new EndShape(faceUpper, faceLower, backUpper, backLower, kerfTicks, true);
    }

    private static EndShape full(long kerfTicks) {
        return new EndShape(0, 0, 0, 0, kerfTicks, false);
    }

    /**
     * The shape of an end.
     *
     * <p>Ends cut at two angles at once, and ends of pieces that are narrower than their board, count as if they were full
     * to their long point.
     *
     * @param end the end
     * @param section the board's section, null where it is not known
     * @param kerf width of the saw's cut
     */
    public static EndShape of(EndCut end, @Nullable SectionSpec section, Length kerf) {
        double tilt = StrictMath.toRadians(Math.min(end.tiltDeg(), 89));
        double fence = StrictMath.toRadians(Math.min(end.fenceDeg(), 89));
        long taken = (long) Math.ceil(kerf.ticks() / (StrictMath.cos(tilt) * StrictMath.cos(fence)) - 1e-9);
        if (end.isSquare()) {
            return square(taken);
        }
        if (section == null || (tilt > 0 && fence > 0)) {
            return full(taken);
        }
        double acrossMm = tilt > 0
                ? section.thickness().mm() * StrictMath.tan(tilt)
                : section.width().mm() * StrictMath.tan(fence);
        if (StrictMath.abs(acrossMm - end.offsetMm()) > SAME_MM) {
            return full(taken);
        }
        long back = (long) Math.floor(Math.min(acrossMm, end.offsetMm()) * Length.TICKS_PER_MM + 1e-6);
        return switch (end.longPoint()) {
            case NONE -> square(taken);
            case MARKED_FACE -> planar(0, 0, back, back, taken);
            case HIDDEN_FACE -> planar(back, back, 0, 0, taken);
            case UPPER_EDGE -> planar(0, back, 0, back, taken);
            case LOWER_EDGE -> planar(back, 0, back, 0, taken);
        };
    }

    /** With the board turned over about its length. */
    EndShape turned() {
        return new EndShape(
                /* faceUpper= */ backLower,
                /* faceLower= */ backUpper,
                /* backUpper= */ faceLower,
                /* backLower= */ faceUpper,
                kerfTicks,
                known);
    }

    /** With upper and lower edge changed, as when a piece is laid end for end. */
    EndShape edgesSwapped() {
        return new EndShape(
                /* faceUpper= */ faceLower,
                /* faceLower= */ faceUpper,
                /* backUpper= */ backLower,
                /* backLower= */ backUpper,
                kerfTicks,
                known);
    }

    public boolean isFull() {
        return faceUpper == 0 && faceLower == 0 && backUpper == 0 && backLower == 0;
    }

    /** How far the long points of two ends that face each other may pass, kerf left out. */
    public long overlap(EndShape next) {
        return Math.min(
                Math.min(faceUpper + next.faceUpper, faceLower + next.faceLower),
                Math.min(backUpper + next.backUpper, backLower + next.backLower));
    }

    /** Whether one cut makes both of two ends that face each other: their planes are parallel within rounding. */
    public boolean isMadeWith(EndShape next) {
        long least = overlap(next);
        return known
                && next.known
                && faceUpper + next.faceUpper - least <= 2
                && faceLower + next.faceLower - least <= 2
                && backUpper + next.backUpper - least <= 2
                && backLower + next.backLower - least <= 2;
    }
}
