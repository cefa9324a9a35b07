package borderwright.engine.strength.timber;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Reference design values of NDS Supplement table 4A (2012 and later), psi: visually graded dimension lumber 2 to 4 in
 * thick. From memory, but for Douglas Fir-Larch Select Structural and No.1, which were read in published examples, and the
 * specific gravities, read in copies of NDS 2018 table 12.3.3A.
 *
 * @param name species group and grade
 * @param fb bending
 * @param ft tension along the grain
 * @param fv shear
 * @param fcPerp compression across the grain
 * @param fc compression along the grain
 * @param e mean modulus
 * @param eMin modulus for stability
 * @param g specific gravity
 */
public record NdsGrade(
        String name, double fb, double ft, double fv, double fcPerp, double fc, double e, double eMin, double g) {
    private static final List<NdsGrade> ALL = List.of(
            new NdsGrade("Northern Species No.3", 350, 150, 110, 350, 500, 1.0e6, 370e3, 0.35),
            new NdsGrade("Douglas Fir-Larch Select Structural", 1500, 1000, 180, 625, 1700, 1.9e6, 690e3, 0.50),
            new NdsGrade("Douglas Fir-Larch No.1", 1000, 675, 180, 625, 1500, 1.7e6, 620e3, 0.50),
            new NdsGrade("Douglas Fir-Larch No.2", 900, 575, 180, 625, 1350, 1.6e6, 580e3, 0.50),
            new NdsGrade("Hem-Fir No.2", 850, 525, 150, 405, 1300, 1.3e6, 470e3, 0.43),
            new NdsGrade("Spruce-Pine-Fir No.2", 875, 450, 135, 425, 1150, 1.4e6, 510e3, 0.42),
            new NdsGrade("Western Cedars No.2", 700, 425, 155, 425, 650, 1.0e6, 370e3, 0.36),
            new NdsGrade("Redwood No.2", 925, 525, 160, 650, 950, 1.2e6, 440e3, 0.37));

    /** The lowest entry, taken for boards without a stamp. */
    public static final NdsGrade LOWEST = ALL.get(0);

    public static List<NdsGrade> all() {
        return ALL;
    }

    public static Optional<NdsGrade> named(String name) {
        String wanted = name.strip().toLowerCase(Locale.ROOT);
        return ALL.stream()
                .filter(g -> g.name().toLowerCase(Locale.ROOT).equals(wanted))
                .findFirst();
    }
}
