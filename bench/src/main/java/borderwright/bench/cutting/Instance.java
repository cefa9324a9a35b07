package borderwright.bench.cutting;

import borderwright.engine.buying.list.ShoppingProblem;
import borderwright.engine.prices.BoardOffer;
import borderwright.engine.stock.Demand;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A problem with a name.
 *
 * @param name its name
 * @param problem what is bought and cut
 */
public record Instance(String name, ShoppingProblem problem) {
    /** One board length at price 1, no kerf, one tick for each unit of length. */
    static Instance of(String name, int capacity, List<Integer> pieces) {
        return of(name, pieces, Map.of(capacity, 1L));
    }

    /** Boards at a price by length, no kerf, one tick for each unit of length. */
    static Instance of(String name, List<Integer> pieces, Map<Integer, Long> boards) {
        Map<Integer, Integer> byLength = new TreeMap<>();
        pieces.forEach(p -> byLength.merge(p, 1, Integer::sum));
        return ofCounts(name, byLength, boards);
    }

    /** The same from numbers of pieces by length. */
    static Instance ofCounts(String name, Map<Integer, Integer> pieces, Map<Integer, Long> boards) {
        List<Demand> demands = new ArrayList<>();
        new TreeMap<>(pieces).forEach((length, count) -> demands.add(new Demand("s", length, count, "p" + length)));
        List<BoardOffer> offers = new ArrayList<>();
        new TreeMap<>(boards)
                .forEach((length, price) -> offers.add(new BoardOffer("A", "s", length, price, 1, Integer.MAX_VALUE)));
        return new Instance(
                name, ShoppingProblem.builder(demands).boards(offers).build());
    }
}
