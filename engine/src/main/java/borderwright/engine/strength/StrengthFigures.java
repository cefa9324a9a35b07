package borderwright.engine.strength;

import borderwright.engine.measure.LengthFormat;
import borderwright.engine.measure.UnitSystem;
import java.util.Locale;

/** Figures in a report's sentences, in the garden's units. */
final class StrengthFigures {
    private static final double FAR_MM = 200;
    private static final double N_PER_LB = 4.4482216152605;
    private static final double KN_PER_M3_PER_PCF = 0.157087;

    private StrengthFigures() {}

    static String bow(StrengthTerms terms, double mm) {
        return mm > FAR_MM ? "more than " + length(terms, FAR_MM) + " (next to nothing holds it)" : length(terms, mm);
    }

    static String length(StrengthTerms terms, double mm) {
        return new LengthFormat(terms.units()).piece(mm);
    }

    static String force(StrengthTerms terms, double n) {
        return terms.units() == UnitSystem.IMPERIAL
                ? String.format(Locale.ROOT, "%.0f lb", n / N_PER_LB)
                : String.format(Locale.ROOT, "%.2f kN", n / 1000);
    }

    static String weight(StrengthTerms terms, double knPerM3) {
        return terms.units() == UnitSystem.IMPERIAL
                ? String.format(Locale.ROOT, "%.0f lb/ft3", knPerM3 / KN_PER_M3_PER_PCF)
                : String.format(Locale.ROOT, "%.1f kN/m3", knPerM3);
    }

    static String percent(double use) {
        return use > 9.99 ? "more than 999 %" : String.format(Locale.ROOT, "%.0f %%", 100 * use);
    }
}
