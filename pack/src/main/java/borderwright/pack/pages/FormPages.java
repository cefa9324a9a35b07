package borderwright.pack.pages;

import borderwright.engine.measure.UnitSystem;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.form.FormDrawings;
import borderwright.pack.form.SurveyForm;
import borderwright.pack.paper.Orientation;
import borderwright.pack.paper.PaperSize;
import borderwright.pack.paper.TypeFace;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.Map;
import java.util.Optional;

/** The survey form as a PDF of two pages. */
public final class FormPages {
    private FormPages() {}

    /**
     * The form to fill in; the same bytes for the same arguments.
     *
     * @param paper that it is printed on
     * @param units in which its grid and its examples are
     */
    public static byte[] pdf(PaperSize paper, UnitSystem units) {
        PrintedFigures f = PrintedFigures.in(units);
        DrawingBook drawings = new DrawingBook();
        StringOutput out = new StringOutput();
        TemplateEngine.createPrecompiled(ContentType.Html)
                .render(
                        "form.jte",
                        Map.of(
                                "form",
                                new SurveyForm(paper, units),
                                "grid",
                                FormDrawings.grid(
                                        paper.roomWidthMm(Orientation.PORTRAIT),
                                        FormStyle.sketchMm(paper),
                                        units,
                                        f.sentences()),
                                "style",
                                FormStyle.css(paper, f),
                                "f",
                                f,
                                "book",
                                drawings),
                        out);
        String xhtml = TypeFace.REGULAR.writable(out.toString());
        return PdfRenderer.render(xhtml, drawings, new DocumentStamp(Optional.empty(), xhtml));
    }
}
