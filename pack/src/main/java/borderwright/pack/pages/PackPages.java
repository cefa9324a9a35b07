package borderwright.pack.pages;

import borderwright.engine.plan.Comparison;
import borderwright.engine.plan.Plan;
import borderwright.pack.contents.SheetList;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.PaperSize;
import borderwright.pack.paper.TypeFace;
import borderwright.pack.sheets.Sheet;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** The printed pack as a PDF. */
public final class PackPages {
    private static final Pattern KEY = Pattern.compile("`([^`<>\\n]*)`");

    private PackPages() {}

    /**
     * All sheets as one PDF; the same bytes for the same arguments.
     *
     * @param variants the garden and its variants side by side, {@link Comparison#NONE} for none
     * @param date printed on the brief; empty for an undated pack
     */
    public static byte[] pdf(Plan plan, Comparison variants, PaperSize paper, Optional<LocalDate> date) {
        List<Sheet> sheets = SheetList.of(plan, variants, paper, date);
        DrawingBook drawings = new DrawingBook();
        String xhtml = xhtml(plan, sheets, paper, drawings);
        return PdfRenderer.render(xhtml, drawings, new DocumentStamp(date, xhtml));
    }

    private static String xhtml(Plan plan, List<Sheet> sheets, PaperSize paper, DrawingBook drawings) {
        StringOutput out = new StringOutput();
        TemplateEngine.createPrecompiled(ContentType.Html)
                .render(
                        "pack.jte",
                        Map.of(
                                "plan", plan,
                                "sheets", sheets,
                                "style", PageStyle.css(plan.garden(), sheets, paper),
                                "f", PrintedFigures.in(plan.garden().units()),
                                "book", drawings),
                        out);
        return TypeFace.REGULAR.writable(inQuotes(out.toString()));
    }

    /** What is to be written in the garden file stands between backticks in sentences, and on paper in quotes. */
    private static String inQuotes(String xhtml) {
        return KEY.matcher(xhtml).replaceAll("\u201c$1\u201d");
    }
}
