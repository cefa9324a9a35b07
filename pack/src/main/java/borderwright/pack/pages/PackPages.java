package borderwright.pack.pages;

import borderwright.engine.plan.Comparison;
import borderwright.engine.plan.Plan;
import borderwright.pack.contents.CutOutList;
import borderwright.pack.contents.SheetList;
import borderwright.pack.contents.WorkingSheetList;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.PaperSize;
import borderwright.pack.paper.TypeFace;
import borderwright.pack.sheets.Sheet;
import borderwright.pack.sheets.SheetRun;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** The printed papers as PDFs. */
public final class PackPages {
    private static final Pattern KEY = Pattern.compile("`([^`<>\\n]*)`");

    private PackPages() {}

    /**
     * What a person carries to saw, bench, garden and shop, as one PDF; the same bytes for the same arguments.
     *
     * @param variants the garden and its variants side by side, {@link Comparison#NONE} for none
     * @param date printed on the brief; empty for an undated pack
     */
    public static byte[] pdf(Plan plan, Comparison variants, PaperSize paper, Optional<LocalDate> date) {
        return pdf(PageMessage.TITLE_OF_PACK, plan, SheetList.of(plan, variants, paper, date), paper, date);
    }

    /** The working: survey, pieces and strength of each box. */
    public static byte[] working(Plan plan, PaperSize paper, Optional<LocalDate> date) {
        return pdf(PageMessage.TITLE_OF_WORKING, plan, WorkingSheetList.of(plan, paper), paper, date);
    }

    /** Labels and templates of angles to cut out; empty where nothing is built. */
    public static Optional<byte[]> labels(Plan plan, PaperSize paper, Optional<LocalDate> date) {
        List<Sheet> sheets = CutOutList.of(plan, paper);
        return sheets.isEmpty()
                ? Optional.empty()
                : Optional.of(pdf(PageMessage.TITLE_OF_LABELS, plan, sheets, paper, date));
    }

    static byte[] pdf(PageMessage title, Plan plan, List<Sheet> sheets, PaperSize paper, Optional<LocalDate> date) {
        DrawingBook drawings = new DrawingBook();
        String xhtml = xhtml(title, plan, sheets, paper, drawings);
        DocumentStamp stamp = new DocumentStamp(date, xhtml);
        return title == PageMessage.TITLE_OF_PACK
                ? PdfRenderer.renderOnFewPages(xhtml, drawings, stamp)
                : PdfRenderer.render(xhtml, drawings, stamp);
    }

    private static String xhtml(
            PageMessage title, Plan plan, List<Sheet> sheets, PaperSize paper, DrawingBook drawings) {
        List<SheetRun> runs = SheetRun.of(sheets);
        PrintedFigures f = PrintedFigures.in(plan.garden().units());
        StringOutput out = new StringOutput();
        TemplateEngine.createPrecompiled(ContentType.Html)
                .render(
                        "pack.jte",
                        Map.of(
                                "plan", plan,
                                "sheets", sheets,
                                "runs", runs,
                                "title", f.text(title.of()),
                                "style", PageStyle.css(plan.garden(), runs, paper),
                                "f", f,
                                "book", drawings),
                        out);
        return TypeFace.REGULAR.writable(inQuotes(out.toString()));
    }

    /** What is to be written in the garden file stands between backticks in sentences, and on paper in quotes. */
    private static String inQuotes(String xhtml) {
        return KEY.matcher(xhtml).replaceAll("\u201c$1\u201d");
    }
}
