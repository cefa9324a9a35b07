package borderwright.engine.survey.network;

import java.util.List;

/**
 * Where a measure lets a point lie before any place is known; starting positions are found from these.
 * Lengths in the network's unit, angles in radians, anticlockwise positive.
 */
public sealed interface Clue {

    /** Two points lie this far apart. */
    record Apart(int a, int b, double distance, double sd) implements Clue {}

    /**
     * The angle at a point from one direction to another.
     *
     * @param eitherWay whether it may turn to the left or to the right
     */
    record Turned(int at, int from, int to, double angle, double sd, boolean eitherWay) implements Clue {
        /** Anticlockwise, as measured. */
        static Turned oneWay(int at, int from, int to, double angle, double sd) {
            return new Turned(at, from, to, angle, sd, false);
        }

        /** As a gauge shows it. */
        static Turned eitherWay(int at, int from, int to, double angle, double sd) {
            return new Turned(at, from, to, angle, sd, true);
        }
    }

    /** The direction from one point to another, from x. */
    record Heading(int from, int to, double angle, double sd) implements Clue {}

    /**
     * Points lie on one straight line.
     *
     * @param points at least two
     * @param marks how far along each lies, from the first
     */
    record InLine(List<Integer> points, List<Double> marks) implements Clue {
        public InLine {
            points = List.copyOf(points);
            marks = List.copyOf(marks);
        }
    }
}
