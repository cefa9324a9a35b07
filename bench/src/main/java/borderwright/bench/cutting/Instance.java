package borderwright.bench.cutting;

import borderwright.engine.buying.BoardOffer;
import borderwright.engine.buying.ShoppingProblem;
import borderwright.engine.stock.Demand;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A cutting problem without kerf: pieces by length, boards by length and price.
 *
 * @param name its name
 * @param pieces number of pieces by length
 * @param boards price by length
 */
public record Instance(String name, Map<Integer, Integer> pieces, Map<Integer, Long> boards) {
    /** An instance of one board length at price 1. */
    static Instance of(String name, int capacity, List<Integer> pieces) {
        return of(name, pieces, Map.of(capacity, 1L));
    }

    static Instance of(String name, List<Integer> pieces, Map<Integer, Long> boards) {
        Map<Integer, Integer> byLength = new TreeMap<>();
        pieces.forEach(p -> byLength.merge(p, 1, Integer::sum));
        return new Instance(name, byLength, new TreeMap<>(boards));
    }

    /** As a shopping problem: one tick for each unit of length, no kerf. */
    public ShoppingProblem problem() {
        List<Demand> demands = new ArrayList<>();
        pieces.forEach((length, count) -> demands.add(new Demand("s", length, count, "p" + length)));
        List<BoardOffer> offers = new ArrayList<>();
        boards.forEach((length, price) -> offers.add(new BoardOffer("A", "s", length, price, 1, Integer.MAX_VALUE)));
        return new ShoppingProblem(demands, offers, List.of(), List.of(), List.of(), List.of(), 0, 0);
    }
}
