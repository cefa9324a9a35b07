package borderwright.bench.solid;

import borderwright.engine.geometry.Point;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;

/**
 * Runs the package on a box until the states of its contacts and slipping screws agree with what they do.
 *
 * <p>Each run is linear, with springs that would pull where they may only press left out: a Newton step on an energy that is
 * made of parabolas and convex. Where a whole step goes too far, its least point is sought along it: all that takes are the
 * springs' own forces, since the bricks' part is in balance with them at either end.
 */
final class SolidRun {
    /** The package's command, of the archive's calculix-ccx. */
    private static final String COMMAND = "ccx";

    private static final int MOST_ROUNDS = 60;
    private static final int HALVINGS = 50;

    private final SolidBox solid;
    private final Path folder;

    SolidRun(SolidBox solid, Path folder) {
        this.solid = solid;
        this.folder = folder;
    }

    /** Whether the package is there. */
    static boolean isThere() {
        try {
            start(Path.of("."), "-v");
            return true;
        } catch (IOException missing) {
            return false;
        }
    }

    /** One linear solution, or a place on the way to one: how far each spring lengthens, mm, and its force, N. */
    private static final class Solution {
        final double[] stretchMm;
        final double[] forceN;

        /** Nodes that are read, mm on the plan. */
        final Map<Integer, Point> moved;

        Solution(double[] stretchMm, double[] forceN, Map<Integer, Point> moved) {
            this.stretchMm = stretchMm;
            this.forceN = forceN;
            this.moved = moved;
        }

        /** The forces that hold the bricks where they are on the way from here to another solution, and how far that is. */
        Solution towards(Solution other, double share) {
            return new Solution(mix(stretchMm, other.stretchMm, share), mix(forceN, other.forceN, share), other.moved);
        }

        private static double[] mix(double[] from, double[] to, double share) {
            double[] mixed = new double[from.length];
            for (int i = 0; i < mixed.length; i++) {
                mixed[i] = from[i] + share * (to[i] - from[i]);
            }
            return mixed;
        }
    }

    /**
     * The box at rest.
     *
     * @throws IOException where the package gives no answer or contacts do not settle
     */
    SolidAnswer solve() throws IOException {
        States states = new States(solid.links);
        Solution at = linear(states);
        for (int round = 2; round <= MOST_ROUNDS; round++) {
            states = states.after(at.stretchMm);
            Solution next = linear(states);
            if (states.after(next.stretchMm).differFrom(states) == 0) {
                return new SolidAnswer(solid, next.forceN, next.moved);
            }
            at = at.towards(next, step(states, at, next));
        }
        throw new IOException("contacts did not settle in " + MOST_ROUNDS + " rounds");
    }

    /** How far along a step the energy is least, 1 for all of it. */
    private static double step(States states, Solution from, Solution to) {
        double low = 0;
        double high = 1;
        if (slope(states, from, to, high) <= 0) {
            return high;
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (slope(states, from, to, middle) > 0) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return low;
    }

    private static double slope(States states, Solution from, Solution to, double share) {
        Solution here = from.towards(to, share);
        double[] real = states.after(here.stretchMm).forcesN(here.stretchMm);
        double slope = 0;
        for (int i = 0; i < real.length; i++) {
            slope += (real[i] - here.forceN[i]) * (to.stretchMm[i] - from.stretchMm[i]);
        }
        return slope;
    }

    private Solution linear(States states) throws IOException {
        Files.writeString(folder.resolve("box.inp"), DeckWriter.write(solid, states));
        Files.deleteIfExists(folder.resolve("box.dat"));
        start(folder, "box");
        Map<Integer, Point> moved = read(folder.resolve("box.dat"));
        double[] stretches = new double[solid.links.size()];
        for (int i = 0; i < stretches.length; i++) {
            Point row = moved.get(solid.nodes() + 1 + i);
            if (row == null) {
                throw new IOException("the package wrote nothing for spring " + i + "; its files are in " + folder);
            }
            stretches[i] = row.xMm() / Math.sqrt(solid.links.get(i).stiffness());
        }
        return new Solution(stretches, states.forcesN(stretches), moved);
    }

    private static Map<Integer, Point> read(Path file) throws IOException {
        Map<Integer, Point> moved = new HashMap<>();
        if (Files.exists(file)) {
            for (String line : Files.readAllLines(file)) {
                String[] cells = line.trim().split("\\s+", -1);
                if (cells.length == 4 && Character.isDigit(cells[0].charAt(0))) {
                    moved.put(
                            Integer.valueOf(cells[0]),
                            new Point(Double.parseDouble(cells[1]), Double.parseDouble(cells[2])));
                }
            }
        }
        return moved;
    }

    private static void start(Path folder, String argument) throws IOException {
        Process process = new ProcessBuilder(COMMAND, argument)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            process.waitFor();
        } catch (InterruptedException stopped) {
            process.destroy();
            Thread.currentThread().interrupt();
            throw new IOException("stopped while the package ran", stopped);
        }
    }
}
