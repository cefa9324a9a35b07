package borderwright.engine.strength.frame;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.NavigableSet;
import java.util.Objects;
import java.util.TreeSet;

/**
 * Which equation belongs to which free displacement.
 *
 * <p>Least degree first: the node with the fewest neighbours is numbered next and its neighbours become neighbours of each
 * other, as they do in the factor. Boards between uprights go first, so that little is filled in.
 */
final class Numbering {
    /** Equation of freedom {@code f} of node {@code n} at {@code 6 n + f}; -1 where the node is held. */
    final int[] equation;

    final int count;

    Numbering(FrameBuilder builder) {
        int nodes = builder.places.size();
        equation = new int[Freedom.COUNT * nodes];
        Arrays.fill(equation, -1);
        int next = 0;
        for (int node : order(neighbours(builder, nodes))) {
            for (int f = 0; f < Freedom.COUNT; f++) {
                if ((builder.free.get(node) >> f & 1) == 1) {
                    equation[Freedom.COUNT * node + f] = next++;
                }
            }
        }
        count = next;
    }

    private static List<NavigableSet<Integer>> neighbours(FrameBuilder builder, int nodes) {
        List<NavigableSet<Integer>> near = new ArrayList<>(nodes);
        for (int i = 0; i < nodes; i++) {
            near.add(new TreeSet<>());
        }
        for (Member member : builder.members) {
            join(near, member.start(), member.end());
        }
        for (Spring spring : builder.springs) {
            if (spring.first().node() >= 0 && spring.second().node() >= 0) {
                join(near, spring.first().node(), spring.second().node());
            }
        }
        return near;
    }

    private static void join(List<NavigableSet<Integer>> near, int a, int b) {
        if (a != b) {
            near.get(a).add(b);
            near.get(b).add(a);
        }
    }

    private static int[] order(List<NavigableSet<Integer>> near) {
        int nodes = near.size();
        // Degree before index, so that the first is the next.
        NavigableSet<Long> waiting = new TreeSet<>();
        for (int i = 0; i < nodes; i++) {
            waiting.add(key(near, i));
        }
        int[] order = new int[nodes];
        for (int filled = 0; filled < nodes; filled++) {
            int node = Objects.requireNonNull(waiting.pollFirst()).intValue();
            order[filled] = node;
            for (int one : near.get(node)) {
                waiting.remove(key(near, one));
                near.get(one).remove(node);
                near.get(one).addAll(near.get(node));
                near.get(one).remove(one);
                waiting.add(key(near, one));
            }
        }
        return order;
    }

    private static long key(List<NavigableSet<Integer>> near, int node) {
        return (long) near.get(node).size() << 32 | node;
    }
}
