package borderwright.engine.strength.frame;

import java.util.ArrayList;
import java.util.List;

/** One load case: forces on nodes and along members. */
public final class Loads {
    final List<OnNode> onNodes = new ArrayList<>();
    final List<OnMember> onMembers = new ArrayList<>();

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
        onMembers.add(new OnMember(member, direction.unit(), from, to, atFrom, atTo));
        return this;
    }

    public Loads point(int member, Vector direction, double at, double force) {
        onMembers.add(new OnMember(member, direction.unit(), at, at, force, force));
        return this;
    }
}
