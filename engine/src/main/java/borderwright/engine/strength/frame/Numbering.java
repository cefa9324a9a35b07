package borderwright.engine.strength.frame;

import java.util.Arrays;
import java.util.BitSet;

/**
 * Which equation belongs to which free displacement, and what each node is tied to when its turn comes.
 *
 * <p>Least degree first: the node with the fewest neighbours is numbered next and its neighbours become neighbours of each
 * other, as they do in the factor. Boards between uprights go first, so that little is filled in.
 */
final class Numbering {
    /** Equation of freedom {@code f} of node {@code n} at {@code 6 n + f}; -1 where the node is held. */
    final int[] equation;

    final int count;

    /** The nodes that move, first to last. */
    final int[] order;

    /** By position in {@link #order}: the nodes numbered later that the factor ties this one to. */
    final BitSet[] tied;

    Numbering(FrameBuilder builder) {
        int nodes = builder.places.size();
        BitSet moving = new BitSet(nodes);
        for (int n = 0; n < nodes; n++) {
            moving.set(n, builder.free.get(n) != 0);
        }
        order = new int[moving.cardinality()];
        tied = new BitSet[order.length];
        eliminate(neighbours(builder, moving), moving);
        equation = new int[Freedom.COUNT * nodes];
        Arrays.fill(equation, -1);
        int next = 0;
        for (int node : order) {
            for (int f = 0; f < Freedom.COUNT; f++) {
                if ((builder.free.get(node) >> f & 1) == 1) {
                    equation[Freedom.COUNT * node + f] = next++;
                }
            }
        }
        count = next;
    }

    private static BitSet[] neighbours(FrameBuilder builder, BitSet moving) {
        BitSet[] near = new BitSet[builder.places.size()];
        Arrays.setAll(near, n -> new BitSet(near.length));
        for (Member member : builder.members) {
            join(near, moving, member.start(), member.end());
        }
        for (Spring spring : builder.springs) {
            join(near, moving, spring.first().node(), spring.second().node());
        }
        return near;
    }

    private static void join(BitSet[] near, BitSet moving, int a, int b) {
        if (a != b && a >= 0 && b >= 0 && moving.get(a) && moving.get(b)) {
            near[a].set(b);
            near[b].set(a);
        }
    }

    private void eliminate(BitSet[] near, BitSet waiting) {
        int[] degree = new int[near.length];
        Arrays.setAll(degree, n -> near[n].cardinality());
        for (int turn = 0; turn < order.length; turn++) {
            int node = leastDegree(degree, waiting);
            order[turn] = node;
            tied[turn] = near[node];
            waiting.clear(node);
            for (int one = near[node].nextSetBit(0); one >= 0; one = near[node].nextSetBit(one + 1)) {
                near[one].or(near[node]);
                near[one].clear(one);
                near[one].clear(node);
                degree[one] = near[one].cardinality();
            }
        }
    }

    /** The first of them. */
    private static int leastDegree(int[] degree, BitSet waiting) {
        int best = waiting.nextSetBit(0);
        for (int n = best; n >= 0; n = waiting.nextSetBit(n + 1)) {
            if (degree[n] < degree[best]) {
                best = n;
            }
        }
        return best;
    }
}
