package borderwright.engine.strength.worked;

import java.util.Optional;

/**
 * One line of a worked sheet.
 *
 * @param symbol what the line settles, such as {@code fm,d}; empty for a heading or remark
 * @param formula how, in symbols of earlier lines; the remark itself where there is no symbol
 * @param value the figure; none where the line is a remark
 * @param unit its unit; empty for a bare number
 * @param source clause, table or "common practice, no source"
 */
public record SheetLine(String symbol, String formula, Optional<Double> value, String unit, String source) {
    public boolean isRemark() {
        return value.isEmpty();
    }
}
