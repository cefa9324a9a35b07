package borderwright.engine.buying;

import borderwright.engine.buying.Column.Kind;
import borderwright.engine.stock.Budget;
import borderwright.engine.stock.GreedyFill;
import borderwright.engine.stock.Packing;
import borderwright.engine.stock.Pattern;
import borderwright.engine.stock.StockCase;
import borderwright.engine.stock.SubsetFill;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/**
 * From a solved master programme to whole numbers of boards: whole parts are taken at once, then the fullest fractions are
 * rounded up one after another, and the programme is solved again for what is left. At every step the rest is also packed
 * by rule of thumb.
 */
final class Dive {
    private static final double WHOLE = 1e-5;
    private static final double NEARLY = 0.9;
    private static final int ROUNDS = 3;
    private static final int PATTERNS_EACH = 40;

    private final Master master;
    private final ModelRows rows;
    private final Answers answers;
    private final Budget budget;
    private final SplittableRandom random;
    private final boolean straight;
    /** Whether the boards are given, so that none is to be exchanged for a cheaper one. */
    private final boolean countsFixed;

    private final int[][] left;
    private final int[][] boardsLeft;
    private final int[][] boardsUsed;
    private final List<Packing> taken = new ArrayList<>();
    private double uncounted;
    private long worst;
    private final long enough;

    /**
     * A dive.
     *
     * @param master a solved master programme
     * @param worst cost from which on an answer is of no interest
     * @param enough stop as soon as that cost is no more than this
     * @param seed 0 for the straight dive, others stray from it a little
     */
    Dive(Master master, long worst, long enough, long seed, Answers answers, Budget budget) {
        this.master = master;
        this.rows = master.rows;
        this.answers = answers;
        this.budget = budget;
        this.worst = worst;
        this.enough = enough;
        this.straight = seed == 0;
        this.random = new SplittableRandom(seed);
        int parts = rows.model.parts.size();
        this.left = new int[parts][];
        this.boardsLeft = new int[parts][];
        this.boardsUsed = new int[parts][];
        for (int s = 0; s < parts; s++) {
            StockCase stock = rows.model.parts.get(s);
            left[s] = stock.copyOfDemand();
            boardsLeft[s] = stock.copyOfAvailable();
            boardsUsed[s] = new int[stock.boards()];
            taken.add(new Packing());
        }
        boolean open = master.fixed.isEmpty();
        for (int c = 0; c < master.fixed.size(); c++) {
            Column column = master.fixed.get(c);
            open |= master.low(c) < master.high(c);
            if (column.kind() == Kind.COUNT) {
                int pack = rows.model.parts.get(column.part()).pack(column.index());
                boardsLeft[column.part()][column.index()] =
                        (int) Math.min(master.high(c) * pack, StockCase.UNLIMITED - 1);
            }
        }
        this.countsFixed = !open;
    }

    /** Dives; the master programme is left as it was. */
    void run() {
        // An earlier search may have run out of work half-way.
        if (!master.program.dual(Double.POSITIVE_INFINITY, budget) || !master.program.primal(budget)) {
            return;
        }
        complete();
        while (anyLeft() && worst > enough) {
            if (!takeWholes() && !takeFullest()) {
                break;
            }
            complete();
            if (!anyLeft() || worst <= enough || !resolve()) {
                break;
            }
        }
        restore();
    }

    private boolean anyLeft() {
        for (int[] ofPart : left) {
            for (int n : ofPart) {
                if (n > 0) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean takeWholes() {
        boolean moved = false;
        for (int p = 0; p < master.patterns.size(); p++) {
            int times = (int) Math.floor(master.patternValue(p) + WHOLE);
            if (times > 0) {
                moved |= take(master.patterns.get(p), times);
            }
        }
        return moved;
    }

    /** Takes the fullest fraction once, and with it all that are nearly whole. */
    private boolean takeFullest() {
        int fullest = -1;
        double most = 0;
        List<Column> nearly = new ArrayList<>();
        for (int p = 0; p < master.patterns.size(); p++) {
            double x = master.patternValue(p);
            if (x > WHOLE) {
                double weight = straight ? x : x * (0.5 + random.nextDouble());
                if (weight > most) {
                    most = weight;
                    fullest = p;
                }
                if (x > NEARLY) {
                    nearly.add(master.patterns.get(p));
                }
            }
        }
        boolean moved = fullest >= 0 && take(master.patterns.get(fullest), 1);
        for (Column column : nearly) {
            moved |= take(column, 1);
        }
        return moved;
    }

    /** Cuts a pattern so often, less what is no longer wanted, filled up with what is. */
    private boolean take(Column column, int times) {
        int s = column.part();
        int j = column.index();
        Pattern pattern = column.pattern();
        StockCase stock = rows.model.parts.get(s);
        int often = Math.min(times, boardsLeft[s][j]);
        boolean moved = false;
        while (often > 0 && pattern != null) {
            int[] counts = new int[left[s].length];
            long room = stock.capacity(j);
            int pieces = 0;
            for (int k = 0; k < pattern.kinds(); k++) {
                int i = pattern.item(k);
                counts[i] = Math.min(pattern.count(k), left[s][i]);
                room -= counts[i] * stock.size(i);
                pieces += counts[i];
            }
            if (pieces == 0) {
                return moved;
            }
            int repeats = often;
            for (int i = 0; i < counts.length; i++) {
                if (room > 0 && left[s][i] > counts[i] && stock.size(i) <= room) {
                    int more = (int) Math.min(left[s][i] - counts[i], room / stock.size(i));
                    counts[i] += more;
                    room -= more * stock.size(i);
                }
                repeats = counts[i] > 0 ? Math.min(repeats, left[s][i] / counts[i]) : repeats;
            }
            fix(s, Pattern.ofCounts(j, counts), repeats);
            moved = true;
            often -= repeats;
        }
        return moved;
    }

    private void fix(int s, Pattern pattern, int times) {
        int j = pattern.board();
        taken.get(s).add(pattern, times);
        boardsUsed[s][j] += times;
        boardsLeft[s][j] -= boardsLeft[s][j] == StockCase.UNLIMITED ? 0 : times;
        for (int k = 0; k < pattern.kinds(); k++) {
            int i = pattern.item(k);
            left[s][i] -= pattern.count(k) * times;
            master.program.require(rows.rowOfSize(s, i), left[s][i]);
            master.pricing.limit(s, i, left[s][i]);
        }
        if (rows.boardRow[s][j] >= 0) {
            master.program.require(rows.boardRow[s][j], boardsUsed[s][j]);
        } else {
            uncounted += (double) times * rows.model.parts.get(s).cost(j);
        }
    }

    /** Packs the rest by rule of thumb, and offers the whole. */
    private void complete() {
        List<Packing> whole = new ArrayList<>();
        for (int s = 0; s < left.length; s++) {
            StockCase stock = rows.model.parts.get(s);
            Packing packing = new Packing();
            packing.addAll(taken.get(s));
            budget.spend((long) left[s].length * stock.boards() * 4);
            Packing rest = rest(stock, left[s], boardsLeft[s]);
            if (rest == null) {
                return;
            }
            packing.addAll(rest);
            whole.add(countsFixed ? packing : Downsize.of(stock, packing));
        }
        int[] extras = new int[rows.model.extras.size()];
        for (int c = 0; c < master.fixed.size(); c++) {
            if (master.fixed.get(c).kind() == Kind.EXTRA) {
                extras[master.fixed.get(c).index()] = (int) Math.ceil(master.fixedValue(c) - WHOLE);
            }
        }
        worst = Math.min(worst, answers.accept(whole, new int[0][], extras) + 1);
    }

    private @Nullable Packing rest(StockCase stock, int[] left, int[] boardsLeft) {
        int n = 0;
        for (int l : left) {
            n += l > 0 ? 1 : 0;
        }
        int[] kept = new int[n];
        n = 0;
        for (int i = 0; i < left.length; i++) {
            if (left[i] > 0) {
                kept[n++] = i;
            }
        }
        Packing packing = new Packing();
        if (n > 0) {
            Packing packed = packed(stock.withDemand(left, kept).withAvailable(boardsLeft));
            if (packed == null) {
                return null;
            }
            for (int p = 0; p < packed.kinds(); p++) {
                packing.add(renumbered(packed.pattern(p), kept), packed.times(p));
            }
        }
        return packing;
    }

    private @Nullable Packing packed(StockCase rest) {
        Packing greedy = GreedyFill.pack(rest);
        if (!SubsetFill.suits(rest)) {
            return greedy;
        }
        long most = greedy == null ? Long.MAX_VALUE : greedy.cost(rest) - 1;
        Packing filled = SubsetFill.pack(rest, 0, most, budget);
        return filled == null ? greedy : filled;
    }

    private static Pattern renumbered(Pattern pattern, int[] kept) {
        int[] item = new int[pattern.kinds()];
        int[] count = new int[pattern.kinds()];
        for (int k = 0; k < item.length; k++) {
            item[k] = kept[pattern.item(k)];
            count[k] = pattern.count(k);
        }
        return new Pattern(pattern.board(), item, count);
    }

    /** Solves the programme for what is left; false when no completion can beat the best. */
    private boolean resolve() {
        double cutoff = (worst - uncounted) / rows.costUnit - 1e-6;
        if (!master.program.dual(Double.POSITIVE_INFINITY, budget) && budget.isSpent()) {
            return false;
        }
        for (int round = 0; round < ROUNDS; round++) {
            if (!master.program.primal(budget)) {
                return false;
            }
            if (!master.priceOut(PATTERNS_EACH, budget)) {
                break;
            }
        }
        return master.program.primal(budget) && master.program.objective() < cutoff && !budget.isSpent();
    }

    private void restore() {
        for (int s = 0; s < left.length; s++) {
            StockCase stock = rows.model.parts.get(s);
            for (int i = 0; i < left[s].length; i++) {
                master.program.require(rows.rowOfSize(s, i), stock.demand(i));
                master.pricing.limit(s, i, stock.demand(i));
            }
            for (int j = 0; j < boardsUsed[s].length; j++) {
                if (rows.boardRow[s][j] >= 0) {
                    master.program.require(rows.boardRow[s][j], 0);
                }
            }
        }
        master.program.dual(Double.POSITIVE_INFINITY, budget);
    }
}
