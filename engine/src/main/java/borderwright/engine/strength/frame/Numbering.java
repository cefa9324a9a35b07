package borderwright.engine.strength.frame;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Which equation belongs to which free displacement.
 *
 * <p>Reverse Cuthill-McKee: breadth first from a node of few neighbours, fewest neighbours first, then backwards. A ring
 * is walked from both sides at once, so the factor stays about as wide as two cuts through the wall.
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

    private static int[][] neighbours(FrameBuilder builder, int nodes) {
        List<List<Integer>> near = new ArrayList<>(nodes);
        for (int i = 0; i < nodes; i++) {
            near.add(new ArrayList<>(4));
        }
        for (Member member : builder.members) {
            join(near, member.start(), member.end());
        }
        for (Spring spring : builder.springs) {
            if (spring.first().node() >= 0 && spring.second().node() >= 0) {
                join(near, spring.first().node(), spring.second().node());
            }
        }
        return near.stream()
                .map(list -> list.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
    }

    private static void join(List<List<Integer>> near, int a, int b) {
        if (a != b && !near.get(a).contains(b)) {
            near.get(a).add(b);
            near.get(b).add(a);
        }
    }

    private static int[] order(int[][] near) {
        int nodes = near.length;
        int[] order = new int[nodes];
        boolean[] seen = new boolean[nodes];
        int filled = 0;
        while (filled < nodes) {
            int from = filled;
            order[filled++] = leastUnseen(near, seen);
            seen[order[from]] = true;
            for (int head = from; head < filled; head++) {
                filled = append(near, seen, order, head, filled);
            }
        }
        for (int i = 0, j = nodes - 1; i < j; i++, j--) {
            int swap = order[i];
            order[i] = order[j];
            order[j] = swap;
        }
        return order;
    }

    private static int append(int[][] near, boolean[] seen, int[] order, int head, int filled) {
        int first = filled;
        for (int other : near[order[head]]) {
            if (!seen[other]) {
                seen[other] = true;
                int at = filled++;
                while (at > first && near[order[at - 1]].length > near[other].length) {
                    order[at] = order[at - 1];
                    at--;
                }
                order[at] = other;
            }
        }
        return filled;
    }

    private static int leastUnseen(int[][] near, boolean[] seen) {
        int best = -1;
        for (int i = 0; i < near.length; i++) {
            if (!seen[i] && (best < 0 || near[i].length < near[best].length)) {
                best = i;
            }
        }
        return best;
    }
}
