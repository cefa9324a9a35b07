package borderwright.engine.strength.timber;

/** Reference withdrawal design values, lb per inch of penetration (NDS 12.2). */
public final class NdsWithdrawal {
    private NdsWithdrawal() {}

    /** Equation 12.2-2: wood screws, per inch of thread. */
    public static double woodScrew(double g, double dIn) {
        return 2850 * g * g * dIn;
    }

    /** Equation 12.2-3: smooth nails. */
    public static double smoothNail(double g, double dIn) {
        return 1380 * StrictMath.pow(g, 2.5) * dIn;
    }
}
