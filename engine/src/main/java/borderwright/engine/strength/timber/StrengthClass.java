package borderwright.engine.strength.timber;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A strength class of EN 338:2016, tables 1 (softwood) and 3 (hardwood).
 *
 * @param name such as {@code C16}
 * @param fmk bending, N/mm2
 * @param ft0k tension along the grain, N/mm2
 * @param fc0k compression along the grain, N/mm2
 * @param fc90k compression across the grain, N/mm2
 * @param fvk shear, N/mm2
 * @param e0Mean mean modulus along the grain, N/mm2
 * @param e005 its 5-percentile, N/mm2
 * @param e90Mean mean modulus across the grain, N/mm2
 * @param gMean mean shear modulus, N/mm2
 * @param rhoK characteristic density, kg/m3
 * @param rhoMean mean density, kg/m3
 */
public record StrengthClass(
        String name,
        double fmk,
        double ft0k,
        double fc0k,
        double fc90k,
        double fvk,
        double e0Mean,
        double e005,
        double e90Mean,
        double gMean,
        double rhoK,
        double rhoMean) {

    private static final List<StrengthClass> ALL = List.of(
            new StrengthClass("C14", 14, 7.2, 16, 2.0, 3.0, 7000, 4700, 230, 440, 290, 350),
            new StrengthClass("C16", 16, 8.5, 17, 2.2, 3.2, 8000, 5400, 270, 500, 310, 370),
            new StrengthClass("C18", 18, 10, 18, 2.2, 3.4, 9000, 6000, 300, 560, 320, 380),
            new StrengthClass("C20", 20, 11.5, 19, 2.3, 3.6, 9500, 6400, 320, 590, 330, 400),
            new StrengthClass("C22", 22, 13, 20, 2.4, 3.8, 10000, 6700, 330, 630, 340, 410),
            new StrengthClass("C24", 24, 14.5, 21, 2.5, 4.0, 11000, 7400, 370, 690, 350, 420),
            new StrengthClass("C27", 27, 16.5, 22, 2.5, 4.0, 11500, 7700, 380, 720, 360, 430),
            new StrengthClass("C30", 30, 19, 24, 2.7, 4.0, 12000, 8000, 400, 750, 380, 460),
            new StrengthClass("C35", 35, 22.5, 25, 2.7, 4.0, 13000, 8700, 430, 810, 390, 470),
            new StrengthClass("D18", 18, 11, 18, 4.8, 3.5, 9500, 8000, 630, 590, 475, 570),
            new StrengthClass("D24", 24, 14, 21, 4.9, 3.7, 10000, 8400, 670, 630, 485, 580),
            new StrengthClass("D30", 30, 18, 24, 5.3, 3.9, 11000, 9200, 730, 690, 530, 640),
            new StrengthClass("D40", 40, 24, 27, 5.5, 4.2, 13000, 10900, 870, 810, 550, 660));

    /** The lowest class of softwood, taken for boards without a grade stamp. */
    public static final StrengthClass LOWEST = ALL.get(0);

    public static List<StrengthClass> all() {
        return ALL;
    }

    /** The class of that name, upper or lower case. */
    public static Optional<StrengthClass> named(String name) {
        String upper = name.strip().toUpperCase(Locale.ROOT);
        return ALL.stream().filter(c -> c.name().equals(upper)).findFirst();
    }
}
