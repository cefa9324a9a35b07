package borderwright.engine.buildup.joints;

import borderwright.engine.buildup.parts.ScrewLine;
import java.util.ArrayList;
import java.util.List;

/** The screws placed so far, to find room for the next ones. */
final class ScrewSpace {
    /** Between the axes of two screws, in diameters of the thicker: a2 of EN 1995-1-1 table 8.2 where holes are drilled. */
    private static final double WANTED = 3;

    /** Nearer than this the threads of crossing screws are in each other's way (common practice, no source). */
    private static final double LEAST = 1.5;

    private final List<Placed> placed = new ArrayList<>();

    private record Placed(ScrewLine line, double diameterMm) {}

    /**
     * Places the screws of a joint.
     *
     * @param choices of places for all of them together, best first; at least one
     * @param diameterMm of each
     * @return the first choice with room as wanted, else the first with the least room, else the roomiest
     */
    List<ScrewLine> take(List<List<ScrewLine>> choices, double diameterMm) {
        List<ScrewLine> best = choices.get(0);
        double most = -1;
        for (List<ScrewLine> choice : choices) {
            double room = StrictMath.min(WANTED, diameters(choice, diameterMm));
            if (room >= WANTED || (most < LEAST && room > most)) {
                best = choice;
                most = room;
            }
            if (most >= WANTED) {
                break;
            }
        }
        best.forEach(line -> placed.add(new Placed(line, diameterMm)));
        return best;
    }

    /** Whether one of these choices keeps the least distance from all that stand. */
    boolean hasRoom(List<List<ScrewLine>> choices, double diameterMm) {
        return choices.stream().anyMatch(choice -> diameters(choice, diameterMm) >= LEAST);
    }

    /** Least distance to any screw that stands, in diameters of the thicker of the two. */
    private double diameters(List<ScrewLine> lines, double diameterMm) {
        double least = Double.POSITIVE_INFINITY;
        for (ScrewLine line : lines) {
            for (Placed other : placed) {
                double thick = StrictMath.max(diameterMm, other.diameterMm);
                if (mayMeet(line, other.line, WANTED * thick)) {
                    least = StrictMath.min(least, line.nearestMm(other.line) / thick);
                }
            }
        }
        return least;
    }

    private static boolean mayMeet(ScrewLine a, ScrewLine b, double withinMm) {
        double reach = a.lengthMm() + b.lengthMm() + withinMm;
        return StrictMath.abs(a.zMm() - b.zMm()) < reach
                && StrictMath.abs(a.xMm() - b.xMm()) < reach
                && StrictMath.abs(a.yMm() - b.yMm()) < reach;
    }
}
