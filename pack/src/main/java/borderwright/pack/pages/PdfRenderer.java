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
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
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
        return draw(xhtml, drawings, stamp, fills -> Optional.empty());
    }

    /**
     * As {@link #render}, but a run of sheets that ends on a page less than half full is set tighter where that saves this page.
     *
     * @param xhtml whose runs of sheets have the numbers that {@link PageStyle} gives them
     */
    static byte[] renderOnFewPages(String xhtml, DrawingBook drawings, DocumentStamp stamp) {
        return draw(xhtml, drawings, stamp, fills -> {
            Set<Integer> thin = thin(fills);
            return thin.isEmpty() ? Optional.empty() : Optional.of(tighter(xhtml, fills, thin, drawings, stamp));
        });
    }

    private static byte[] tighter(
            String xhtml, List<RunFill> before, Set<Integer> thin, DrawingBook drawings, DocumentStamp stamp) {
        return draw(PageStyle.tightened(xhtml, thin), drawings, stamp, after -> {
            Set<Integer> saved = new TreeSet<>();
            for (int i = 0; i < before.size(); i++) {
                if (after.get(i).pages() < before.get(i).pages()) {
                    saved.add(before.get(i).run());
                }
            }
            return saved.equals(thin)
                    ? Optional.empty()
                    : Optional.of(draw(PageStyle.tightened(xhtml, saved), drawings, stamp, fills -> Optional.empty()));
        });
    }

    private static Set<Integer> thin(List<RunFill> fills) {
        Set<Integer> thin = new TreeSet<>();
        fills.stream().filter(RunFill::endsOnAThinPage).forEach(fill -> thin.add(fill.run()));
        return thin;
    }

    /** Lays out, and writes unless something better is made of how the pages are filled. */
    private static byte[] draw(
            String xhtml, DrawingBook drawings, DocumentStamp stamp, Function<List<RunFill>, Optional<byte[]>> better) {
        XRLog.setLoggingEnabled(false);
        try (PDDocument document = new PDDocument()) {
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
            try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
                renderer.layout();
                Optional<byte[]> other = better.apply(RunFill.of(renderer.getRootBox()));
                if (other.isPresent()) {
                    return other.get();
                }
                renderer.createPDFWithoutClosing();
                stamp.on(document);
                ByteArrayOutputStream out = new ByteArrayOutputStream();
                // Packing the small objects too would take longer than all else of the writing, to save a tenth.
                document.save(out, CompressParameters.NO_COMPRESSION);
                return out.toByteArray();
            }
        } catch (IOException e) {
            throw new UncheckedIOException("the PDF could not be written", e);
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
