package borderwright.engine.strength.frame;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** One load case: forces on nodes and along members. */
public final class Loads {
    final List<OnNode> onNodes = new ArrayList<>();
    final List<OnMember> onMembers = new ArrayList<>();
    private final Map<Integer, List<OnMember>> byMember = new HashMap<>();

    /**
     * A force, or a moment, on a node.
     *
     * @param node index
     * @param freedom along or about which axis
     * @param value N or N mm
     */
    record OnNode(int node, Freedom freedom, double value) {}

    /**
     * A force along part of a member, varying evenly; a point force where both ends coincide.
     *
     * @param member index
     * @param direction unit vector in global axes
     * @param from distance from the member's start where it begins
     * @param to distance where it ends
     * @param atFrom force per length at its beginning; the force itself where it is a point
     * @param atTo force per length at its end
     */
    record OnMember(int member, Vector direction, double from, double to, double atFrom, double atTo) {
        boolean isPoint() {
            return from == to;
        }

        /** The whole force. */
        double total() {
            return isPoint() ? atFrom : (atFrom + atTo) / 2 * (to - from);
        }

        /** Distance from the member's start of the line along which the whole force acts. */
        double centre() {
            double sum = atFrom + atTo;
            return isPoint() || sum == 0 ? from : from + (to - from) * (atFrom + 2 * atTo) / (3 * sum);
        }
    }

    public Loads onNode(int node, Freedom freedom, double value) {
        onNodes.add(new OnNode(node, freedom, value));
        return this;
    }

    /** A force per length that varies evenly from {@code atFrom} to {@code atTo} between two distances from the start. */
    public Loads line(int member, Vector direction, double from, double to, double atFrom, double atTo) {
        if (!(to > from)) {
            throw new IllegalArgumentException("a line load runs from less to more, got " + from + " to " + to);
        }
        return add(new OnMember(member, direction.unit(), from, to, atFrom, atTo));
    }

    public Loads point(int member, Vector direction, double at, double force) {
        return add(new OnMember(member, direction.unit(), at, at, force, force));
    }

    /** All loads of this and of another case, each times its factor. */
    public static Loads sum(Loads first, double firstFactor, Loads second, double secondFactor) {
        Loads sum = new Loads();
        sum.take(first, firstFactor);
        sum.take(second, secondFactor);
        return sum;
    }

    private void take(Loads other, double factor) {
        other.onNodes.forEach(l -> onNode(l.node(), l.freedom(), factor * l.value()));
        other.onMembers.forEach(l ->
                add(new OnMember(l.member(), l.direction(), l.from(), l.to(), factor * l.atFrom(), factor * l.atTo())));
    }

    List<OnMember> of(int member) {
        return byMember.getOrDefault(member, List.of());
    }

    private Loads add(OnMember load) {
        onMembers.add(load);
        byMember.computeIfAbsent(load.member(), m -> new ArrayList<>(2)).add(load);
        return this;
    }
}
