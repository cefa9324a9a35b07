package borderwright.engine.strength.timber;

/** Reference withdrawal design values, lb per inch of penetration (NDS 12.2). */
public final class NdsWithdrawal {
    private NdsWithdrawal() {}

    /** Equation 12.2-1: lag screws. */
    public static double lagScrew(double g, double dIn) {
        return 1800 * StrictMath.pow(g, 1.5) * StrictMath.pow(dIn, 0.75);
    }

    /** Equation 12.2-2: wood screws, per inch of thread. */
    public static double woodScrew(double g, double dIn) {
        return 2850 * g * g * dIn;
    }

    /** Equation 12.2-3: smooth nails. */
    public static double smoothNail(double g, double dIn) {
        return 1380 * StrictMath.pow(g, 2.5) * dIn;
    }
}
