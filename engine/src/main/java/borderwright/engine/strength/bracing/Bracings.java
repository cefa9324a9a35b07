package borderwright.engine.strength.bracing;

import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.buildup.parts.BracingScheme;
import borderwright.engine.garden.BuildSpec;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.layout.plan.SidePlan;
import borderwright.engine.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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
    /** Further apart than any side is long. */
    static final double FAR_MM = 1e5;

    static final BracingScheme BARE = new BracingScheme(FAR_MM, 0, 75, List.of());

    /** Of the wall's height above the foot, where the middle of a tie may lie: the push's middle, and half-way. */
    private static final double[] HEIGHTS = {1 / 3.0, 1 / 2.0};

    private final double longestBayMm;
    private final double wallMm;
    private final double tieMm;
    private final boolean footed;
    private final Optional<Length> requestedBraces;
    private final Optional<Length> requestedTies;

    /**
     * Of one box.
     *
     * @param wallMm height of its wall
     * @param tieMm height of a tie
     * @param footed whether uprights are let into the ground, so that they hold by themselves
     * @param requested rules whose spacings are kept; nothing to pass over them
     */
    Bracings(FootprintPlan plan, double wallMm, double tieMm, boolean footed, Optional<BuildSpec> requested) {
        this.longestBayMm = longestBay(plan);
        this.wallMm = wallMm;
        this.tieMm = tieMm;
        this.footed = footed;
        this.requestedBraces = requested.flatMap(rules -> rules.bracing().braces());
        this.requestedTies = requested.flatMap(rules -> rules.bracing().ties());
    }

    /** Whether braces stand as requested, not as needed. */
    boolean keepsBraces() {
        return requestedBraces.isPresent();
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
        return requestedTies.isPresent()
                ? 1
                : 1 + (int) Math.min(MOST_TIES, Math.max(0, Math.floor(longestBayMm / CLOSEST_MM) - 1));
    }

    /** The ways of one class. */
    List<BracingScheme> of(int ties) {
        double apart =
                requestedTies.isPresent() ? requestedTies.get().mm() : ties == 0 ? 0 : longestBayMm / (ties + 1) + 1;
        List<BracingScheme> schemes = new ArrayList<>();
        for (double below : apart == 0 ? List.of(BARE.tieBelowRimMm()) : belowsMm()) {
            for (double brace : bracesMm(apart)) {
                schemes.add(new BracingScheme(brace, apart, below, List.of()));
            }
        }
        return schemes;
    }

    private List<Double> belowsMm() {
        List<Double> belows = new ArrayList<>(List.of(BARE.tieBelowRimMm()));
        for (double height : HEIGHTS) {
            double below = wallMm * (1 - height) - tieMm / 2;
            if (below > BARE.tieBelowRimMm() + 10) {
                belows.add(below);
            }
        }
        return belows;
    }

    private List<Double> bracesMm(double apartMm) {
        if (requestedBraces.isPresent()) {
            return List.of(requestedBraces.get().mm());
        }
        if (apartMm == 0 && footed) {
            return List.of(FAR_MM, longestBayMm / 2 + 1, longestBayMm / 3 + 1, longestBayMm / 4 + 1);
        }
        if (apartMm == 0) {
            return List.of(FAR_MM, longestBayMm / 2 + 1);
        }
        return apartMm > 2 * CLOSEST_MM ? List.of(FAR_MM, apartMm / 2 + 1) : List.of(FAR_MM);
    }
}
