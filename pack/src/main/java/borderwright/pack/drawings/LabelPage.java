package borderwright.pack.drawings;

import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Drawing;
import borderwright.pack.paper.DrawingBuilder;
import borderwright.pack.paper.Mark;
import borderwright.pack.paper.Pen;
import borderwright.pack.paper.Spot;
import borderwright.pack.paper.TextSize;
import borderwright.pack.paper.Tone;
import borderwright.pack.paper.TypeFace;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Pages of labels on one grid, with lines to cut along. */
public final class LabelPage {
    private static final int COLUMNS = 3;
    private static final int ROWS = 8;
    private static final double CODE_MM = 22;
    private static final double PAD_MM = 2;
    private static final double LINE_MM = 3.2;
    private static final Pen CUT = new Pen(0.15, Tone.GREY, List.of(1.5, 1.0));

    private static final Pattern BREAK =
            Pattern.compile("(?<!\\bx) (?!x\\b|(mm|m|m3|litres|quarts|cu|yd|ft|in)\\b|\\d+(-\\d+/\\d+|/\\d+)?\")");

    private LabelPage() {}

    /**
     * One label.
     *
     * @param name in large type
     * @param lines under it; what does not fit is in the code
     * @param coded what its QR code says
     */
    public record Label(String name, List<String> lines, String coded) {
        public Label {
            lines = List.copyOf(lines);
        }
    }

    /** As many pages as the labels take. */
    public static List<Drawing> pages(List<Label> labels, PrintedFigures f, double widthMm, double heightMm) {
        List<Drawing> pages = new ArrayList<>();
        int each = COLUMNS * ROWS;
        for (int from = 0; from < labels.size(); from += each) {
            pages.add(page(labels.subList(from, Math.min(labels.size(), from + each)), f, widthMm, heightMm));
        }
        return pages;
    }

    private static Drawing page(List<Label> labels, PrintedFigures f, double widthMm, double heightMm) {
        double width = widthMm / COLUMNS;
        double height = heightMm / ROWS;
        int rows = (labels.size() + COLUMNS - 1) / COLUMNS;
        DrawingBuilder sketch = new DrawingBuilder(widthMm, rows * height);
        for (int row = 0; row <= rows; row++) {
            sketch.line(CUT, new Spot(0, row * height), new Spot(widthMm, row * height));
        }
        for (int column = 0; column <= COLUMNS; column++) {
            sketch.line(CUT, new Spot(column * width, 0), new Spot(column * width, rows * height));
        }
        for (int i = 0; i < labels.size(); i++) {
            int row = i / COLUMNS;
            label(sketch, labels.get(i), new Spot((i % COLUMNS) * width, row * height), width, height);
        }
        return sketch.finish(f.text(DrawingMessage.DRAWN_LABELS.of(
                labels.get(0).name(), labels.get(labels.size() - 1).name())));
    }

    private static void label(DrawingBuilder sketch, Label label, Spot at, double width, double height) {
        CodeDrawing.draw(sketch, label.coded(), at.plus(PAD_MM, (height - CODE_MM) / 2), CODE_MM);
        double left = CODE_MM + PAD_MM + 1;
        double room = width - left - PAD_MM;
        sketch.text(label.name(), at.plus(left, PAD_MM + 5), TextSize.HEAD, Mark.Anchor.START, TypeFace.BOLD);
        double y = PAD_MM + 10;
        for (String line : label.lines()) {
            for (String part : wrapped(line, room)) {
                if (y < height - PAD_MM) {
                    sketch.text(part, at.plus(left, y), TextSize.NORMAL, Mark.Anchor.START, TypeFace.REGULAR);
                    y += LINE_MM;
                }
            }
        }
    }

    /** A line broken at blanks so that each part fits; a number keeps its unit, a section its sizes. */
    private static List<String> wrapped(String line, double roomMm) {
        List<String> parts = new ArrayList<>();
        String part = "";
        for (String word : BREAK.splitAsStream(line).toList()) {
            String longer = part.isEmpty() ? word : part + " " + word;
            if (!part.isEmpty() && widthMm(longer) > roomMm) {
                parts.add(part);
                part = word;
            } else {
                part = longer;
            }
        }
        parts.add(part);
        return parts;
    }

    private static double widthMm(String text) {
        return TypeFace.REGULAR.widthEm(text) * TextSize.NORMAL.emMm();
    }
}
