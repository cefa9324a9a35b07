package borderwright.engine.survey.network;

import borderwright.engine.geometry.Point;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Gathers points and observations; point numbers are given in order of first mention. */
public final class NetworkBuilder {
    static final class Held {
        boolean inPlan;
        boolean hasHeight;
        boolean heightGiven;
        boolean carriesDatum;
        double givenHeight;

        @Nullable
        Point givenPlace;
    }

    final Map<String, Integer> numbers = new LinkedHashMap<>();
    final List<Held> held = new ArrayList<>();
    final List<Observation> observations = new ArrayList<>();
    final List<Clue> clues = new ArrayList<>();

    boolean planIsGiven() {
        return held.stream().anyMatch(h -> h.givenPlace != null);
    }

    public int number(String name) {
        Integer known = numbers.get(name);
        if (known != null) {
            return known;
        }
        numbers.put(name, held.size());
        held.add(new Held());
        return held.size() - 1;
    }

    int planned(String name) {
        int point = number(name);
        held.get(point).inPlan = true;
        return point;
    }

    int levelled(String name) {
        int point = number(name);
        held.get(point).hasHeight = true;
        return point;
    }

    public NetworkBuilder given(String name, double x, double y) {
        held.get(planned(name)).givenPlace = new Point(x, y);
        return this;
    }

    public NetworkBuilder givenHeight(String name, double height) {
        Held point = held.get(levelled(name));
        point.heightGiven = true;
        point.givenHeight = height;
        return this;
    }

    /** A point that must be found in the plan and over which an inner datum is spread. */
    public NetworkBuilder corner(String name) {
        held.get(planned(name)).carriesDatum = true;
        return this;
    }

    public NetworkBuilder distance(String a, String b, double measured, double sd) {
        observations.add(new Observation.Distance(planned(a), planned(b), measured, sd));
        clues.add(new Clue.Apart(number(a), number(b), measured, sd));
        return this;
    }

    /**
     * A distance along the slope.
     *
     * @param level the horizontal distance that goes with it as far as known, for the starting positions
     */
    public NetworkBuilder slopeDistance(String a, String b, double measured, double level, double sd) {
        observations.add(new Observation.SlopeDistance(planned(a), planned(b), measured, sd));
        clues.add(new Clue.Apart(number(a), number(b), level, sd));
        return this;
    }

    /** The angle at the middle point, anticlockwise from the first to the last. */
    public NetworkBuilder turn(String from, String at, String to, double measured, double sd) {
        observations.add(new Observation.Turn(planned(at), planned(from), planned(to), measured, sd));
        clues.add(Clue.Turned.oneWay(number(at), number(from), number(to), measured, sd));
        return this;
    }

    /** The angle at the middle point as a gauge shows it, to either side. */
    public NetworkBuilder gauge(String from, String at, String to, double measured, double sd) {
        observations.add(Observation.Gauge.toTheLeft(planned(at), planned(from), planned(to), measured, sd));
        clues.add(Clue.Turned.eitherWay(number(at), number(from), number(to), measured, sd));
        return this;
    }

    /** A direction, anticlockwise from x. */
    public NetworkBuilder direction(String from, String to, double measured, double sd) {
        observations.add(new Observation.Direction(planned(from), planned(to), measured, sd));
        clues.add(new Clue.Heading(number(from), number(to), measured, sd));
        return this;
    }

    /** A point along a baseline and square off it, positive to the left: two observations. */
    public NetworkBuilder offset(
            String point, String a, String b, double along, double off, double sdAlong, double sdOff) {
        int p = planned(point);
        int from = planned(a);
        int to = planned(b);
        observations.add(new Observation.Along(p, from, to, along, sdAlong));
        observations.add(new Observation.Off(p, from, to, off, sdOff));
        double distance = StrictMath.hypot(along, off);
        clues.add(new Clue.Apart(from, p, distance, sdAlong));
        double sdTurn = sdOff / Math.max(distance, sdOff);
        clues.add(Clue.Turned.oneWay(from, to, p, StrictMath.atan2(off, along), sdTurn));
        return this;
    }

    /** A point between two others stands on their line, within a standard deviation. */
    public NetworkBuilder straight(String point, String a, String b, double sd) {
        observations.add(new Observation.Off(planned(point), planned(a), planned(b), 0, sd));
        return this;
    }

    /** Points in line, for the starting positions only. */
    public NetworkBuilder inLine(List<String> points, List<Double> marks) {
        clues.add(new Clue.InLine(points.stream().map(this::planned).toList(), marks));
        return this;
    }

    /** Height of a point above the datum. */
    public NetworkBuilder height(String point, double measured, double sd) {
        observations.add(
                new Observation.HeightDifference(Observation.HeightDifference.DATUM, levelled(point), measured, sd));
        return this;
    }

    public NetworkBuilder rise(String from, String to, double measured, double sd) {
        observations.add(new Observation.HeightDifference(levelled(from), levelled(to), measured, sd));
        return this;
    }

    List<String> names() {
        return List.copyOf(numbers.keySet());
    }

    List<Observation> observations() {
        return List.copyOf(observations);
    }

    List<Clue> clues() {
        return List.copyOf(clues);
    }

    Held held(int point) {
        return held.get(point);
    }

    /** Number of observations so far. */
    public int observed() {
        return observations.size();
    }

    public Network build() {
        return new Network(this);
    }
}
