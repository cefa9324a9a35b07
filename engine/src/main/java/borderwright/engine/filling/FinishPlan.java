package borderwright.engine.filling;

/**
 * What is brushed on.
 *
 * @param outerM2 area of outer faces and capping, m2
 * @param coats coats of finish; 0 for none
 * @param finishLitres finish for all coats, litres
 * @param cutEnds ends of pieces of treated sections
 * @param preservativeLitres preservative for these ends, two coats, litres
 */
public record FinishPlan(double outerM2, int coats, double finishLitres, int cutEnds, double preservativeLitres) {}
