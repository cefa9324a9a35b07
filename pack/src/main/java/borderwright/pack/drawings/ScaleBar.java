package borderwright.pack.drawings;

import borderwright.engine.measure.UnitFactors;
import borderwright.engine.measure.UnitSystem;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Drawing;
import borderwright.pack.paper.DrawingBuilder;
import borderwright.pack.paper.Mark;
import borderwright.pack.paper.Pen;
import borderwright.pack.paper.Scale;
import borderwright.pack.paper.Spot;
import borderwright.pack.paper.TextSize;
import borderwright.pack.paper.Tone;
import borderwright.pack.paper.TypeFace;
import java.util.List;
import java.util.function.DoubleFunction;

/** The scale in words and as a bar, so that a drawing copied smaller can still be measured. */
final class ScaleBar {
    private static final List<Double> METRIC_MM = List.of(50., 100., 200., 500., 1000., 2000., 5000., 10000., 20000.);
    private static final double FOOT_MM = UnitFactors.MM_PER_FOOT;
    private static final List<Double> IMPERIAL_MM = List.of(
            FOOT_MM / 4, FOOT_MM / 2, FOOT_MM, 2 * FOOT_MM, 5 * FOOT_MM, 10 * FOOT_MM, 20 * FOOT_MM, 50 * FOOT_MM);

    private ScaleBar() {}

    /** Height that it takes, mm. */
    static final double HEIGHT_MM = 7;

    private static final String LAYER = "scale";

    /** Between it and the lowest mark above it, mm. */
    private static final double CLEAR_MM = 2;

    /**
     * A drawing no higher than its lowest mark and the scale below it.
     *
     * @param roomyMm a height at which there is room for all of it, mm
     * @param drawn the drawing at a height, mm
     */
    static Drawing underTheLowest(double roomyMm, DoubleFunction<Drawing> drawn) {
        Drawing roomy = drawn.apply(roomyMm);
        double usedMm = roomy.lowestMm(LAYER) + CLEAR_MM + HEIGHT_MM;
        return usedMm < roomy.heightMm() ? drawn.apply(usedMm) : roomy;
    }

    static void draw(DrawingBuilder sketch, Scale scale, UnitSystem units, Spot lowerLeft) {
        sketch.layer(LAYER);
        PrintedFigures f = PrintedFigures.in(units);
        List<Double> lengths = units == UnitSystem.METRIC ? METRIC_MM : IMPERIAL_MM;
        double lengthMm =
                lengths.stream().filter(l -> scale.paper(l) >= 18).findFirst().orElse(lengths.get(lengths.size() - 1));
        double paper = scale.paper(lengthMm);
        Spot bar = lowerLeft.plus(1, -3.2);
        sketch.shape(
                List.of(bar, bar.plus(paper / 2, 0), bar.plus(paper / 2, 1.2), bar.plus(0, 1.2)), Pen.FINE, Tone.BLACK);
        sketch.shape(
                List.of(bar.plus(paper / 2, 0), bar.plus(paper, 0), bar.plus(paper, 1.2), bar.plus(paper / 2, 1.2)),
                Pen.FINE,
                Tone.WHITE);
        sketch.text(
                f.length(lengthMm) + "   " + f.text(DrawingMessage.DRAWN_SCALE.of(scale.words())),
                bar.plus(paper + 2, 1.5),
                TextSize.NORMAL,
                Mark.Anchor.START,
                TypeFace.REGULAR);
    }
}
