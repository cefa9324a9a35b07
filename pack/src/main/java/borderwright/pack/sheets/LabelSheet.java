package borderwright.pack.sheets;

import borderwright.pack.paper.Drawing;
import java.util.List;

/**
 * Labels to cut out.
 *
 * @param pages full of labels
 */
public record LabelSheet(List<Drawing> pages) implements Sheet {
    public LabelSheet {
        pages = List.copyOf(pages);
    }

    @Override
    public String title() {
        return "Labels to cut out";
    }

    @Override
    public Part part() {
        return Part.LABELS;
    }
}
