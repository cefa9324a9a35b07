package borderwright.pack.pages;

import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.form.FormMessage;
import borderwright.pack.paper.Orientation;
import borderwright.pack.paper.PaperSize;
import borderwright.pack.paper.Tone;
import borderwright.pack.paper.TypeFace;

/** The look of the survey form: text that reads at arm's length, rows that a gloved hand can write in. */
final class FormStyle {
    private static final double TOP_MM = 10;
    private static final double BOTTOM_MM = 12;
    /** What stands on the first page besides the grid, mm. */
    private static final double BESIDE_THE_GRID_MM = 159;

    private FormStyle() {}

    /** Height that is left for the grid, mm. */
    static double sketchMm(PaperSize paper) {
        return paper.heightMm(Orientation.PORTRAIT) - TOP_MM - BOTTOM_MM - BESIDE_THE_GRID_MM;
    }

    static String css(PaperSize paper, PrintedFigures f) {
        return COMMON.formatted(
                TypeFace.FAMILY,
                Tone.ACCENT.hex(),
                paper.widthMm(Orientation.PORTRAIT),
                paper.heightMm(Orientation.PORTRAIT),
                TOP_MM,
                paper.sideMm(),
                BOTTOM_MM,
                PageStyle.string(f.text(FormMessage.FORM_FOOT.of())));
    }

    private static final String COMMON = """
            @page { size: %3$smm %4$smm; margin: %5$smm %6$smm %7$smm %6$smm;
              @bottom-left { content: %8$s; text-align: left; vertical-align: top; padding-top: 2mm;
                font-family: '%1$s'; font-size: 7.4pt; }
              @bottom-right { content: counter(page) " / " counter(pages); text-align: right; vertical-align: top;
                padding-top: 2mm; font-family: '%1$s'; font-size: 7.4pt; } }
            * { box-sizing: border-box; }
            body { margin: 0; font-family: '%1$s'; font-size: 10pt; line-height: 1.2; color: #111111; }
            .second { page-break-before: always; }
            h1 { font-size: 17pt; line-height: 1.1; margin: 0; }
            h2 { font-size: 11pt; line-height: 1.2; margin: 2.2mm 0 0.6mm 0; page-break-after: avoid; }
            .head { margin: 2.6mm 0 0.5mm 0; page-break-after: avoid; }
            .head h2 { display: inline-block; margin: 0; }
            .head span { margin-left: 1mm; }
            .head span.b:first-child { margin-left: 0; }
            p { margin: 0 0 0.8mm 0; }
            ul { margin: 0; padding-left: 4.5mm; }
            li { margin: 0; }
            table { border-collapse: collapse; width: 100%%; }
            .two { table-layout: fixed; }
            .two > tr > td { vertical-align: top; padding: 0 0 0 5mm; }
            .two > tr > td.first { padding: 0; }
            .line { table-layout: fixed; }
            .line td { vertical-align: bottom; padding: 0 2mm 0 0; }
            .roomy td { padding-top: 2mm; }
            .line .head { margin-bottom: 0; }
            .line td.write { border-bottom: 0.25mm solid #111111; }
            .alert { border: 0.5mm solid %2$s; padding: 1mm 2.5mm 1.2mm 2.5mm; margin: 1.5mm 0 0 0; }
            .alert h2 { margin-top: 0; color: %2$s; }
            .fill { table-layout: fixed; }
            .fill th { text-align: left; font-weight: 700; line-height: 1.05; padding: 0.6mm 0.5mm 0.4mm 0.8mm;
              vertical-align: bottom; border-bottom: 0.35mm solid #111111; }
            .fill td { height: 7.2mm; border: 0.15mm solid #8c8c88; }
            .tick { font-size: 11pt; line-height: 1; }
            .choice { margin-right: 1mm; white-space: nowrap; }
            .b { font-weight: 700; }
            object { display: block; }
            """;
}
