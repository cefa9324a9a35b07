package borderwright.engine.buildup.parts;

import borderwright.engine.garden.BuildSpec;
import borderwright.engine.measure.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * How closely a box is held: what the strength stage changes until its walls hold.
 *
 * @param braceSpacingMm greatest distance between uprights along a side, mm, above 0
 * @param tieSpacingMm greatest distance between ties across a planter, mm; 0 for none
 * @param tieBelowRimMm how far the top of a tie lies below the rim, mm
 * @param bareSides indices of sides that have no braces, in order
 */
public record BracingScheme(double braceSpacingMm, double tieSpacingMm, double tieBelowRimMm, List<Integer> bareSides) {
    /** Common practice, no source: deep enough to dig over without striking it. */
    private static final double TIE_BELOW_RIM_MM = 75;

    private static final double BRACES_MM = 600;
    private static final double TIES_MM = 1200;

    public BracingScheme {
        bareSides = List.copyOf(bareSides);
        if (!(braceSpacingMm > 0) || tieSpacingMm < 0 || tieBelowRimMm < 0) {
            throw new IllegalArgumentException("spacings above 0 wanted, got braces " + braceSpacingMm + ", ties "
                    + tieSpacingMm + ", ties below the rim " + tieBelowRimMm + " mm");
        }
    }

    /** What the rules ask for; where they leave it to the strength stage, what its search begins with. */
    public static BracingScheme of(BuildSpec rules) {
        return new BracingScheme(
                rules.bracing().braces().map(Length::mm).orElse(BRACES_MM),
                rules.bracing().ties().map(Length::mm).orElse(TIES_MM),
                TIE_BELOW_RIM_MM,
                List.of());
    }

    /** The same with other spacings everywhere. */
    public BracingScheme withSpacings(double braceMm, double tieMm) {
        return new BracingScheme(braceMm, tieMm, tieBelowRimMm, bareSides);
    }

    /** The same with no braces on one more side. */
    public BracingScheme withoutBraces(int side) {
        List<Integer> bare = new ArrayList<>(bareSides);
        bare.add(side);
        bare.sort(null);
        return new BracingScheme(braceSpacingMm, tieSpacingMm, tieBelowRimMm, bare);
    }

    public double braceSpacingMm(int side) {
        return bareSides.contains(side) ? Double.POSITIVE_INFINITY : braceSpacingMm;
    }
}
