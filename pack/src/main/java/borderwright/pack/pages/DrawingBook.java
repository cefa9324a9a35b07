package borderwright.pack.pages;

import borderwright.pack.paper.Drawing;
import java.util.ArrayList;
import java.util.List;

/** The drawings of one document, numbered as the templates ask for them. */
public final class DrawingBook {
    private final List<Drawing> drawings = new ArrayList<>();

    /** Takes a drawing in; its number is what the page refers to it by. */
    public int add(Drawing drawing) {
        drawings.add(drawing);
        return drawings.size() - 1;
    }

    Drawing get(int number) {
        return drawings.get(number);
    }
}
