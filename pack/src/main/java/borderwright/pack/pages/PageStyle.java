package borderwright.pack.pages;

import borderwright.engine.garden.Garden;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Orientation;
import borderwright.pack.paper.PaperSize;
import borderwright.pack.paper.Tone;
import borderwright.pack.paper.TypeFace;
import borderwright.pack.sheets.SheetRun;
import java.util.List;
import java.util.Set;
import java.util.StringJoiner;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The look of the pages: one grid, one type scale, black on white. */
final class PageStyle {
    /**
     * The type scale, points: feet of pages; heads of tables; text read seated; text read standing; headings and ticks;
     * money and names of sheets; the garden's name and stops on cards.
     */
    static final Set<Double> SIZES_PT = Set.of(7.4, 8.0, 9.0, 10.0, 11.0, 17.0, 21.0);

    /** Stand for the numbers in the words of a page's foot. */
    private static final String PAGE = "{page}";

    private static final String PAGES = "{pages}";
    /** Before and after a number. */
    private static final Pattern COUNTED = Pattern.compile("(?=\\{pages?\\})|(?<=\\{pages?\\})");

    private static final int LONGEST_NAME = 64;

    private PageStyle() {}

    /** Style rules, with a page of its own for each run of sheets: its head says the garden and the part. */
    static String css(Garden garden, List<SheetRun> runs, PaperSize paper) {
        StringBuilder out = new StringBuilder(COMMON.formatted(TypeFace.FAMILY, Tone.ACCENT.hex()));
        out.append("@page { size: %smm %smm; margin: 0; }\n"
                .formatted(number(paper.widthMm(Orientation.PORTRAIT)), number(paper.heightMm(Orientation.PORTRAIT))));
        for (int i = 0; i < runs.size(); i++) {
            SheetRun run = runs.get(i);
            out.append("@page run%d { size: %smm %smm; margin: %smm %smm %smm %smm;\n"
                    .formatted(
                            i,
                            number(paper.widthMm(run.orientation())),
                            number(paper.heightMm(run.orientation())),
                            number(PaperSize.TOP_MM),
                            number(paper.sideMm()),
                            number(PaperSize.BOTTOM_MM),
                            number(paper.sideMm())));
            margin(out, "top-left", string(shortened(garden.name())), "left");
            margin(out, "top-right", string(run.part().title()), "right");
            margin(out, "bottom-left", string(foot(garden)), "left");
            margin(out, "bottom-right", pageNumber(garden), "right");
            // A block takes its width from the first page, so that each run must say its own.
            out.append("}\n#run%d { page: run%d; width: %smm; }\n"
                    .formatted(i, i, number(paper.roomWidthMm(run.orientation()))));
        }
        return out.toString();
    }

    /** The same document with these runs of sheets set tighter: less air between lines, the same sizes of type. */
    static String tightened(String xhtml, Set<Integer> runs) {
        StringBuilder rules = new StringBuilder();
        runs.forEach(run -> rules.append(TIGHT.replace("RUN", "#run" + run)));
        return xhtml.replaceFirst("</style>", Matcher.quoteReplacement(rules + "</style>"));
    }

    private static void margin(StringBuilder out, String place, String content, String align) {
        boolean top = place.startsWith("top");
        out.append("  @").append(place).append(" { content: ").append(content);
        out.append("; text-align: ").append(align);
        out.append("; vertical-align: ").append(top ? "bottom" : "top");
        out.append(top ? "; padding-bottom: 2.5mm" : "; padding-top: 2.5mm");
        out.append("; font-family: '").append(TypeFace.FAMILY).append("'; font-size: ");
        out.append(top ? "9pt; font-weight: 700" : "7.4pt").append("; }\n");
    }

    /** The number of the page and of all pages, which the renderer counts. */
    private static String pageNumber(Garden garden) {
        String words = PrintedFigures.in(garden.units()).text(PageMessage.FOOT_PAGE.of(PAGE, PAGES));
        StringJoiner content = new StringJoiner(" ");
        for (String part : COUNTED.split(words, -1)) {
            content.add(
                    switch (part) {
                        case PAGE -> "counter(page)";
                        case PAGES -> "counter(pages)";
                        default -> string(part);
                    });
        }
        return content.toString();
    }

    private static String foot(Garden garden) {
        PrintedFigures f = PrintedFigures.in(garden.units());
        String invented = garden.isInvented() ? f.text(PageMessage.FOOT_INVENTED.of()) + " " : "";
        return invented + f.text(PageMessage.FOOT_GUIDANCE.of());
    }

    static String shortened(String name) {
        return name.length() <= LONGEST_NAME ? name : name.substring(0, LONGEST_NAME - 1) + "\u2026";
    }

    /** A CSS string in which nothing but letters, figures and spaces stands for itself. */
    static String string(String text) {
        StringBuilder out = new StringBuilder("\"");
        for (char c : TypeFace.BOLD.writable(text).toCharArray()) {
            if (c == ' ' || (c < 0x80 && Character.isLetterOrDigit(c))) {
                out.append(c);
            } else {
                out.append("\\%x ".formatted((int) c));
            }
        }
        return out.append('"').toString();
    }

    private static String number(double value) {
        return java.math.BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    private static final String TIGHT = """
            RUN { line-height: 1.14; }
            RUN .lead, RUN p.head, RUN p.row, RUN table.places td { line-height: 1.1; }
            RUN p { margin-bottom: 0.8mm; }
            RUN h2 { margin: 1.5mm 0 0.5mm 0; }
            RUN h2.board { margin: 0.8mm 0 0.2mm 0; }
            RUN h1 { margin-bottom: 0.8mm; }
            RUN .sheet + .sheet { margin-top: 2.5mm; }
            RUN table.list { margin-bottom: 0.7mm; }
            RUN table.list td { padding-top: 0.15mm; padding-bottom: 0.15mm; }
            RUN table.cuts td { padding-top: 0.1mm; padding-bottom: 0.1mm; }
            RUN .card { padding-top: 0.8mm; padding-bottom: 0.2mm; margin-bottom: 1.6mm; }
            RUN table.steps { margin-bottom: 0.6mm; }
            RUN li { margin-bottom: 0.2mm; }
            """;

    private static final String COMMON = """
            * { box-sizing: border-box; }
            body { margin: 0; font-family: '%1$s'; font-size: 9pt; line-height: 1.22; color: #111111; }
            .run { page-break-before: always; }
            #run0 { page-break-before: auto; }
            .standing { font-size: 10pt; line-height: 1.2; }
            .sheet + .sheet { margin-top: 4mm; }
            .sheet.fresh { page-break-before: always; margin-top: 0; }
            h1 { font-size: 21pt; line-height: 1.15; margin: 0 0 1.5mm 0; word-wrap: break-word; }
            h1.sheetname { font-size: 17pt; page-break-after: avoid; }
            h2 { font-size: 11pt; margin: 2.4mm 0 0.8mm 0; page-break-after: avoid; }
            h2.board { font-size: 10pt; margin: 1.2mm 0 0.3mm 0; page-break-after: avoid; }
            p { margin: 0 0 1.2mm 0; word-wrap: break-word; }
            ul { margin: 0 0 1.2mm 0; padding-left: 4.5mm; }
            li { margin: 0 0 0.5mm 0; word-wrap: break-word; }
            .lead { font-size: 10pt; line-height: 1.17; }
            .money { font-size: 17pt; font-weight: 700; line-height: 1.2; }
            .note { font-size: 8pt; }
            .alert { border: 0.5mm solid %2$s; padding: 1.6mm 3mm 0.8mm 3mm; margin: 1.5mm 0 2mm 0; }
            .alert h2 { margin-top: 0; color: %2$s; }
            .sure { border: 0.25mm solid #111111; padding: 1.6mm 3mm 0.8mm 3mm; margin: 1.5mm 0 2mm 0; }
            .two { width: 100%%; border-collapse: collapse; table-layout: fixed; }
            .two > tr > td { width: 50%%; vertical-align: top; padding: 0 4mm 0 0; }
            .floor { width: 100%%; border-collapse: collapse; table-layout: fixed; }
            .floor > tr > td { vertical-align: top; padding: 0; }
            .floor td.drawn { width: 44.5%%; }
            .three { width: 100%%; border-collapse: collapse; table-layout: fixed; }
            .three > tr > td { width: 33.3%%; vertical-align: top; padding: 0 3mm 0 0; }
            table.list { width: 100%%; border-collapse: collapse; margin-bottom: 1.2mm; -fs-table-paginate: paginate; }
            table.list th { text-align: left; font-size: 8pt; padding: 0.5mm 1.6mm 0.5mm 0; vertical-align: bottom;
              border-bottom: 0.35mm solid #111111; }
            table.list td { padding: 0.35mm 1.6mm 0.35mm 0; vertical-align: top; border-bottom: 0.1mm solid #8c8c88;
              word-wrap: break-word; }
            table.list tr { page-break-inside: avoid; }
            table.list .n { text-align: right; white-space: nowrap; padding-right: 4mm; }
            table.list th.n { white-space: normal; }
            table.list .k { white-space: nowrap; }
            table.list tr.sum td { border-bottom: none; }
            table.list tr.total td { border-top: 0.35mm solid #111111; border-bottom: none; font-weight: 700; }
            .keep { page-break-inside: avoid; }
            .accent { color: %2$s; font-weight: 700; }
            .b { font-weight: 700; }
            .k { white-space: nowrap; }
            .foot { white-space: nowrap; margin-right: 2.5mm; }
            .label { white-space: nowrap; font-weight: 700; margin-right: 2.5mm; }
            .one { white-space: nowrap; margin-right: 1.2mm; }
            table.fixed { table-layout: fixed; }
            .name { font-size: 11pt; font-weight: 700; line-height: 1.2; }
            .tick { font-size: 11pt; line-height: 1; }
            object { display: block; }
            a { color: #111111; text-decoration: none; }
            a.page:after { content: target-counter(attr(href), page); }
            .halves { width: 100%%; border-collapse: collapse; table-layout: fixed; }
            .halves > tr > td { width: 50%%; vertical-align: top; padding: 0 1.25mm 0 0; }
            .halves > tr > td + td { padding: 0 0 0 1.25mm; }
            .card { border: 0.5mm solid #111111; padding: 1.2mm 3mm 0.4mm 3mm; margin: 0 0 2.4mm 0; }
            .card p { margin-bottom: 0.4mm; }
            .card .big { font-size: 21pt; font-weight: 700; line-height: 1.1; }
            .card .name { font-size: 11pt; font-weight: 700; line-height: 1.2; }
            .card .ticks { line-height: 1.28; }
            .card .label { margin-right: 2mm; }
            h2 .plain { font-weight: 400; }
            .card .label { font-weight: 400; }
            table.cuts { margin-bottom: 0.8mm; }
            table.cuts td { padding: 0.2mm 1.2mm 0.2mm 0; }
            table.cuts td.n { padding-right: 2mm; }
            table.cuts .label { margin-right: 0; }
            p.head { margin: 0.3mm 0 0 0; line-height: 1.14; page-break-after: avoid; }
            p.row { margin: 0.3mm 0 0 0; line-height: 1.14; }
            table.places { width: 100%%; border-collapse: collapse; table-layout: fixed; border-top: 0.1mm solid #8c8c88; }
            table.places td { font-size: 10pt; padding: 0.1mm 2mm 0.1mm 0; line-height: 1.14; vertical-align: top; }
            table.steps { border-bottom: 0.1mm solid #8c8c88; margin-bottom: 1.2mm; }
            table.steps p { margin-bottom: 0.5mm; }
            """;
}
