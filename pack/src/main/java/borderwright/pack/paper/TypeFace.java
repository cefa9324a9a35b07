package borderwright.pack.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The two faces of the shipped font: how wide a text is, and which characters can be written at all. */
public final class TypeFace {
    public static final TypeFace REGULAR = new TypeFace("DejaVuSans.ttf");
    public static final TypeFace BOLD = new TypeFace("DejaVuSans-Bold.ttf");

    /** Family name on pages; made up on purpose, so that a font of the machine never stands in unnoticed. */
    public static final String FAMILY = "Borderwright Sans";

    private static final char MISSING = '\u25a1';

    private final String file;
    private final int[] advances = new int[0x10000];
    private int unitsPerEm;

    private TypeFace(String file) {
        this.file = file;
    }

    /** The font file. */
    public InputStream open() {
        InputStream stream = TypeFace.class.getResourceAsStream("/borderwright/pack/fonts/" + file);
        if (stream == null) {
            throw new IllegalStateException("the font " + file + " is missing from the class path");
        }
        return stream;
    }

    /** Width of a text, in ems. */
    public synchronized double widthEm(String text) {
        load();
        long sum = 0;
        for (int i = 0; i < text.length(); i++) {
            sum += StrictMath.max(0, advances[text.charAt(i)]);
        }
        return sum / (double) unitsPerEm;
    }

    /** The same text with every character that the font lacks, and every control character but line ends, replaced. */
    public synchronized String writable(String text) {
        load();
        StringBuilder out = new StringBuilder(text.length());
        text.codePoints().forEach(c -> out.append(isWritable(c) ? (char) c : MISSING));
        return out.toString();
    }

    private boolean isWritable(int c) {
        return c == '\n' || (c >= 0x20 && c < advances.length && advances[c] >= 0);
    }

    private void load() {
        if (unitsPerEm > 0) {
            return;
        }
        try (InputStream stream = open();
                TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(stream))) {
            CmapLookup glyphs = font.getUnicodeCmapLookup();
            for (int c = 0; c < advances.length; c++) {
                int glyph = glyphs.getGlyphId(c);
                advances[c] = glyph == 0 ? -1 : font.getAdvanceWidth(glyph);
            }
            unitsPerEm = font.getUnitsPerEm();
        } catch (IOException e) {
            throw new UncheckedIOException("the font " + file + " cannot be read", e);
        }
    }
}
