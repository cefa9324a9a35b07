package borderwright.engine.strength;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.measure.Gravity;
import borderwright.engine.strength.soil.GroundKind;
import borderwright.engine.strength.worked.Working;

/** What the bottom course presses on its gravel bed, and the bed on the ground below. */
final class BedUses {
    private static final double KN_PER_N = 1e-3;
    private static final double M_PER_MM = 1e-3;

    private BedUses() {}

    /**
     * Both checks.
     *
     * @param wallMm thickness of the walls
     * @param densityKgPerM3 of the walls
     */
    static void take(Box box, StrengthTerms terms, double wallMm, double densityKgPerM3, WorstUses worst) {
        double heightM = (box.courses().get(box.courses().size() - 1).topMm()
                        - box.courses().get(0).bottomMm())
                * M_PER_MM;
        double thicknessM = wallMm * M_PER_MM;
        WorstUses.Rule onBed = working -> pressure(terms, heightM, thicknessM, densityKgPerM3, 0, working)
                / working.given(
                        "q bears",
                        "compacted gravel",
                        GroundKind.GRAVEL.bearingKnPerM2(),
                        "kN/m2",
                        "IBC 2012 table 1806.2");
        if (terms.gravelMm() > 0) {
            worst.take(
                    "gravel bed",
                    Clauses.GROUND,
                    "under the bottom course",
                    "own weight and a person on the edge",
                    onBed);
        }
        double bears = terms.ground().bearingKnPerM2();
        if (bears > 0) {
            WorstUses.Rule below = working ->
                    pressure(terms, heightM, thicknessM, densityKgPerM3, terms.gravelMm() * M_PER_MM, working)
                            / working.given("q bears", terms.ground().words(), bears, "kN/m2", "IBC 2012 table 1806.2");
            worst.take(
                    "ground",
                    Clauses.GROUND,
                    terms.gravelMm() > 0 ? "under the gravel" : "under the bottom course",
                    "own weight and a person on the edge",
                    below);
        }
    }

    private static double pressure(
            StrengthTerms terms,
            double heightM,
            double thicknessM,
            double densityKgPerM3,
            double gravelM,
            Working working) {
        double own = working.step(
                "w own",
                "density x 9.80665 x height x thickness",
                densityKgPerM3 * Gravity.KN_PER_KG * heightM * thicknessM,
                "kN/m",
                "");
        double person = working.step(
                "w person",
                "weight / (2 x height): spread at 45 degrees down the wall",
                terms.kneelingN() * KN_PER_N / (2 * heightM),
                "kN/m",
                "common practice, no source");
        double width = working.step(
                "width",
                "thickness + 2 x gravel: spread at 45 degrees",
                thicknessM + 2 * gravelM,
                "m",
                "common practice, no source");
        return working.step("q", "(w own + w person) / width", (own + person) / width, "kN/m2", "");
    }
}
