package borderwright.engine.strength;

import borderwright.engine.buildup.BracingScheme;
import borderwright.engine.buildup.SideFrame;
import borderwright.engine.layout.FootprintPlan;
import borderwright.engine.layout.SidePlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The ways of bracing a box that are worth trying, in classes of about alike cost: how many ties divide the longest bay,
 * how deep they lie, and whether braces stand half-way between them.
 *
 * <p>Ties near the rim let the foot of the wall swing out; one at a third of the height takes the push of the soil in its
 * middle. Braces without ties share load between courses and no more.
 */
final class Bracings {
    /** Ties closer than this leave no room to garden (common practice, no source). */
    private static final double CLOSEST_MM = 300;

    private static final int MOST_TIES = 6;
    private static final double FAR_MM = 1e5;

    /** Of the wall's height above the foot, where the middle of a tie may lie: the push's middle, and half-way. */
    private static final double[] HEIGHTS = {1 / 3.0, 1 / 2.0};

    private final double longestBayMm;
    private final double wallMm;
    private final double tieMm;
    private final double habitBelowMm;

    /**
     * Of one box.
     *
     * @param wallMm height of its wall
     * @param tieMm height of a tie
     * @param habitBelowMm how far a tie lies below the rim by habit
     */
    Bracings(FootprintPlan plan, double wallMm, double tieMm, double habitBelowMm) {
        this.longestBayMm = longestBay(plan);
        this.wallMm = wallMm;
        this.tieMm = tieMm;
        this.habitBelowMm = habitBelowMm;
    }

    private static double longestBay(FootprintPlan plan) {
        double longest = 0;
        for (SideFrame side : SideFrame.of(plan.outline())) {
            SidePlan.Role role = plan.sides().get(side.side()).role();
            if (role == SidePlan.Role.END) {
                continue;
            }
            List<Double> across = new ArrayList<>(List.of(0.0, side.lengthMm()));
            plan.dividers().forEach(divider -> {
                if (divider.fromSide() == side.side()) {
                    across.add(side.s(divider.from()));
                } else if (divider.toSide() == side.side()) {
                    across.add(side.s(divider.to()));
                }
            });
            across.sort(null);
            for (int i = 1; i < across.size(); i++) {
                longest = Math.max(longest, across.get(i) - across.get(i - 1));
            }
        }
        return longest;
    }

    /** How many classes there are: without ties, with one in the longest bay, and so on. */
    int classes() {
        return 1 + (int) Math.min(MOST_TIES, Math.max(0, Math.floor(longestBayMm / CLOSEST_MM) - 1));
    }

    /** The ways of one class. */
    List<BracingScheme> of(int ties) {
        List<BracingScheme> schemes = new ArrayList<>();
        double apart = longestBayMm / (ties + 1) + 1;
        if (ties == 0) {
            schemes.add(scheme(FAR_MM, 0, habitBelowMm));
            schemes.add(scheme(longestBayMm / 2 + 1, 0, habitBelowMm));
            return schemes;
        }
        List<Double> belows = new ArrayList<>(List.of(habitBelowMm));
        for (double height : HEIGHTS) {
            double below = wallMm * (1 - height) - tieMm / 2;
            if (below > habitBelowMm + 10) {
                belows.add(below);
            }
        }
        for (double below : belows) {
            schemes.add(scheme(FAR_MM, apart, below));
            if (apart > 2 * CLOSEST_MM) {
                schemes.add(scheme(apart / 2 + 1, apart, below));
            }
        }
        return schemes;
    }

    private static BracingScheme scheme(double braceMm, double tieMm, double belowMm) {
        return new BracingScheme(braceMm, tieMm, belowMm, Map.of());
    }
}
