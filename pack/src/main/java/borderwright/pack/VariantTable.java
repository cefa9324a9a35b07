package borderwright.pack;

import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * The garden and its variants side by side.
 *
 * @param rows the garden as wished first, then its variants in the order written
 * @param verdict what the cheapest saves against the garden as wished, a sentence
 */
public record VariantTable(List<Row> rows, String verdict) {
    public static final VariantTable NONE = new VariantTable(List.of(), "");

    public VariantTable {
        rows = List.copyOf(rows);
    }

    /**
     * One variant.
     *
     * @param name its name
     * @param changed what differs, in words; empty for the garden as wished
     * @param cost boards, fixings and delivery; empty when no plan could be made
     * @param less how much less it costs than the garden as wished, negative when more; empty for the garden itself
     * @param boardMetres length of all boards, m
     * @param growingM2 area inside the walls, m2
     * @param planters number of planters
     * @param shortfalls what does not hold or cannot be met, each a sentence
     */
    public record Row(
            String name,
            String changed,
            Optional<Money> cost,
            Optional<Money> less,
            double boardMetres,
            double growingM2,
            int planters,
            List<String> shortfalls) {
        public Row {
            shortfalls = List.copyOf(shortfalls);
        }
    }
}
