package borderwright.engine.strength.frame;

import java.util.ArrayList;
import java.util.List;

/** Collects nodes, members and springs; every node, member and spring is known by the index that its method returns. */
public final class FrameBuilder {
    final List<Vector> places = new ArrayList<>();
    final List<Integer> free = new ArrayList<>();
    final List<Member> members = new ArrayList<>();
    final List<Spring> springs = new ArrayList<>();
    final List<Settlement> settlements = new ArrayList<>();

    /**
     * A displacement forced on a restrained freedom.
     *
     * @param node index of the node
     * @param freedom which displacement; not free
     * @param value how far
     */
    record Settlement(int node, Freedom freedom, double value) {}

    /** A node that moves in the freedoms given and is held in the others. */
    public int node(Vector at, Freedom... freedoms) {
        int mask = 0;
        for (Freedom freedom : freedoms) {
            mask |= 1 << freedom.index();
        }
        places.add(at);
        free.add(mask);
        return places.size() - 1;
    }

    /** A bar from one node to another; its own z axis is the one nearest to {@code up}, which may not lie along it. */
    public int member(int start, int end, JointRigidity rigidity, Vector up) {
        members.add(Member.between(start, places.get(start), end, places.get(end), rigidity, up));
        return members.size() - 1;
    }

    /** Forces a held node to a displacement, such as a support that settles. */
    public void settle(int node, Freedom freedom, double value) {
        if ((free.get(node) >> freedom.index() & 1) == 1) {
            throw new IllegalArgumentException(
                    "node " + node + " is free in " + freedom + ": only what is held can settle");
        }
        settlements.add(new Settlement(node, freedom, value));
    }

    /** A spring between two nodes at the place {@code at}; it lengthens when the second moves along {@code direction}. */
    public int spring(int first, int second, Vector at, Vector direction, double stiffness, SpringLaw law) {
        return add(place(first, at), place(second, at), direction, false, stiffness, law);
    }

    /** A spring from the ground to a node at the place {@code at}. */
    public int toGround(int node, Vector at, Vector direction, double stiffness, SpringLaw law) {
        return add(
                new Spring.Place(Spring.Place.GROUND, Vector.ZERO), place(node, at), direction, false, stiffness, law);
    }

    /** A spring from the ground against a node's rotation about {@code axis}. */
    public int turningToGround(int node, Vector axis, double stiffness) {
        return add(
                new Spring.Place(Spring.Place.GROUND, Vector.ZERO),
                new Spring.Place(node, Vector.ZERO),
                axis,
                true,
                stiffness,
                SpringLaw.ELASTIC);
    }

    private Spring.Place place(int node, Vector at) {
        return new Spring.Place(node, at.minus(places.get(node)));
    }

    private int add(
            Spring.Place first,
            Spring.Place second,
            Vector direction,
            boolean turning,
            double stiffness,
            SpringLaw law) {
        if (!(stiffness >= 0)) {
            throw new IllegalArgumentException("a spring's stiffness is 0 or more, got " + stiffness);
        }
        springs.add(new Spring(first, second, direction.unit(), turning, stiffness, law));
        return springs.size() - 1;
    }

    /**
     * The structure, numbered and ready to be solved.
     *
     * @param loose stiffness to the ground given to every free displacement, so that parts held by nothing show as huge
     *     displacements; 0 for none
     */
    public Frame build(double loose) {
        return new Frame(this, loose);
    }
}
