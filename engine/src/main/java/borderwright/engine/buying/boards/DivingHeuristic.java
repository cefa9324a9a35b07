package borderwright.engine.buying.boards;

import borderwright.engine.buying.boards.ModelColumn.Kind;
import borderwright.engine.effort.Budget;
import borderwright.engine.linear.Basis;
import borderwright.engine.stock.Packing;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/**
 * From a solved master programme to whole numbers of boards: whole parts are taken at once, then the fullest fractions are
 * rounded up one after another, and the programme is solved again for what is left. At every step the rest is also packed
 * by a heuristic.
 *
 * <p>See docs/decisions/0053.
 */
public final class DivingHeuristic {
    private static final double WHOLE = 1e-5;
    private static final double NEARLY = 0.9;
    /** Pricings after each step where the cost is within what is wanted, and where it is not yet. */
    private static final int ROUNDS = 3;

    private static final int ROUNDS_BEYOND = 40;
    private static final int PATTERNS_EACH = 40;
    /** Dead ends after which a dive is given up, and patterns tried at each step. */
    private static final int MOST_DEAD_ENDS = 12;

    private static final int MOST_TRIED = 3;

    private final MasterProgram master;
    private final ModelRows rows;
    private final AnswerListener answers;
    private final Budget budget;
    private final SplittableRandom random;
    private final boolean straight;
    private final ResidualDemand remainder;
    private final List<Step> steps = new ArrayList<>();
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
    public DivingHeuristic(
            MasterProgram master, long worst, long enough, long seed, AnswerListener answers, Budget budget) {
        this.master = master;
        this.rows = master.rows();
        this.answers = answers;
        this.budget = budget;
        this.worst = worst;
        this.enough = enough;
        this.straight = seed == 0;
        this.random = new SplittableRandom(seed);
        this.remainder = new ResidualDemand(master, budget);
    }

    /** What was known before a step, to come back to: what was taken so far, the basis, and what was rounded up since. */
    private record Step(int taken, Basis.Stand stand, Set<Integer> tried) {}

    /** Dives; the master programme is left as it was. */
    public void run() {
        // An earlier search may have run out of work half-way.
        if (!master.restore(budget) || !master.optimise(budget)) {
            return;
        }
        Basis.Stand start = master.stand();
        master.narrow(mostOfProgramme());
        complete();
        int deadEnds = 0;
        Step step = newStep();
        while (worst > enough && !budget.isSpent() && remainder.anyLeft()) {
            boolean onward = take(step);
            if (onward) {
                complete();
                onward = worst > enough && remainder.anyLeft() && resolve();
            }
            if (onward) {
                step = newStep();
                continue;
            }
            if (worst <= enough || ++deadEnds > MOST_DEAD_ENDS) {
                break;
            }
            Step back = stepBack();
            if (back == null) {
                break;
            }
            step = back;
        }
        remainder.undo(0);
        master.takeUp(start);
        master.restore(budget);
    }

    private Step newStep() {
        Step step = new Step(remainder.takings(), master.stand(), new HashSet<>());
        steps.add(step);
        return step;
    }

    /** Goes back to the last step at which another pattern may be tried; null when there is none. */
    private @Nullable Step stepBack() {
        while (!steps.isEmpty()) {
            Step step = steps.get(steps.size() - 1);
            if (step.tried.size() < MOST_TRIED) {
                remainder.undo(step.taken);
                master.takeUp(step.stand);
                return master.restore(budget) ? step : null;
            }
            steps.remove(steps.size() - 1);
        }
        return null;
    }

    /** Takes what is whole, then the fullest fraction that was not tried here, and with it all that are nearly whole. */
    private boolean take(Step step) {
        int fullest = -1;
        double most = 0;
        int[] times = new int[master.patterns().size()];
        for (int p = 0; p < times.length; p++) {
            double x = master.patternValue(p);
            times[p] = (int) Math.floor(x + WHOLE);
            double part = x - times[p];
            if (part > WHOLE && !step.tried.contains(p)) {
                double weight = straight ? part : part * (0.5 + random.nextDouble());
                if (weight > most) {
                    most = weight;
                    fullest = p;
                }
                times[p] += part > NEARLY ? 1 : 0;
            }
        }
        if (fullest < 0 && !step.tried.isEmpty()) {
            return false;
        }
        step.tried.add(fullest);
        if (fullest >= 0) {
            // Taken already where it is nearly whole.
            double part = master.patternValue(fullest) - Math.floor(master.patternValue(fullest) + WHOLE);
            times[fullest] += part > NEARLY ? 0 : 1;
        }
        boolean moved = false;
        for (int p = 0; p < times.length; p++) {
            moved |= times[p] > 0 && remainder.take(master.patterns().get(p), times[p]);
        }
        return moved;
    }

    /** Packs the rest by a heuristic, and offers the whole. */
    private void complete() {
        List<Packing> whole = remainder.packed();
        if (whole == null) {
            return;
        }
        int[] extras = new int[rows.model.extras.size()];
        for (int c = 0; c < master.fixed().size(); c++) {
            if (master.fixed().get(c).kind() == Kind.EXTRA) {
                extras[master.fixed().get(c).index()] = (int) Math.ceil(master.fixedValue(c) - WHOLE);
            }
        }
        worst = Math.min(worst, answers.accept(whole, new int[0][], extras) + 1);
    }

    /** The greatest value of the programme for what is left with which an answer can still be of interest. */
    private double mostOfProgramme() {
        return (worst - 1 - remainder.uncounted()) / rows.costUnit + 1e-7 * Math.max(1, worst / rows.costUnit * 1e-3);
    }

    /** Solves the programme for what is left; false when no completion can beat the best. */
    private boolean resolve() {
        double most = mostOfProgramme();
        master.narrowToRequired();
        if (!master.restore(budget) && budget.isSpent()) {
            return false;
        }
        for (int round = 0; round < ROUNDS_BEYOND; round++) {
            if (!master.optimise(budget)) {
                return false;
            }
            if (round >= ROUNDS && master.value() <= most) {
                break;
            }
            if (!master.priceOut(PATTERNS_EACH, budget) || master.figures().leastValue() > most) {
                break;
            }
        }
        return master.optimise(budget) && master.value() <= most && !budget.isSpent();
    }
}
