package borderwright.engine.survey.network;

import java.util.ArrayList;
import java.util.List;

/**
 * Points, what was observed between them, and what holds them in place.
 *
 * <p>The datum of the plan is either given (points with given places, and perhaps a direction) or inner: the sum of the
 * squared corrections of the {@code datumPoints} is least, so that no corner is declared exact (decision record 0010).
 */
public final class Network {
    private static final int GIVEN = -1;

    private final List<String> names;
    private final List<Observation> observations;
    private final List<Clue> clues;
    private final List<Integer> datumPoints;
    private final Positions given;
    private final int[] placeUnknown;
    private final int[] heightUnknown;
    private final boolean[] inPlan;
    private final boolean[] hasHeight;
    private final int unknowns;

    Network(NetworkBuilder made) {
        names = made.names();
        observations = made.observations();
        clues = made.clues();
        int n = names.size();
        given = new Positions(n);
        placeUnknown = new int[n];
        heightUnknown = new int[n];
        inPlan = new boolean[n];
        hasHeight = new boolean[n];
        List<Integer> datum = new ArrayList<>();
        int next = 0;
        for (int i = 0; i < n; i++) {
            NetworkBuilder.Held held = made.held(i);
            inPlan[i] = held.inPlan;
            boolean free = held.inPlan && held.givenPlace == null;
            placeUnknown[i] = free ? next : GIVEN;
            next += free ? 2 : 0;
            if (held.givenPlace != null) {
                given.place(i, held.givenPlace);
            }
            if (free && held.carriesDatum) {
                datum.add(i);
            }
        }
        for (int i = 0; i < n; i++) {
            NetworkBuilder.Held held = made.held(i);
            hasHeight[i] = held.hasHeight;
            boolean free = held.hasHeight && !held.heightGiven;
            heightUnknown[i] = free ? next++ : GIVEN;
            given.setHeight(i, held.givenHeight);
        }
        unknowns = next;
        datumPoints = made.planIsGiven() ? List.of() : List.copyOf(datum);
    }

    private Network(Network from, List<Observation> observations) {
        this.names = from.names;
        this.observations = List.copyOf(observations);
        this.clues = from.clues;
        this.datumPoints = from.datumPoints;
        this.given = from.given;
        this.placeUnknown = from.placeUnknown;
        this.heightUnknown = from.heightUnknown;
        this.inPlan = from.inPlan;
        this.hasHeight = from.hasHeight;
        this.unknowns = from.unknowns;
    }

    /** The same points with other observations. */
    Network with(List<Observation> others) {
        return new Network(this, others);
    }

    /** The same network without one of its observations. */
    public Network without(int observation) {
        List<Observation> rest = new ArrayList<>(observations);
        rest.remove(observation);
        return with(rest);
    }

    /** The same network with one observation more, in the place of that number. */
    public Network inserting(int number, Observation observation) {
        List<Observation> all = new ArrayList<>(observations);
        all.add(number, observation);
        return with(all);
    }

    public int points() {
        return names.size();
    }

    public String name(int point) {
        return names.get(point);
    }

    public List<String> names() {
        return names;
    }

    public List<Observation> observations() {
        return observations;
    }

    public List<Clue> clues() {
        return clues;
    }

    /** Points over which the plan datum is spread; empty when it is given. */
    List<Integer> datumPoints() {
        return datumPoints;
    }

    /** Number of plan movements that no observation can know: two shifts and a turn, or none. */
    int datumDefect() {
        return datumPoints.isEmpty() ? 0 : 3;
    }

    public boolean inPlan(int point) {
        return inPlan[point];
    }

    public boolean hasHeight(int point) {
        return hasHeight[point];
    }

    public boolean hasGivenPlace(int point) {
        return inPlan[point] && placeUnknown[point] == GIVEN;
    }

    public int placeUnknown(int point) {
        return placeUnknown[point];
    }

    int heightUnknown(int point) {
        return heightUnknown[point];
    }

    int unknowns() {
        return unknowns;
    }

    public int degreesOfFreedom() {
        return observations.size() - unknowns + datumDefect();
    }

    /** Given places and heights; zero elsewhere. */
    public Positions given() {
        return given.copy();
    }
}
