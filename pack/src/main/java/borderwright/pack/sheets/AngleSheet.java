package borderwright.pack.sheets;

import borderwright.pack.paper.Drawing;
import java.util.List;

/**
 * Angles at full size.
 *
 * @param drawings one for each angle
 */
public record AngleSheet(List<Drawing> drawings) implements Sheet {
    public AngleSheet {
        drawings = List.copyOf(drawings);
    }

    @Override
    public String title() {
        return "Angle templates, full size";
    }

    @Override
    public Part part() {
        return Part.SAW;
    }
}
