package borderwright.pack.drawings;

import borderwright.pack.paper.Spot;
import borderwright.pack.paper.TextSize;
import borderwright.pack.paper.TypeFace;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The largest size at which a name fits into its planter, level or else upwards; the usual size where none does.
 *
 * @param size of its letters
 * @param turnDeg 0 level, 90 upwards
 */
record NameFit(TextSize size, double turnDeg) {
    private static final double CLEAR_MM = 0.4;

    static NameFit of(String name, List<Spot> planter) {
        double width = span(planter, Spot::x);
        double height = span(planter, Spot::y);
        for (TextSize size : List.of(TextSize.NAME, TextSize.NORMAL, TextSize.FINE)) {
            double along = TypeFace.BOLD.widthEm(name) * size.emMm() + CLEAR_MM;
            double across = 1.02 * size.emMm() + CLEAR_MM;
            if (along <= width && across <= height) {
                return new NameFit(size, 0);
            }
            if (along <= height && across <= width) {
                return new NameFit(size, 90);
            }
        }
        return new NameFit(TextSize.NAME, 0);
    }

    private static double span(List<Spot> planter, ToDoubleFunction<Spot> axis) {
        return planter.stream().mapToDouble(axis).max().orElseThrow()
                - planter.stream().mapToDouble(axis).min().orElseThrow();
    }
}
