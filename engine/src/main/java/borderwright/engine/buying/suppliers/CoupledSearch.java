package borderwright.engine.buying.suppliers;

import borderwright.engine.buying.boards.BoardModel;
import borderwright.engine.buying.boards.CountTree;
import borderwright.engine.buying.boards.DivingHeuristic;
import borderwright.engine.buying.boards.MasterProgram;
import borderwright.engine.buying.boards.PatternList;
import borderwright.engine.buying.boards.PatternTree;
import borderwright.engine.buying.boards.PriceBreakHeuristic;
import borderwright.engine.effort.Budget;
import borderwright.engine.stock.CuttingPattern;
import borderwright.engine.stock.Packing;
import borderwright.engine.stock.StockCase;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;

/** A case whose orders must reach a value: all sections and goods searched together as one model. */
final class CoupledSearch {
    private static final int MOST_ROUNDS = 8;
    private static final int MOST_FLOORS = 40;

    private final ShoppingCase shopping;
    private final SupplierCase c;
    private final SharedSearches sections;
    private final Incumbent incumbent;
    private final SectionBounds sectionFloors;
    private final List<BoardModel.Floor> floors = new ArrayList<>();
    private MasterProgram master;
    private boolean isSharp;
    private @Nullable CountTree tree;
    private int turns;

    CoupledSearch(ShoppingCase shopping, SupplierCase c, SharedSearches sections, Incumbent incumbent) {
        this.shopping = shopping;
        this.c = c;
        this.sections = sections;
        this.incumbent = incumbent;
        this.sectionFloors = new SectionBounds(shopping, c, sections);
        this.master = programme();
    }

    private MasterProgram programme() {
        return new MasterProgram(
                new CaseModel(shopping, c).model().withFloors(floors),
                incumbent.best() == null ? c.sensibleGrains() : c.targetGrains(incumbent.cost()) + shopping.grain);
    }

    /** Raises the case's bound by column generation, and by what whole boards of each section cost at least. */
    void solveProgramme(Budget part, long effort) {
        generate(part);
        for (int round = 0; round < MOST_ROUNDS && !isSharp && isOpen(part); round++) {
            List<BoardModel.Floor> missed = sectionFloors.missed(master, part, effort / 4);
            if (missed.isEmpty()) {
                isSharp = sectionFloors.isExact();
                return;
            }
            floors.addAll(missed);
            MasterProgram sharper = programme();
            sharper.addAll(master);
            master = sharper;
            tree = null;
            generate(part);
        }
        isSharp |= floors.size() >= MOST_FLOORS;
    }

    private void generate(Budget part) {
        for (int s = 0; s < shopping.sections.size(); s++) {
            Packing packing = sections.of(c, shopping.sections.get(s)).best();
            for (int p = 0; packing != null && p < packing.kinds(); p++) {
                master.add(s, packing.pattern(p));
            }
        }
        master.solve(incumbent.target(c) + 1, part);
        settle(incumbent.best() == null && master.bound() > c.sensibleGrains(), master.bound());
    }

    private void settle(boolean impossible, long boundGrains) {
        c.raiseBound(impossible ? Long.MAX_VALUE : c.wholeBound(boundGrains));
    }

    private boolean isOpen(Budget part) {
        return !part.isSpent() && c.bound() < incumbent.cost();
    }

    /** A dive, the tree over counts, and now and then every listed pattern; each turn strays another way. */
    void search(Budget part) {
        turns++;
        if (isOpen(part)) {
            new DivingHeuristic(master, incumbent.target(c) + 1, 0, turns, this::accept, part).run();
        }
        if (isOpen(part)) {
            if (tree == null) {
                tree = new CountTree(master, master.bound(), incumbent.target(c), b -> b, this::accept);
            }
            boolean done = tree.run(incumbent.target(c), part);
            settle(done && incumbent.best() == null, done ? incumbent.target(c) + 1 : tree.bound());
        }
        if (isOpen(part) && turns % 3 == 0) {
            searchListed(part);
        }
    }

    /** Lists every pattern that a better basket may use, and searches these. */
    private void searchListed(Budget part) {
        long target = incumbent.target(c);
        OptionalLong gap = master.best().gapTo(target);
        if (gap.isEmpty()) {
            return;
        }
        List<List<CuttingPattern>> patterns = new ArrayList<>();
        for (int s = 0; s < shopping.sections.size(); s++) {
            List<CuttingPattern> ofPart = PatternList.within(master, s, gap.getAsLong(), part);
            if (ofPart == null) {
                return;
            }
            patterns.add(ofPart);
        }
        PatternTree listed = new PatternTree(master.model(), patterns, target, this::accept, b -> b, part);
        if (listed.search()) {
            c.raiseBound(incumbent.best() == null ? Long.MAX_VALUE : incumbent.cost());
        }
    }

    private long accept(List<Packing> packings, int[][] packs, int[] extras) {
        int[][] needed = Purchase.packsFor(shopping, packings);
        for (int s = 0; s < packs.length; s++) {
            for (int j = 0; j < packs[s].length; j++) {
                needed[s][j] = Math.max(packs[s][j], needed[s][j]);
            }
        }
        int[][] goods = new int[shopping.covers.size()][];
        int at = 0;
        for (int g = 0; g < goods.length; g++) {
            GoodsCover cover = shopping.covers.get(g);
            goods[g] = Arrays.copyOfRange(extras, at, at + cover.offers.size());
            at += cover.offers.size();
            if (!cover.isMetBy(goods[g])) {
                goods[g] = c.cheapestGoods(cover).counts();
            }
            if (!cover.isMetBy(goods[g])) {
                return incumbent.target(c);
            }
        }
        incumbent.offer(c, new Purchase(shopping, packings, needed, goods));
        if (master.model().parts.stream().anyMatch(StockCase::isAnySoldFrom)) {
            List<Packing> gathered = new ArrayList<>();
            for (int s = 0; s < packings.size(); s++) {
                gathered.add(PriceBreakHeuristic.of(master.model().parts.get(s), packings.get(s)));
            }
            incumbent.offer(c, new Purchase(shopping, gathered, Purchase.packsFor(shopping, gathered), goods));
        }
        return incumbent.target(c);
    }
}
