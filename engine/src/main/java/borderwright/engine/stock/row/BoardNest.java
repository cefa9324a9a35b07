package borderwright.engine.stock.row;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * In which order, and which way round, pieces lie on a board so that they take the least length.
 *
 * <p>Between two pieces lies one cut at least. Where their ends lean the same way the long points pass each other; where
 * they are parallel one cut makes both ends. Up to 12 pieces, and more where some are alike, the best way is found exactly, by
 * dynamic programming over how many of each kind lie already and which way round the last one lies; beyond, the piece that
 * nests best comes next (nearest neighbour heuristic).
 */
public final class BoardNest {
    private static final int WAYS = 4;
    /** Length comes first: no preference of order weighs as much as a tick. */
    private static final long TICK = 1 << 20;

    private final List<Shape> shapes;
    private final boolean partedOff;

    private BoardNest(List<Shape> shapes, boolean partedOff) {
        this.shapes = shapes;
        this.partedOff = partedOff;
    }

    /**
     * A piece as its board sees it.
     *
     * @param length from long point to long point, ticks
     * @param left its left end
     * @param right its right end
     * @param mayTurn whether either face of the board may go out
     */
    public record Shape(long length, EndShape left, EndShape right, boolean mayTurn) {
        /** Every way round that it may lie. */
        public List<Way> ways() {
            return Way.ALL.stream().filter(way -> mayTurn || !way.turned).toList();
        }

        boolean isBox() {
            return left.isFull() && right.isFull() && left.kerfTicks() == right.kerfTicks();
        }

        public EndShape leftAs(Way way) {
            EndShape end = way.swapped ? right.edgesSwapped() : left;
            return way.turned ? end.turned() : end;
        }

        public EndShape rightAs(Way way) {
            EndShape end = way.swapped ? left.edgesSwapped() : right;
            return way.turned ? end.turned() : end;
        }
    }

    /**
     * Which way round a piece lies.
     *
     * @param turned whether the board is turned over for it
     * @param swapped whether its right end lies to the left
     */
    public record Way(boolean turned, boolean swapped) {
        /** As it lies for reading. */
        public static final Way AS_READ = new Way(false, false);

        private static final List<Way> ALL =
                List.of(AS_READ, new Way(false, true), new Way(true, false), new Way(true, true));
    }

    /**
     * A piece on the board.
     *
     * @param index its index in the list given
     * @param way which way round it lies
     * @param start of its left long point, ticks from the left long point of the first
     * @param sharesCut whether one cut makes its left end and the right end of the piece before it
     */
    public record Laid(int index, Way way, long start, boolean sharesCut) {}

    /**
     * Pieces in order on one board.
     *
     * @param pieces in order
     * @param extent from the first left long point to the last right one, ticks, cuts between them included
     * @param lastKerf what the cut at the last right end takes, 0 without pieces
     */
    public record Row(List<Laid> pieces, long extent, long lastKerf) {
        public Row {
            pieces = List.copyOf(pieces);
        }
    }

    /** The shortest row; among equals the one nearest to the order given, with the fewest pieces turned. */
    public static Row of(List<Shape> shapes) {
        return new BoardNest(shapes, false).shortest();
    }

    /** The shortest row where something follows on the board, so that the cut at the last end counts. */
    public static Row partedOff(List<Shape> shapes) {
        return new BoardNest(shapes, true).shortest();
    }

    private Row shortest() {
        boolean plain = shapes.stream().allMatch(Shape::isBox)
                && shapes.stream().mapToLong(s -> s.left.kerfTicks()).distinct().count() <= 1;
        if (plain || shapes.size() < 2) {
            return row(asGiven());
        }
        PieceKinds kinds = PieceKinds.of(shapes);
        return kinds.choices <= PieceKinds.MOST_CHOICES ? row(exact(kinds)) : greedy();
    }

    /** Whether {@link #of} looks at every order of some pieces. */
    public static boolean isExactFor(List<Shape> shapes) {
        return PieceKinds.of(shapes).choices <= PieceKinds.MOST_CHOICES;
    }

    /** Length that a joint takes: the wider cut, less what the ends pass each other. */
    private long joint(int a, Way wayA, int b, Way wayB) {
        EndShape right = shapes.get(a).rightAs(wayA);
        EndShape left = shapes.get(b).leftAs(wayB);
        return Math.max(right.kerfTicks(), left.kerfTicks()) - right.overlap(left);
    }

    private int[][] asGiven() {
        int[][] order = new int[shapes.size()][2];
        Arrays.setAll(order, i -> new int[] {i, 0});
        return order;
    }

    private Row row(int[][] order) {
        List<Laid> laid = new ArrayList<>();
        long at = 0;
        long lastKerf = 0;
        for (int i = 0; i < order.length; i++) {
            Way way = Way.ALL.get(order[i][1]);
            Shape shape = shapes.get(order[i][0]);
            boolean sharesCut = false;
            if (i > 0) {
                Way before = Way.ALL.get(order[i - 1][1]);
                at += joint(order[i - 1][0], before, order[i][0], way);
                sharesCut = shapes.get(order[i - 1][0]).rightAs(before).isMadeWith(shape.leftAs(way));
            }
            laid.add(new Laid(order[i][0], way, at, sharesCut));
            at += shape.length;
            lastKerf = shape.rightAs(way).kerfTicks();
        }
        return new Row(laid, at, lastKerf);
    }

    private boolean allows(int i, int way) {
        return !Way.ALL.get(way).turned || shapes.get(i).mayTurn;
    }

    /** Best end of a row for every choice of pieces that lie already and every last piece, each way round. */
    private int[][] exact(PieceKinds kinds) {
        int ends = kinds.members.size() * WAYS;
        long[][] joints = joints(kinds);
        long[][] best = new long[kinds.choices][ends];
        int[][] from = new int[kinds.choices][ends];
        for (long[] row : best) {
            Arrays.fill(row, Long.MAX_VALUE);
        }
        for (int end = 0; end < ends; end++) {
            int first = kinds.members.get(end / WAYS).get(0);
            if (allows(first, end % WAYS)) {
                best[kinds.step.get(end / WAYS)][end] = cost(first, end % WAYS, 0);
                from[kinds.step.get(end / WAYS)][end] = -1;
            }
        }
        for (int choice = 1; choice < kinds.choices; choice++) {
            int place = kinds.size(choice);
            for (int last = 0; last < ends; last++) {
                if (best[choice][last] < Long.MAX_VALUE) {
                    addNext(kinds, choice, place, last, joints[last], best, from);
                }
            }
        }
        return traced(kinds, best[kinds.choices - 1], from);
    }

    /** Lays one piece of each kind, each way round, after a row that is the best of its choice and last piece. */
    private void addNext(
            PieceKinds kinds, int choice, int place, int last, long[] joints, long[][] best, int[][] from) {
        for (int kind = 0; kind < kinds.members.size(); kind++) {
            List<Integer> alike = kinds.members.get(kind);
            int lying = kinds.count(kind, choice);
            if (lying == alike.size()) {
                continue;
            }
            int to = choice + kinds.step.get(kind);
            for (int w = 0; w < WAYS; w++) {
                int end = kind * WAYS + w;
                long total = best[choice][last] + joints[end] * TICK + cost(alike.get(lying), w, place);
                if (allows(alike.get(0), w) && total < best[to][end]) {
                    best[to][end] = total;
                    from[to][end] = last;
                }
            }
        }
    }

    private long[][] joints(PieceKinds kinds) {
        int ends = kinds.members.size() * WAYS;
        long[][] joints = new long[ends][ends];
        for (int a = 0; a < ends; a++) {
            for (int b = 0; b < ends; b++) {
                joints[a][b] = joint(
                        kinds.members.get(a / WAYS).get(0),
                        Way.ALL.get(a % WAYS),
                        kinds.members.get(b / WAYS).get(0),
                        Way.ALL.get(b % WAYS));
            }
        }
        return joints;
    }

    /** A preference: pieces in the order given, none turned. */
    private long cost(int i, int way, int place) {
        return (long) place * (shapes.size() - i) * 8 + way;
    }

    private int[][] traced(PieceKinds kinds, long[] totals, int[][] from) {
        int last = 0;
        long least = Long.MAX_VALUE;
        for (int e = 0; e < totals.length; e++) {
            if (totals[e] < Long.MAX_VALUE) {
                int piece = kinds.members.get(e / WAYS).get(0);
                long kerf = shapes.get(piece).rightAs(Way.ALL.get(e % WAYS)).kerfTicks();
                long total = totals[e] + (partedOff ? kerf * TICK : 0);
                if (total < least) {
                    least = total;
                    last = e;
                }
            }
        }
        int[][] order = new int[shapes.size()][2];
        int choice = kinds.choices - 1;
        for (int place = order.length - 1; place >= 0; place--) {
            int kind = last / WAYS;
            order[place] = new int[] {kinds.members.get(kind).get(kinds.count(kind, choice) - 1), last % WAYS};
            int before = from[choice][last];
            choice -= kinds.step.get(kind);
            last = before;
        }
        return order;
    }

    /** The piece that takes the least after the last one comes next; or ends in the order of their steepness. */
    private Row greedy() {
        int n = shapes.size();
        boolean[] lies = new boolean[n];
        int[][] order = new int[n][2];
        lies[0] = true;
        for (int place = 1; place < n; place++) {
            long least = Long.MAX_VALUE;
            for (int i = 0; i < n; i++) {
                for (int w = 0; w < WAYS; w++) {
                    if (!lies[i] && allows(i, w)) {
                        int[] last = order[place - 1];
                        long joint = joint(last[0], Way.ALL.get(last[1]), i, Way.ALL.get(w));
                        if (joint < least) {
                            least = joint;
                            order[place] = new int[] {i, w};
                        }
                    }
                }
            }
            lies[order[place][0]] = true;
        }
        // Never longer than one kerf for each piece, the wider cut of its ends: what its board was bought for.
        int[][] sorted = asGiven();
        Comparator<int[]> rising = Comparator.comparingLong(o -> steepness(shapes.get(o[0])));
        Arrays.sort(sorted, partedOff ? rising.reversed() : rising);
        Row nested = row(order);
        Row plain = row(sorted);
        return length(nested) < length(plain) ? nested : plain;
    }

    private long length(Row row) {
        return row.extent + (partedOff ? row.lastKerf : 0);
    }

    private static long steepness(Shape shape) {
        return Math.max(shape.left.kerfTicks(), shape.right.kerfTicks());
    }
}
