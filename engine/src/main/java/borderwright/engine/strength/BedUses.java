package borderwright.engine.strength;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.garden.vocabulary.ground.FoundationSoil;
import borderwright.engine.measure.Gravity;
import borderwright.engine.strength.worked.StepMessage;
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
                / working.step(
                        "q bears",
                        StrengthStep.COMPACTED_GRAVEL,
                        FoundationSoil.GRAVEL.bearingKnPerM2(),
                        "kN/m2",
                        "IBC 2012 table 1806.2");
        if (terms.gravelMm() > 0) {
            worst.take(
                    PartKind.GRAVEL_BED,
                    CheckKind.GROUND,
                    PartMessage.UNDER_BOTTOM_COURSE::of,
                    PartMessage.OWN_WEIGHT_AND_PERSON::of,
                    onBed);
        }
        FoundationSoil ground = terms.postGround();
        double bears = ground.bearingKnPerM2();
        if (bears > 0) {
            WorstUses.Rule below = working ->
                    pressure(terms, heightM, thicknessM, densityKgPerM3, terms.gravelMm() * M_PER_MM, working)
                            / working.step("q bears", ground, bears, "kN/m2", "IBC 2012 table 1806.2");
            worst.take(
                    PartKind.GROUND,
                    CheckKind.GROUND,
                    (terms.gravelMm() > 0 ? PartMessage.UNDER_GRAVEL : PartMessage.UNDER_BOTTOM_COURSE)::of,
                    PartMessage.OWN_WEIGHT_AND_PERSON::of,
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
                StrengthStep.WALL_WEIGHT,
                densityKgPerM3 * Gravity.KN_PER_KG * heightM * thicknessM,
                "kN/m",
                "");
        double person = working.step(
                "w person",
                StrengthStep.PERSON_ON_WALL,
                terms.kneelingN() * KN_PER_N / (2 * heightM),
                "kN/m",
                StepMessage.COMMON_PRACTICE);
        double width = working.step(
                "width", StrengthStep.SPREAD_WIDTH, thicknessM + 2 * gravelM, "m", StepMessage.COMMON_PRACTICE);
        return working.step("q", "(w own + w person) / width", (own + person) / width, "kN/m2", "");
    }
}
