package borderwright.pack.paper;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Writes a drawing as an SVG document: sizes in mm, one user unit to a millimetre, each layer a group with its name as {@code id}. */
public final class SvgWriter {
    private SvgWriter() {}

    public static String write(Drawing drawing) {
        String w = number(drawing.widthMm());
        String h = number(drawing.heightMm());
        StringBuilder out = new StringBuilder();
        out.append(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%smm\" height=\"%smm\" viewBox=\"0 0 %s %s\" role=\"img\""
                        .formatted(w, h, w, h));
        out.append(" font-family=\"DejaVu Sans, sans-serif\">\n");
        out.append("<title>").append(escaped(drawing.says())).append("</title>\n");
        out.append("<rect width=\"").append(w).append("\" height=\"").append(h).append("\" fill=\"#ffffff\"/>\n");
        int next = 0;
        for (Drawing.Layer layer : drawing.layers()) {
            marks(out, drawing.marks().subList(next, layer.from()));
            out.append("<g id=\"").append(escaped(layer.name())).append("\">\n");
            marks(out, drawing.marks().subList(layer.from(), layer.to()));
            out.append("</g>\n");
            next = layer.to();
        }
        marks(out, drawing.marks().subList(next, drawing.marks().size()));
        return out.append("</svg>\n").toString();
    }

    private static void marks(StringBuilder out, List<Mark> marks) {
        for (Mark mark : marks) {
            if (mark instanceof Mark.Path path) {
                path(out, path);
            } else if (mark instanceof Mark.Text text) {
                text(out, text);
            }
        }
    }

    private static void path(StringBuilder out, Mark.Path path) {
        String d = path.spots().stream()
                .map(s -> number(s.x()) + " " + number(s.y()))
                .collect(Collectors.joining("L", "M", path.closed() ? "Z" : ""));
        out.append("<path d=\"").append(d).append('"');
        out.append(" fill=\"").append(tone(path.fill())).append('"');
        Pen pen = path.pen();
        if (pen != null) {
            out.append(" stroke=\"").append(pen.tone().hex()).append('"');
            out.append(" stroke-width=\"").append(number(pen.widthMm())).append("\" stroke-linejoin=\"round\"");
            if (!pen.dashes().isEmpty()) {
                out.append(" stroke-dasharray=\"").append(dashes(pen.dashes())).append('"');
            }
        }
        out.append("/>\n");
    }

    private static String dashes(List<Double> dashes) {
        return dashes.stream().map(SvgWriter::number).collect(Collectors.joining(" "));
    }

    private static String tone(@Nullable Tone tone) {
        return tone == null ? "none" : tone.hex();
    }

    private static void text(StringBuilder out, Mark.Text text) {
        String x = number(text.at().x());
        String y = number(text.at().y());
        out.append("<text x=\"").append(x).append("\" y=\"").append(y).append('"');
        out.append(" font-size=\"").append(number(text.size().emMm())).append('"');
        out.append(" fill=\"").append(text.tone().hex()).append('"');
        if (text.anchor() != Mark.Anchor.START) {
            out.append(" text-anchor=\"")
                    .append(text.anchor() == Mark.Anchor.END ? "end" : "middle")
                    .append('"');
        }
        if (text.face() == TypeFace.BOLD) {
            out.append(" font-weight=\"bold\"");
        }
        if (text.turnDeg() != 0) {
            out.append(" transform=\"rotate(%s %s %s)\"".formatted(number(-text.turnDeg()), x, y));
        }
        out.append('>').append(escaped(text.text())).append("</text>\n");
    }

    /** Thousandths of a millimetre, without trailing zeros. */
    private static String number(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    private static String escaped(String text) {
        StringBuilder out = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                default -> out.append(c < 0x20 ? ' ' : c);
            }
        }
        return out.toString();
    }
}
