package borderwright.bench.cutting;

import borderwright.engine.buying.list.ShoppingProblem;
import borderwright.engine.prices.BoardOffer;
import borderwright.engine.stock.Demand;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Pieces and boards of one section in whole units, kerf included, for solvers that know nothing of ours.
 *
 * @param size length of each kind of piece with a kerf, falling
 * @param demand pieces of each kind
 * @param capacity length of each board with a kerf
 * @param price price of each board
 */
record PlainCase(List<Integer> size, List<Integer> demand, List<Integer> capacity, List<Integer> price) {
    /** The one section of a problem without terms, packs or limits. */
    static PlainCase of(ShoppingProblem problem) {
        List<Demand> demands = new ArrayList<>(problem.demands());
        demands.sort(Comparator.comparingLong(Demand::lengthTicks).reversed());
        if (!problem.terms().isEmpty()
                || demands.stream().map(Demand::section).distinct().count() != 1) {
            throw new IllegalArgumentException("only one section and no terms can be laid side by side");
        }
        return new PlainCase(
                demands.stream()
                        .map(d -> Math.toIntExact(d.lengthTicks() + problem.kerfTicks()))
                        .toList(),
                demands.stream().map(Demand::quantity).toList(),
                problem.boards().stream()
                        .map(b -> Math.toIntExact(b.lengthTicks() - 2 * problem.trimTicks() + problem.kerfTicks()))
                        .toList(),
                problem.boards().stream()
                        .map(BoardOffer::packPrice)
                        .map(Math::toIntExact)
                        .toList());
    }

    /** Boards that the longest-first rule fills, of the longest kind. */
    int firstFit() {
        int longest = capacity.stream().mapToInt(c -> c).max().orElse(0);
        List<Integer> room = new ArrayList<>();
        for (int i = 0; i < size.size(); i++) {
            for (int n = 0; n < demand.get(i); n++) {
                int k = 0;
                while (k < room.size() && room.get(k) < size.get(i)) {
                    k++;
                }
                if (k == room.size()) {
                    room.add(longest);
                }
                room.set(k, room.get(k) - size.get(i));
            }
        }
        return room.size();
    }
}
