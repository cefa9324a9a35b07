package borderwright.pack.pages;

import java.awt.geom.GeneralPath;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** The straight strokes of a PDF page where they come on the paper, in millimetres. */
final class PageStrokes extends PDFGraphicsStreamEngine {
    private static final double MM_PER_POINT = 25.4 / 72;

    private final List<List<Point2D>> strokes = new ArrayList<>();
    private final GeneralPath path = new GeneralPath();

    private PageStrokes(PDPage page) {
        super(page);
    }

    /** Each stroke as its places in order. */
    static List<List<Point2D>> of(PDPage page) throws IOException {
        PageStrokes engine = new PageStrokes(page);
        engine.processPage(page);
        return engine.strokes;
    }

    @Override
    public void moveTo(float x, float y) {
        path.moveTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        path.lineTo(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        path.curveTo(x1, y1, x2, y2, x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
        return path.getCurrentPoint();
    }

    @Override
    public void closePath() {
        path.closePath();
    }

    @Override
    public void endPath() {
        path.reset();
    }

    @Override
    public void strokePath() {
        List<Point2D> places = new ArrayList<>();
        double[] c = new double[6];
        for (PathIterator it = path.getPathIterator(null); !it.isDone(); it.next()) {
            int kind = it.currentSegment(c);
            if (kind == PathIterator.SEG_MOVETO || kind == PathIterator.SEG_LINETO) {
                places.add(new Point2D.Double(c[0] * MM_PER_POINT, c[1] * MM_PER_POINT));
            }
        }
        strokes.add(places);
        path.reset();
    }

    @Override
    public void fillPath(int windingRule) {
        path.reset();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        strokePath();
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        path.append(new java.awt.geom.Line2D.Double(p0, p1), false);
    }

    @Override
    public void drawImage(PDImage image) {}

    @Override
    public void clip(int windingRule) {}

    @Override
    public void shadingFill(COSName name) {}
}
