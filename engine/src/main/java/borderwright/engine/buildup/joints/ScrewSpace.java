package borderwright.engine.buildup.joints;

import borderwright.engine.buildup.parts.ScrewLine;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The screws placed so far, to find room for the next ones. */
final class ScrewSpace {
    /** Between the axes of two screws, in diameters of the thicker: a2 of EN 1995-1-1 table 8.2 where holes are drilled. */
    private static final double WANTED = 3;

    /** Nearer than this the threads of crossing screws are in each other's way (common practice, no source). */
    private static final double LEAST = 1.5;

    /** So many choices are looked at for the room that is wanted; then the least room will do, near the usual place. */
    private static final int ENOUGH = 60;

    private final ScrewGrid grid = new ScrewGrid();
    private double thickestMm = 0;

    /** Choices as they come, and the best of them so far. */
    private final class Best {
        private final double diameterMm;
        private @Nullable List<ScrewLine> lines;
        private double room = -1;
        private int seen = 0;

        Best(double diameterMm) {
            this.diameterMm = diameterMm;
        }

        /** Looks at choices in their order, up to one that settles it; whether there is such a one. */
        boolean looksAt(Stream<List<ScrewLine>> choices) {
            return choices.sequential().anyMatch(this::settles);
        }

        /** Looks at a choice; whether no other need be looked at. */
        private boolean settles(List<ScrewLine> choice) {
            double most = StrictMath.min(WANTED, diameters(choice, diameterMm, room >= LEAST ? WANTED : room));
            if (lines == null || most >= WANTED || (room < LEAST && most > room)) {
                lines = choice;
                room = most;
            }
            seen++;
            return room >= WANTED || (room >= LEAST && seen >= ENOUGH);
        }

        List<ScrewLine> taken() {
            List<ScrewLine> taken = Objects.requireNonNull(lines, "lines");
            taken.forEach(line -> grid.put(new ScrewGrid.Placed(line, diameterMm)));
            thickestMm = StrictMath.max(thickestMm, diameterMm);
            return taken;
        }
    }

    /**
     * Places the screws of a joint.
     *
     * @param choices of places for all of them together, best first; at least one; looked at only until one has room
     * @param diameterMm of each
     * @return the first of {@link #ENOUGH} choices with room as wanted, else the first with the least room, else the roomiest
     */
    List<ScrewLine> take(Stream<List<ScrewLine>> choices, double diameterMm) {
        Best best = new Best(diameterMm);
        if (!best.looksAt(choices) && best.room < 0) {
            throw new IllegalArgumentException("no choice of places for a screw of " + diameterMm + " mm");
        }
        return best.taken();
    }

    /** The same, but nothing is placed where no choice keeps the least distance from all that stand. */
    Optional<List<ScrewLine>> takeWithRoom(Stream<List<ScrewLine>> choices, double diameterMm) {
        Best best = new Best(diameterMm);
        boolean hasRoom = best.looksAt(choices) || best.room >= LEAST;
        return hasRoom ? Optional.of(best.taken()) : Optional.empty();
    }

    /**
     * Least distance to any screw that stands, in diameters of the thicker of the two.
     *
     * @param enough where one is nearer than this, no nearer one is looked for: such a choice is not taken
     */
    private double diameters(List<ScrewLine> lines, double diameterMm, double enough) {
        double least = Double.POSITIVE_INFINITY;
        for (ScrewLine line : lines) {
            for (ScrewGrid.Placed other : grid.near(line, WANTED * StrictMath.max(diameterMm, thickestMm))) {
                double thick = StrictMath.max(diameterMm, other.diameterMm());
                if (mayMeet(line, other.line(), WANTED * thick)) {
                    least = StrictMath.min(least, line.nearestMm(other.line()) / thick);
                }
                if (least < enough) {
                    return least;
                }
            }
        }
        return least;
    }

    /** Whether their heights come so near to each other. */
    private static boolean mayMeet(ScrewLine a, ScrewLine b, double withinMm) {
        double reachA = a.alongZ() * a.lengthMm();
        double reachB = b.alongZ() * b.lengthMm();
        return a.zMm() + StrictMath.min(0, reachA) < b.zMm() + StrictMath.max(0, reachB) + withinMm
                && b.zMm() + StrictMath.min(0, reachB) < a.zMm() + StrictMath.max(0, reachA) + withinMm;
    }
}
