package borderwright.engine.filling;

/**
 * How far a filling sinks, as a range.
 *
 * @param allowed what is ordered for it, as a fraction of what is put in
 * @param leastM3 what it may sink by in the first season at the least, m3
 * @param mostM3 at the most, m3
 * @param yearlyLeastM3 top-up in a later year at the least, m3
 * @param yearlyMostM3 at the most, m3
 */
public record Settlement(double allowed, double leastM3, double mostM3, double yearlyLeastM3, double yearlyMostM3) {
    /** Fresh mixes sink 10 to 25 % where 15 % is allowed for: two thirds to five thirds of it (common practice). */
    private static final double LEAST = 2.0 / 3;

    private static final double MOST = 5.0 / 3;

    /** Yearly top-up, m of depth (common practice, no source). */
    private static final double YEARLY_LEAST_M = 0.050;

    private static final double YEARLY_MOST_M = 0.075;

    /** Of what is put in, m3. */
    static Settlement of(double allowed, double putInM3, double growingM2) {
        return new Settlement(
                allowed,
                putInM3 * allowed * LEAST,
                putInM3 * allowed * MOST,
                growingM2 * YEARLY_LEAST_M,
                growingM2 * YEARLY_MOST_M);
    }
}
