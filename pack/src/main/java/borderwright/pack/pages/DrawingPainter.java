package borderwright.pack.pages;

import borderwright.engine.measure.UnitFactors;
import borderwright.pack.paper.Drawing;
import borderwright.pack.paper.Mark;
import borderwright.pack.paper.Pen;
import borderwright.pack.paper.Spot;
import borderwright.pack.paper.Tone;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.apache.pdfbox.util.Matrix;

/**
 * Paints drawings into a PDF document: one form each, its inner unit the millimetre, its text real text in the shipped font.
 *
 * <p>Not done through SVG: that turns text into outlines, which no search or screen reader finds, and is slow at the first
 * drawing.
 */
final class DrawingPainter {
    private static final float POINTS_PER_MM = (float) (72 / UnitFactors.MM_PER_INCH);

    private final PDDocument document;
    private final PackFonts fonts;

    DrawingPainter(PDDocument document, PackFonts fonts) {
        this.document = document;
        this.fonts = fonts;
    }

    /** The drawing as a form whose lower left corner is the origin, in points. */
    PDFormXObject form(Drawing drawing) throws IOException {
        // An appearance stream is a form whose writer knows the document: only then are the fonts cut down to what is
        // used.
        PDAppearanceStream form = new PDAppearanceStream(document);
        form.setResources(new PDResources());
        form.setBBox(new PDRectangle((float) drawing.widthMm(), (float) drawing.heightMm()));
        form.setMatrix(Matrix.getScaleInstance(POINTS_PER_MM, POINTS_PER_MM).createAffineTransform());
        try (PDPageContentStream out =
                new PDPageContentStream(document, form, form.getCOSObject().createOutputStream(COSName.FLATE_DECODE))) {
            out.setLineJoinStyle(1);
            for (Mark mark : drawing.marks()) {
                if (mark instanceof Mark.Path path) {
                    paint(out, path, drawing.heightMm());
                } else if (mark instanceof Mark.Text text) {
                    paint(out, text, drawing.heightMm());
                }
            }
        }
        return form;
    }

    private static void paint(PDPageContentStream out, Mark.Path path, double heightMm) throws IOException {
        Pen pen = path.pen();
        Tone fill = path.fill();
        if (pen == null && fill == null) {
            return;
        }
        if (fill != null) {
            out.setNonStrokingColor(fill.red(), fill.green(), fill.blue());
        }
        if (pen != null) {
            out.setStrokingColor(
                    pen.tone().red(), pen.tone().green(), pen.tone().blue());
            out.setLineWidth((float) pen.widthMm());
            out.setLineDashPattern(dashes(pen.dashes()), 0);
        }
        trace(out, path, heightMm);
        if (pen != null && fill != null) {
            out.fillAndStroke();
        } else if (fill != null) {
            out.fill();
        } else {
            out.stroke();
        }
    }

    private static void trace(PDPageContentStream out, Mark.Path path, double heightMm) throws IOException {
        List<Spot> spots = path.spots();
        for (int i = 0; i < spots.size(); i++) {
            float x = (float) spots.get(i).x();
            float y = (float) (heightMm - spots.get(i).y());
            if (i == 0) {
                out.moveTo(x, y);
            } else {
                out.lineTo(x, y);
            }
        }
        if (path.closed()) {
            out.closePath();
        }
    }

    private static float[] dashes(List<Double> dashes) {
        float[] pattern = new float[dashes.size()];
        for (int i = 0; i < pattern.length; i++) {
            pattern[i] = dashes.get(i).floatValue();
        }
        return pattern;
    }

    private void paint(PDPageContentStream out, Mark.Text text, double heightMm) throws IOException {
        double turn = StrictMath.toRadians(text.turnDeg());
        float c = (float) StrictMath.cos(turn);
        float s = (float) StrictMath.sin(turn);
        Spot start = text.start();
        out.beginText();
        out.setFont(fonts.of(text.face()), (float) text.size().emMm());
        out.setNonStrokingColor(
                text.tone().red(), text.tone().green(), text.tone().blue());
        out.setTextMatrix(new Matrix(c, s, -s, c, (float) start.x(), (float) (heightMm - start.y())));
        out.showText(text.text());
        out.endText();
    }
}
