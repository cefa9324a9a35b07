package borderwright.engine.buying.suppliers;

import borderwright.engine.buying.list.Progress;
import org.jspecify.annotations.Nullable;

/** The best basket found so far, of all cases. */
final class Incumbent {
    private final ShoppingCase shopping;
    private final Progress progress;
    private final TopUp topUp;
    private @Nullable Purchase best;
    private long bound;

    Incumbent(ShoppingCase shopping, Progress progress) {
        this.shopping = shopping;
        this.progress = progress;
        this.topUp = new TopUp(shopping);
    }

    /** The best purchase; null while there is none. */
    @Nullable
    Purchase best() {
        return best;
    }

    /** Its cost, minor units; {@link Long#MAX_VALUE} while there is none. */
    long cost() {
        return best == null ? Long.MAX_VALUE : best.cost;
    }

    /** Tells who watches that no basket costs less than {@code newBound}, minor units. */
    void atLeast(long newBound) {
        bound = newBound;
        progress.better(cost(), bound);
    }

    /** Takes a basket that was found in a case, raised to its thresholds where that costs less. */
    void offer(SupplierCase c, Purchase found) {
        Purchase shifted = c.isMetBy(found.value) ? null : ThresholdRepair.of(shopping, c, found);
        if (shifted != null) {
            take(c, topUp.better(shifted));
        }
        take(c, topUp.better(found));
    }

    private void take(SupplierCase c, Purchase better) {
        if (!better.canBeHad(shopping) || !better.canBeCut(shopping)) {
            return;
        }
        c.lowerCost(better.cost);
        if (better.cost < cost()
                || (best != null && better.cost == best.cost && better.countOfBoards() < best.countOfBoards())) {
            best = better;
            progress.better(better.cost, bound);
        }
    }

    /** Greatest grains of boards and goods with which a basket of a case is of interest. */
    long target(SupplierCase c) {
        return best == null ? c.sensibleGrains() : c.targetGrains(best.cost);
    }
}
