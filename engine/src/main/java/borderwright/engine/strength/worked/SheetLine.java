package borderwright.engine.strength.worked;

import borderwright.engine.message.Message;
import java.util.Optional;

/**
 * One line of a worked sheet.
 *
 * @param symbol of the figure, such as {@code fm,d}; empty for a remark
 * @param formula how it follows from the symbols of earlier lines, or what it is; the remark itself where there is no symbol
 * @param value the figure; none where the line is a remark
 * @param unit its unit; empty for a bare number
 * @param source clause or table, or that there is none
 */
public record SheetLine(String symbol, Message formula, Optional<Double> value, String unit, Message source) {}
