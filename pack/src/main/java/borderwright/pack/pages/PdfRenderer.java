package borderwright.pack.pages;

import borderwright.pack.paper.TypeFace;
import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.FSObjectDrawerFactory;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxOutputDevice;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.render.RenderingContext;
import com.openhtmltopdf.util.XRLog;
import java.awt.Rectangle;
import java.awt.Shape;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;

/** Lays an XHTML document out as a tagged PDF, its drawings painted in place. */
final class PdfRenderer {
    /** Marks an {@code object} element as one of our drawings; its {@code data} is the drawing's number. */
    static final String DRAWING_TYPE = "application/x-borderwright-drawing";

    private PdfRenderer() {}

    /** The PDF. */
    static byte[] render(String xhtml, DrawingBook drawings, DocumentStamp stamp) {
        try (LaidOut document = new LaidOut(xhtml, drawings)) {
            return document.write(stamp);
        } catch (IOException e) {
            throw unwritten(e);
        }
    }

    /**
     * As {@link #render}, but a run of sheets that ends on a page less than half full is set tighter where that saves this page.
     *
     * @param xhtml whose runs of sheets have the numbers that {@link PageStyle} gives them
     */
    static byte[] renderOnFewPages(String xhtml, DrawingBook drawings, DocumentStamp stamp) {
        try (LaidOut usual = new LaidOut(xhtml, drawings)) {
            Set<Integer> thin = thin(usual.fills());
            if (thin.isEmpty()) {
                return usual.write(stamp);
            }
            try (LaidOut tight = new LaidOut(PageStyle.tightened(xhtml, thin), drawings)) {
                Set<Integer> saved = saved(usual.fills(), tight.fills());
                if (saved.isEmpty()) {
                    return usual.write(stamp);
                }
                return saved.equals(thin)
                        ? tight.write(stamp)
                        : render(PageStyle.tightened(xhtml, saved), drawings, stamp);
            }
        } catch (IOException e) {
            throw unwritten(e);
        }
    }

    private static Set<Integer> thin(List<RunFill> fills) {
        Set<Integer> thin = new TreeSet<>();
        fills.stream().filter(RunFill::endsOnAThinPage).forEach(fill -> thin.add(fill.run()));
        return thin;
    }

    /** Runs that take fewer pages than before. */
    private static Set<Integer> saved(List<RunFill> before, List<RunFill> after) {
        Set<Integer> saved = new TreeSet<>();
        for (int i = 0; i < before.size(); i++) {
            if (after.get(i).pages() < before.get(i).pages()) {
                saved.add(before.get(i).run());
            }
        }
        return saved;
    }

    private static UncheckedIOException unwritten(IOException fault) {
        return new UncheckedIOException("the PDF could not be written", fault);
    }

    /** A document on its pages that is not written yet. */
    private static final class LaidOut implements AutoCloseable {
        private final PDDocument document = new PDDocument();
        private final PdfBoxRenderer renderer;

        LaidOut(String xhtml, DrawingBook drawings) throws IOException {
            XRLog.setLoggingEnabled(false);
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.usePDDocument(document);
            builder.usePdfUaAccessibility(true);
            PackFonts fonts = PackFonts.in(document);
            builder.useFont(new PDFontSupplier(fonts.regular()), TypeFace.FAMILY, 400, FontStyle.NORMAL, true);
            builder.useFont(new PDFontSupplier(fonts.bold()), TypeFace.FAMILY, 700, FontStyle.NORMAL, true);
            builder.useObjectDrawerFactory(new Factory(drawings, new DrawingPainter(document, fonts)));
            builder.useUnicodeLineBreaker(new FigureBreaker());
            builder.withHtmlContent(xhtml, null);
            builder.withProducer("Borderwright");
            renderer = builder.buildPdfRenderer();
            renderer.layout();
        }

        List<RunFill> fills() {
            return RunFill.of(renderer.getRootBox());
        }

        byte[] write(DocumentStamp stamp) throws IOException {
            renderer.createPDFWithoutClosing();
            stamp.on(document);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            // Packing the small objects too would take longer than all else of the writing, to save a tenth.
            document.save(out, CompressParameters.NO_COMPRESSION);
            return out.toByteArray();
        }

        @Override
        public void close() throws IOException {
            renderer.close();
            document.close();
        }
    }

    /** Hands each drawing element the painter. */
    private record Factory(DrawingBook drawings, DrawingPainter painter) implements FSObjectDrawerFactory {
        @Override
        public @Nullable FSObjectDrawer createDrawer(Element e) {
            return isReplacedObject(e) ? new Drawer(drawings, painter) : null;
        }

        @Override
        public boolean isReplacedObject(Element e) {
            return DRAWING_TYPE.equals(e.getAttribute("type"));
        }
    }

    /** Places one drawing's form on the page. */
    private record Drawer(DrawingBook drawings, DrawingPainter painter) implements FSObjectDrawer {
        @Override
        public @Nullable Map<Shape, String> drawObject(
                Element e,
                double x,
                double y,
                double width,
                double height,
                OutputDevice outputDevice,
                RenderingContext context,
                int dotsPerPixel) {
            try {
                PDFormXObject form = painter.form(drawings.get(Integer.parseInt(e.getAttribute("data"))));
                Rectangle place = new Rectangle((int) x, (int) y, (int) width, (int) height);
                ((PdfBoxOutputDevice) outputDevice).drawPdfAsImage(form, place, (float) width, (float) height);
            } catch (IOException fault) {
                throw new UncheckedIOException("a drawing could not be painted", fault);
            }
            return null;
        }
    }
}
