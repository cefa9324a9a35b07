package borderwright.pack.paper;

import java.util.List;

/**
 * A finished drawing.
 *
 * @param widthMm width of its sheet, mm
 * @param heightMm height of its sheet, mm
 * @param says what it shows, for a reader who cannot see it
 * @param marks in the order in which they are drawn
 * @param layers stretches of the marks that belong together, in their order; empty where nothing was put on a layer
 * @param leftOut labels for which there was no room anywhere; to be listed beside the drawing
 */
public record Drawing(
        double widthMm, double heightMm, String says, List<Mark> marks, List<Layer> layers, List<String> leftOut) {
    public Drawing {
        marks = List.copyOf(marks);
        layers = List.copyOf(layers);
        leftOut = List.copyOf(leftOut);
        if (!(widthMm > 0 && heightMm > 0)) {
            throw new IllegalArgumentException("a drawing needs a size, got " + widthMm + " x " + heightMm + " mm");
        }
    }

    /**
     * Marks that can be shown and hidden together.
     *
     * @param name unique in its drawing, fit for an identifier
     * @param from number of its first mark
     * @param to number of the first mark after it
     */
    public record Layer(String name, int from, int to) {}

    /** How far down its marks reach, those of one layer left out, mm. */
    public double lowestMm(String butLayer) {
        double lowest = 0;
        for (Layer layer : layers) {
            if (layer.name().startsWith(butLayer)) {
                continue;
            }
            for (Mark mark : marks.subList(layer.from(), layer.to())) {
                lowest = StrictMath.max(lowest, mark.lowestMm());
            }
        }
        return lowest;
    }
}
