package borderwright.engine.strength.bracing;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.strength.Cure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a search for the least cure found.
 *
 * @param cheapest the cheapest way with the walls requested that holds; none where no bracing tried holds
 * @param box that way, built up
 * @param alternatives other ways that hold, cheapest first, one of each kind
 * @param tried how many ways were looked into with the walls requested
 * @param end whether any of the searches was cut short; what was found may then not be the cheapest
 */
public record CureAnswer(
        Optional<Cure> cheapest, Optional<Box> box, List<Cure> alternatives, int tried, SearchEnd end) {
    public CureAnswer {
        alternatives = List.copyOf(alternatives);
    }

    /** All ways that hold, cheapest first. */
    public List<Cure> all() {
        List<Cure> all = new ArrayList<>(alternatives);
        cheapest.ifPresent(all::add);
        all.sort(Comparator.comparingDouble(Cure::cost));
        return all;
    }
}
