package borderwright.pack.sheets;

import borderwright.pack.paper.Drawing;
import java.util.List;

/**
 * Angles at full size.
 *
 * @param rows drawings one below another: those of corners alone, those of cuts three side by side
 */
public record AngleSheet(List<List<Drawing>> rows) implements Sheet {
    public AngleSheet {
        rows = rows.stream().map(List::copyOf).toList();
    }

    @Override
    public String title() {
        return "Angle templates, full size";
    }

    @Override
    public Part part() {
        return Part.LABELS;
    }
}
