package borderwright.bench.solid;

import borderwright.engine.garden.vocabulary.ground.SoilPush;
import borderwright.engine.strength.soil.Fill;

/**
 * The fill for good, worked out here once more: at rest after Jaky, 1 - sin phi, or active after Rankine,
 * tan2(45 - phi / 2) (Das, Principles of Foundation Engineering; from memory).
 *
 * @param perMm3 pressure for each mm of depth, N/mm3
 * @param onTop pressure at the surface from what is heaped on it, N/mm2
 * @param backPerMm3 what the fill presses back more for each mm of depth when it is pushed as far as 10 mm, N/mm3
 */
record FillLaw(double perMm3, double onTop, double backPerMm3) {
    private static final double N_PER_MM3 = 1e-6;

    static FillLaw of(Fill fill) {
        if (fill.arching()) {
            throw new IllegalArgumentException("fill that arches is not compared");
        }
        double half = Math.PI / 4 - fill.phi() / 2;
        double active = Math.pow(Math.tan(half), 2);
        double share = fill.push() == SoilPush.AT_REST ? 1 - Math.sin(fill.phi()) : active;
        double weight = fill.moistKnPerM3() * N_PER_MM3;
        return new FillLaw(share * weight, share * weight * fill.heapedMm(), (1 / active - share) * weight);
    }

    double push(double depthMm) {
        return onTop + perMm3 * depthMm;
    }

    double pressesBack(double depthMm) {
        return backPerMm3 * depthMm;
    }
}
