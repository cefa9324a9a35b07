package borderwright.engine.buildup.parts;

import borderwright.engine.geometry.Ring;
import java.util.List;
import java.util.Optional;

/**
 * The hole of a post or brace that is let into the ground, filled with concrete round the post.
 *
 * @param widthMm its width
 * @param depthMm its depth below the bed
 * @param postMm2 what the post takes up on the plan
 */
public record PostHole(double widthMm, double depthMm, double postMm2) {
    /** Concrete on every side of a post (common practice, no source). */
    private static final double COVER_MM = 75;

    private static final double LEAST_MM = 50;

    /** One for each post and brace that goes below the bed. */
    public static List<PostHole> of(List<Piece> pieces, double bedMm) {
        return pieces.stream()
                .filter(p -> p.role() == Piece.Role.POST || p.role() == Piece.Role.BRACE)
                .flatMap(p -> of(p, bedMm).stream())
                .toList();
    }

    /** That of one upright; none for one that stands on the bed. */
    public static Optional<PostHole> of(Piece upright, double bedMm) {
        Ring plan = upright.place().plan();
        double depthMm = bedMm - upright.place().bottomMm();
        return depthMm <= LEAST_MM
                ? Optional.empty()
                : Optional.of(new PostHole(plan.longestSideMm() + 2 * COVER_MM, depthMm, plan.areaMm2()));
    }

    /** Earth taken out, mm3, as a square hole. */
    public double dugMm3() {
        return widthMm * widthMm * depthMm;
    }

    /** Concrete put in, mm3. */
    public double concreteMm3() {
        return dugMm3() - postMm2 * depthMm;
    }
}
