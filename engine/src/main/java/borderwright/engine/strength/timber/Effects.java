package borderwright.engine.strength.timber;

/**
 * Load effects in one cross-section.
 *
 * @param flatNmm moment that bends it through its thickness
 * @param edgeNmm moment that bends it through its width
 * @param axialN tension positive
 */
public record Effects(double flatNmm, double edgeNmm, double axialN) {}
