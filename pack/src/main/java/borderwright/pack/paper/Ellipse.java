package borderwright.pack.paper;

import java.util.ArrayList;
import java.util.List;

/** An ellipse as a polygon of so many sides that no eye tells the difference. */
public final class Ellipse {
    private static final int SIDES = 40;

    private Ellipse() {}

    /** Its corners, going round; {@code turnRad} turns its long axis anticlockwise from the x axis. */
    public static List<Spot> spots(Spot middle, double majorMm, double minorMm, double turnRad) {
        List<Spot> spots = new ArrayList<>(SIDES);
        double c = StrictMath.cos(turnRad);
        double s = StrictMath.sin(turnRad);
        for (int i = 0; i < SIDES; i++) {
            double a = 2 * StrictMath.PI * i / SIDES;
            double u = majorMm * StrictMath.cos(a);
            double v = minorMm * StrictMath.sin(a);
            spots.add(middle.plus(u * c - v * s, -(u * s + v * c)));
        }
        return spots;
    }
}
