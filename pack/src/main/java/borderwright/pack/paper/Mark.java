package borderwright.pack.paper;

import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** One mark on paper. */
public sealed interface Mark {
    /** How far down it reaches, mm. */
    double lowestMm();

    /**
     * A polyline or a filled polygon.
     *
     * @param spots at least two places in order
     * @param closed whether the last joins the first
     * @param pen what it is stroked with; null for no stroke
     * @param fill what it is filled with; null for no fill
     */
    record Path(
            List<Spot> spots,
            boolean closed,
            @Nullable Pen pen,
            @Nullable Tone fill) implements Mark {
        /** From the first place to the last. */
        public static Path line(List<Spot> spots, @Nullable Pen pen) {
            return new Path(spots, false, pen, null);
        }

        /** Back to the first place. */
        public static Path polygon(List<Spot> spots, @Nullable Pen pen, @Nullable Tone fill) {
            return new Path(spots, true, pen, fill);
        }

        public Path {
            spots = List.copyOf(spots);
            if (spots.size() < 2) {
                throw new IllegalArgumentException("a stroke needs two places, got " + spots.size());
            }
        }

        @Override
        public double lowestMm() {
            return spots.stream().mapToDouble(Spot::y).max().orElseThrow();
        }
    }

    /**
     * A line of text.
     *
     * @param text what it says, only characters that the font has
     * @param at its anchor, on the baseline
     * @param size its size
     * @param anchor which part of the text the anchor is
     * @param turnDeg turned anticlockwise by, degrees
     * @param face of the font
     * @param tone its tone
     */
    record Text(String text, Spot at, TextSize size, Anchor anchor, double turnDeg, TypeFace face, Tone tone)
            implements Mark {
        /** Where its baseline starts. */
        public Spot start() {
            double width = face.widthEm(text) * size.emMm();
            double back = switch (anchor) {
                case START -> 0;
                case MIDDLE -> width / 2;
                case END -> width;
            };
            return at.minus(TextBox.along(turnDeg).times(back));
        }

        /** The room that it takes. */
        public TextBox box() {
            return TextBox.of(this);
        }

        @Override
        public double lowestMm() {
            TextBox box = box();
            return IntStream.range(0, 4)
                    .mapToDouble(i -> box.corner(i).y())
                    .max()
                    .orElseThrow();
        }
    }

    /** Which part of a text stands at its place. */
    enum Anchor {
        START,
        MIDDLE,
        END
    }
}
