package borderwright.engine.buying.boards;

import borderwright.engine.buying.boards.ModelColumn.Kind;
import borderwright.engine.effort.Budget;
import borderwright.engine.stock.Packing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.function.LongUnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * Branch and price on what decides the cost: how many of each board and of each extra are bought. The node with the least
 * bound first, of those the deepest.
 *
 * <p>Patterns are priced at every node, so that its bound is true for every way to cut. A node whose counts are whole is a
 * leaf: its boards are cut by dives; where these fail, the leaf is left open and its bound kept, and the counts around it
 * are searched on.
 *
 * <p>See docs/decisions/0050.
 */
public final class CountTree {
    private static final double WHOLE = 1e-6;
    private static final int LEAF_DIVES = 3;
    /** Work for the first look at how a leaf's boards can be cut; each later look may do four times as much. */
    private static final long LEAF_WORK = 5000;

    private final MasterProgram master;
    private final LongUnaryOperator up;
    private final AnswerListener answers;
    private final PriorityQueue<CountNode> open = new PriorityQueue<>(Comparator.comparingLong((CountNode n) -> n.bound)
            .thenComparing(n -> -n.depth)
            .thenComparing(n -> -n.number));
    private long target;
    private final List<Leaf> leaves = new ArrayList<>();
    private long nodes;
    private boolean found;
    private @Nullable CountNode follow;

    /**
     * A tree with nothing looked at yet.
     *
     * @param master a master programme
     * @param bound a bound that is known
     * @param target greatest cost of interest
     * @param up the least cost there can be that is no less than a bound
     */
    public CountTree(MasterProgram master, long bound, long target, LongUnaryOperator up, AnswerListener answers) {
        this.master = master;
        this.target = target;
        this.up = up;
        this.answers = answers;
        open(new CountNode(new long[master.fixed().size()], naturalHigh(), 0, 0, bound));
    }

    /** Opens a node, its bounds drawn in to what can be bought at all. */
    private void open(CountNode node) {
        for (int c = 0; c < node.low.length; c++) {
            long least = master.fixed().get(c).least();
            node.low[c] = node.low[c] > 0 ? Math.max(node.low[c], least) : 0;
            node.high[c] = node.high[c] < least ? 0 : node.high[c];
            if (node.low[c] > node.high[c]) {
                return;
            }
        }
        open.add(node);
    }

    /** Searches on; whether no answer within the target is left out. */
    public boolean run(long newTarget, Budget budget) {
        target = Math.min(target, newTarget);
        settleLeaves(budget);
        while (bound() <= target && !open.isEmpty() && !budget.isSpent()) {
            CountNode node = follow != null && open.remove(follow) ? follow : open.poll();
            follow = null;
            if (node != null && node.bound <= target && !visit(node, budget)) {
                open.add(node);
                break;
            }
        }
        master.within(new long[master.fixed().size()], naturalHigh());
        master.restore(budget);
        return bound() > target;
    }

    private long[] naturalHigh() {
        return master.fixed().stream().mapToLong(ModelColumn::most).toArray();
    }

    /** No answer within the target costs less; above the target when there is none. */
    public long bound() {
        CountNode node = open.peek();
        long least = node == null ? target + 1 : Math.min(node.bound, target + 1);
        for (Leaf leaf : leaves) {
            least = Math.min(least, leaf.bound);
        }
        return least;
    }

    /** Numbers of boards of which it is not known whether they can be cut to all pieces. */
    private static final class Leaf {
        private final long[] at;
        private final long bound;
        private long work = LEAF_WORK;

        Leaf(long[] at, long bound) {
            this.at = at;
            this.bound = bound;
        }
    }

    /** Looks for a way to cut a leaf's boards; whether it is known by now that there is one, or none. */
    private boolean settle(Leaf leaf, Budget budget) {
        Budget part = budget.part(leaf.work);
        leaf.work *= 4;
        LeafSearch search = new LeafSearch(master, part);
        List<Packing> packings = search.pack(leaf.at);
        budget.spend(1000 * part.used());
        if (packings != null) {
            offer(packings, packs(leaf.at), extras(leaf.at));
        }
        return search.isSettled();
    }

    private void settleLeaves(Budget budget) {
        leaves.removeIf(leaf ->
                leaf.bound > target || (!budget.isSpent() && leaf.bound <= leastOpen() && settle(leaf, budget)));
    }

    private long leastOpen() {
        CountNode node = open.peek();
        return node == null ? Long.MAX_VALUE : node.bound;
    }

    /** Bounds a node and opens its children; whether that was done in full. */
    private boolean visit(CountNode node, Budget budget) {
        master.within(node.low, node.high);
        master.restore(budget);
        boolean solved = master.solve(target + 1, budget);
        node.bound = Math.max(node.bound, up.applyAsLong(master.bound()));
        if (node.bound > target) {
            return true;
        }
        if (!solved) {
            return false;
        }
        nodes++;
        int branch = fractional();
        if (branch < 0) {
            leaf(node, budget);
            return true;
        }
        double at = master.fixedValue(branch);
        if (Long.bitCount(nodes) == 1) {
            new DivingHeuristic(master, target + 1, node.bound, 0, this::offer, budget).run();
        }
        split(node, branch, at);
        return true;
    }

    private long offer(List<Packing> packings, int[][] packs, int[] extras) {
        target = Math.min(target, answers.accept(packings, packs, extras));
        return target;
    }

    /** Opens both sides of a count; the nearer one is looked at next, so that leaves are reached soon. */
    private void split(CountNode node, int branch, double at) {
        ModelColumn column = master.fixed().get(branch);
        boolean few = column.isTooFew(at, WHOLE);
        long floor = few ? 0 : (long) Math.floor(at + WHOLE);
        long ceiling = few ? column.least() : floor + 1;
        long[] high = node.high.clone();
        high[branch] = floor;
        CountNode below = new CountNode(node.low.clone(), high, node.depth + 1, 2 * nodes, node.bound);
        long[] low = node.low.clone();
        low[branch] = ceiling;
        CountNode above = new CountNode(low, node.high.clone(), node.depth + 1, 2 * nodes + 1, node.bound);
        open(below);
        open(above);
        follow = at - floor < 0.5 * (ceiling - floor) ? below : above;
    }

    /**
     * Of the first kind that is not whole the column nearest to a half, before these one with fewer than can be bought; -1
     * when all are whole and can be bought.
     */
    private int fractional() {
        int best = -1;
        Kind bestKind = Kind.PATTERN;
        double bestScore = 0;
        for (int c = 0; c < master.fixed().size(); c++) {
            double x = master.fixedValue(c);
            ModelColumn column = master.fixed().get(c);
            double score = column.isTooFew(x, WHOLE) ? 1 : Math.min(x - Math.floor(x), Math.ceil(x) - x);
            Kind kind = column.kind();
            boolean earlier = kind.compareTo(bestKind) < 0;
            if (score > WHOLE && (earlier || (kind == bestKind && score > bestScore))) {
                best = c;
                bestScore = score;
                bestKind = kind;
            }
        }
        return best;
    }

    /** Cuts the boards of a node whose counts are whole; opens the counts around it unless that settles the node. */
    private void leaf(CountNode node, Budget budget) {
        int n = master.fixed().size();
        long[] at = new long[n];
        for (int c = 0; c < n; c++) {
            at[c] = Math.round(master.fixedValue(c));
        }
        master.within(at, at);
        master.restore(budget);
        boolean met = cutByDives(at, budget);
        if (node.bound > target) {
            return;
        }
        // Where offcuts count, the boards of a leaf may be cut for less.
        if (met && (!found || master.model().keeps())) {
            Leaf leaf = new Leaf(at, node.bound);
            if (!settle(leaf, budget)) {
                leaves.add(leaf);
            }
        }
        openAround(node, at);
    }

    /** Dives for a way to cut so many of each board, noted in {@link #found}; whether there may be one at all. */
    private boolean cutByDives(long[] at, Budget budget) {
        found = false;
        // Where sizes do not say all of what fits, the programme may lack patterns for boards that can be cut.
        boolean met = master.model().isRuled() || master.unmet() <= WHOLE;
        for (int d = 0; d < LEAF_DIVES && met && !found; d++) {
            new DivingHeuristic(
                            master,
                            Long.MAX_VALUE / 4,
                            0,
                            d,
                            (packings, packs, extras) -> {
                                found = master.model().admits(packings);
                                offer(packings, packs(at), extras(at));
                                return -1;
                            },
                            budget)
                    .run();
        }
        return met;
    }

    /** Opens nodes that hold every count within those of a node but the ones at hand. */
    private void openAround(CountNode node, long[] at) {
        long[] low = node.low.clone();
        long[] high = node.high.clone();
        for (int c = 0; c < at.length; c++) {
            if (high[c] > at[c]) {
                long[] above = low.clone();
                above[c] = at[c] + 1;
                open(new CountNode(above, high.clone(), node.depth + 1, 2 * nodes, node.bound));
            }
            if (low[c] < at[c]) {
                long[] below = high.clone();
                below[c] = at[c] - 1;
                open(new CountNode(low.clone(), below, node.depth + 1, 2 * nodes + 1, node.bound));
            }
            low[c] = at[c];
            high[c] = at[c];
        }
    }

    private int[][] packs(long[] at) {
        int parts = master.model().parts.size();
        int[][] packs = new int[parts][];
        for (int s = 0; s < parts; s++) {
            packs[s] = new int[master.model().parts.get(s).boards()];
        }
        for (int c = 0; c < at.length; c++) {
            ModelColumn column = master.fixed().get(c);
            if (column.kind() == Kind.COUNT) {
                packs[column.part()][column.index()] = (int) at[c];
            }
        }
        return packs;
    }

    private int[] extras(long[] at) {
        int[] extras = new int[master.model().extras.size()];
        for (int c = 0; c < at.length; c++) {
            if (master.fixed().get(c).kind() == Kind.EXTRA) {
                extras[master.fixed().get(c).index()] = (int) at[c];
            }
        }
        return extras;
    }
}
