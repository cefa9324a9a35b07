package borderwright.engine.strength.frame;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How the stiffness matrix is factored: small full matrices, each of which eliminates the displacements of a few nodes and
 * hands what is left on to the one above it. Worked out once for a frame, whatever its stiffnesses.
 *
 * <p>The multifrontal method: Duff and Reid, The multifrontal solution of indefinite sparse symmetric linear equations, ACM
 * Transactions on Mathematical Software 9 (1983), here for positive definite matrices. See docs/decisions/0044.
 */
final class Fronts {
    /** From below upwards: each stands before the one that it hands on to. */
    private final List<Front> fronts;

    /** By equation: the front that eliminates it. */
    private final int[] owner;

    /** One full matrix of which the lower triangle is kept, by columns. */
    static final class Front {
        /** Of its rows, ascending; the first {@link #pivots} are eliminated here. */
        final int[] equations;

        final int pivots;

        /** Index of the front that takes the rest; -1 for none. */
        final int above;

        /** The rows that the rest has in the front above. */
        final int[] rowsAbove;

        /** Indices of the fronts that hand on to this one, ascending. */
        final List<Integer> below = new ArrayList<>();

        private Front(int[] equations, int pivots, int above) {
            this.equations = equations;
            this.pivots = pivots;
            this.above = above;
            rowsAbove = new int[equations.length - pivots];
        }

        int size() {
            return equations.length;
        }

        /** Multiplications and additions that working it out takes, to the leading terms. */
        long multiplyAdds() {
            long size = size();
            long handedOn = size - pivots;
            return (cube(size) - cube(handedOn)) / 6 + size * size;
        }

        private static long cube(long of) {
            return of * of * of;
        }

        private void handOnTo(Front other, int index) {
            Arrays.setAll(rowsAbove, i -> other.row(equations[pivots + i]));
            other.below.add(index);
        }

        /** Where in the array of values the matrix has two equations, the smaller first. */
        int at(int smaller, int larger) {
            return row(smaller) * size() + row(larger);
        }

        private int row(int equation) {
            return Arrays.binarySearch(equations, equation);
        }
    }

    private Fronts(List<Front> fronts, int[] owner) {
        this.fronts = fronts;
        this.owner = owner;
        for (int i = 0; i < fronts.size(); i++) {
            Front front = fronts.get(i);
            if (front.above >= 0) {
                front.handOnTo(fronts.get(front.above), i);
            }
        }
    }

    static Fronts of(Numbering numbering) {
        int count = numbering.order.length;
        int[] turn = new int[numbering.equation.length / Freedom.COUNT];
        for (int i = 0; i < count; i++) {
            turn[numbering.order[i]] = i;
        }
        int[][] later = new int[count][];
        for (int i = 0; i < count; i++) {
            later[i] =
                    numbering.tied[i].stream().map(node -> turn[node]).sorted().toArray();
        }
        return fronts(numbering, later, lastOfFront(later));
    }

    /**
     * By node in turn: the last node of its front. A node joins the front of the next one that it is tied to where that
     * makes no row longer.
     */
    private static int[] lastOfFront(int[][] later) {
        int[] last = IntStream.range(0, later.length).toArray();
        boolean[] joined = new boolean[later.length];
        for (int i = later.length - 1; i >= 0; i--) {
            int next = later[i].length == 0 ? -1 : later[i][0];
            if (next >= 0 && !joined[next] && later[i].length == later[next].length + 1) {
                joined[next] = true;
                last[i] = last[next];
            }
        }
        return last;
    }

    private static Fronts fronts(Numbering numbering, int[][] later, int[] last) {
        int[] index = new int[last.length];
        int known = 0;
        for (int i = 0; i < last.length; i++) {
            index[i] = last[i] == i ? known++ : -1;
        }
        List<IntStream.Builder> eliminated = new ArrayList<>();
        for (int f = 0; f < known; f++) {
            eliminated.add(IntStream.builder());
        }
        for (int i = 0; i < last.length; i++) {
            eliminated.get(index[last[i]]).add(i);
        }
        List<Front> fronts = new ArrayList<>();
        int[] owner = new int[numbering.count];
        for (int i = 0; i < last.length; i++) {
            if (last[i] == i) {
                int[] own = equations(numbering, eliminated.get(fronts.size()).build());
                Arrays.stream(own).forEach(equation -> owner[equation] = fronts.size());
                int[] all = IntStream.concat(
                                Arrays.stream(own), Arrays.stream(equations(numbering, Arrays.stream(later[i]))))
                        .toArray();
                fronts.add(new Front(all, own.length, later[i].length == 0 ? -1 : index[last[later[i][0]]]));
            }
        }
        return new Fronts(fronts, owner);
    }

    private static int[] equations(Numbering numbering, IntStream turns) {
        return turns.map(t -> Freedom.COUNT * numbering.order[t])
                .flatMap(first -> Arrays.stream(numbering.equation, first, first + Freedom.COUNT))
                .filter(equation -> equation >= 0)
                .toArray();
    }

    int count() {
        return fronts.size();
    }

    Front get(int front) {
        return fronts.get(front);
    }

    /** Which front eliminates an equation. */
    int ownerOf(int equation) {
        return owner[equation];
    }
}
