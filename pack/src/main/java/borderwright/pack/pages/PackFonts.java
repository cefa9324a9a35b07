package borderwright.pack.pages;

import borderwright.pack.paper.TypeFace;
import java.io.IOException;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The shipped font's two faces in one document, shared by pages and drawings.
 *
 * <p>Ligatures are off: they would make a text narrower than it was measured.
 *
 * @param regular the upright face
 * @param bold the bold face
 */
record PackFonts(PDFont regular, PDFont bold) {

    static PackFonts in(PDDocument document) throws IOException {
        return new PackFonts(load(document, TypeFace.REGULAR), load(document, TypeFace.BOLD));
    }

    PDFont of(TypeFace face) {
        return face == TypeFace.BOLD ? bold : regular;
    }

    private static PDFont load(PDDocument document, TypeFace face) throws IOException {
        TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(face.open()));
        font.setEnableGsub(false);
        return PDType0Font.load(document, font, true);
    }
}
