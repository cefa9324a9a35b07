package borderwright.pack.drawings;

import borderwright.pack.paper.DrawingBuilder;
import borderwright.pack.paper.Spot;
import borderwright.pack.paper.Tone;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.List;
import java.util.Map;

/** A text as a QR code (ISO/IEC 18004), with the quiet margin of four squares that readers need. */
final class CodeDrawing {
    private static final int QUIET = 4;

    private CodeDrawing() {}

    /**
     * Draws a code.
     *
     * @param text what it says, at most some hundreds of characters
     * @param at its top left corner, margin included
     * @param sideMm its side, margin included, mm
     */
    static void draw(DrawingBuilder sketch, String text, Spot at, double sideMm) {
        ByteMatrix code = code(text);
        double square = sideMm / (code.getWidth() + 2 * QUIET);
        for (int row = 0; row < code.getHeight(); row++) {
            int from = 0;
            while (from < code.getWidth()) {
                int to = from;
                while (to < code.getWidth() && code.get(to, row) == 1) {
                    to++;
                }
                if (to > from) {
                    bar(sketch, at, square, row, from, to);
                }
                from = to + 1;
            }
        }
    }

    /** A run of dark squares as one bar, so that no hairline shows between them. */
    private static void bar(DrawingBuilder sketch, Spot at, double square, int row, int from, int to) {
        double left = at.x() + (QUIET + from) * square;
        double right = at.x() + (QUIET + to) * square;
        double top = at.y() + (QUIET + row) * square;
        sketch.shape(
                List.of(
                        new Spot(left, top),
                        new Spot(right, top),
                        new Spot(right, top + square),
                        new Spot(left, top + square)),
                null,
                Tone.BLACK);
    }

    private static ByteMatrix code(String text) {
        try {
            return Encoder.encode(text, ErrorCorrectionLevel.M, Map.of(EncodeHintType.CHARACTER_SET, "UTF-8"))
                    .getMatrix();
        } catch (WriterException e) {
            throw new IllegalArgumentException("a text of " + text.length() + " characters fits no QR code", e);
        }
    }
}
