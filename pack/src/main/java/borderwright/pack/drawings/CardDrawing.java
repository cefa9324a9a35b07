package borderwright.pack.drawings;

import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.cutting.SawSetting;
import borderwright.engine.cutting.SawSetting.CutFor;
import borderwright.engine.cutting.SawSetting.Lean;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Drawing;
import borderwright.pack.paper.DrawingBuilder;
import borderwright.pack.paper.Hatch;
import borderwright.pack.paper.Mark;
import borderwright.pack.paper.Pen;
import borderwright.pack.paper.Spot;
import borderwright.pack.paper.TextSize;
import borderwright.pack.paper.Tone;
import borderwright.pack.paper.TypeFace;
import java.util.List;

/**
 * The board as it lies on the saw, for a person who stands at its near edge: from above, the far edge at the top, and its near
 * edge with the blade. What is kept is shaded, what falls off is hatched. Not to scale; angles are true.
 */
public final class CardDrawing {
    private static final double HEIGHT_MM = 19.4;
    private static final double SQUARE_HEIGHT_MM = 16.2;
    private static final double TOP_MM = 4.6;
    private static final double BOARD_MM = 9.2;
    private static final double EDGE_MM = 5;
    private static final double LEFT_MM = 8;
    private static final double GAP_MM = 7;
    private static final double EDGE_VIEW_MM = 24;
    private static final double BEYOND_MM = 2;
    private static final double STOP_MM = 1.6;

    private final CuttingPlan.SetUp setUp;
    private final PrintedFigures f;
    private final DrawingBuilder sketch;

    private CardDrawing(CuttingPlan.SetUp setUp, PrintedFigures f, DrawingBuilder sketch) {
        this.setUp = setUp;
        this.f = f;
        this.sketch = sketch;
    }

    /**
     * The drawing of one card.
     *
     * @param widthMm of the whole drawing
     */
    public static Drawing draw(CuttingPlan.SetUp setUp, PrintedFigures f, double widthMm) {
        // A square cut looks the same from the near edge, so that its one view needs no name.
        boolean square = setUp.setting().lean() == Lean.NONE;
        DrawingBuilder sketch = new DrawingBuilder(widthMm, square ? SQUARE_HEIGHT_MM : HEIGHT_MM);
        CardDrawing drawing = new CardDrawing(setUp, f, sketch);
        double right = widthMm - (square ? LEFT_MM : EDGE_VIEW_MM + GAP_MM);
        drawing.view(LEFT_MM, right, TOP_MM, BOARD_MM, setUp.setting().fenceDeg());
        if (!square) {
            double left = widthMm - EDGE_VIEW_MM;
            drawing.view(
                    left,
                    widthMm - 1,
                    TOP_MM + (BOARD_MM - EDGE_MM) / 2,
                    EDGE_MM,
                    setUp.setting().tiltDeg());
            drawing.caption(DrawingMessage.CARD_FROM_ABOVE, (LEFT_MM + right) / 2);
            drawing.caption(DrawingMessage.CARD_NEAR_EDGE, left + EDGE_VIEW_MM / 2);
        }
        drawing.stop();
        drawing.names(right);
        return sketch.finish(f.text(DrawingMessage.DRAWN_CARD.of(setUp.number())));
    }

    private boolean keepsLeft() {
        return setUp.setting().cutFor() == CutFor.PIECE;
    }

    /** Where the cut crosses the middle of the board: a fresh end takes little off. */
    private double cutAt(double left, double right) {
        return left + (keepsLeft() ? 0.68 : 0.3) * (right - left);
    }

    /** How far the cut's top, or far end, lies right of its middle, over half the height. */
    private double aside(double halfMm, double degrees) {
        Lean lean = setUp.setting().lean();
        double sign = lean == Lean.RIGHT ? 1 : lean == Lean.LEFT ? -1 : 0;
        return sign * halfMm * StrictMath.tan(StrictMath.toRadians(degrees));
    }

    private void view(double left, double right, double top, double high, double degrees) {
        double bottom = top + high;
        double at = cutAt(left, right);
        double aside = aside(high / 2, degrees);
        Spot upper = new Spot(at + aside, top);
        Spot lower = new Spot(at - aside, bottom);
        List<Spot> before = List.of(new Spot(left, top), upper, lower, new Spot(left, bottom));
        List<Spot> after = List.of(upper, new Spot(right, top), new Spot(right, bottom), lower);
        sketch.shape(keepsLeft() ? before : after, Pen.EDGE, Tone.LIGHT);
        sketch.shape(keepsLeft() ? after : before, Pen.FINE, null);
        sketch.hatch(keepsLeft() ? after : before, Hatch.WASTE);
        double beyond = aside(high / 2 + BEYOND_MM, degrees);
        sketch.line(Pen.HEAVY, new Spot(at + beyond, top - BEYOND_MM), new Spot(at - beyond, bottom + BEYOND_MM));
    }

    private void caption(DrawingMessage caption, double middle) {
        sketch.text(
                f.text(caption.of()),
                new Spot(middle, HEIGHT_MM - 0.8),
                TextSize.NORMAL,
                Mark.Anchor.MIDDLE,
                TypeFace.REGULAR);
    }

    private void stop() {
        if (setUp.stop().ticks() == 0) {
            return;
        }
        double bottom = TOP_MM + BOARD_MM;
        sketch.shape(
                List.of(
                        new Spot(LEFT_MM - STOP_MM, TOP_MM),
                        new Spot(LEFT_MM, TOP_MM),
                        new Spot(LEFT_MM, bottom),
                        new Spot(LEFT_MM - STOP_MM, bottom)),
                null,
                Tone.BLACK);
        sketch.text(
                f.text(DrawingMessage.CARD_STOP.of()),
                new Spot(LEFT_MM - STOP_MM, TOP_MM - 1.2),
                TextSize.NORMAL,
                Mark.Anchor.MIDDLE,
                TypeFace.BOLD);
    }

    private void names(double right) {
        double at = cutAt(LEFT_MM, right);
        double middle = keepsLeft() ? (LEFT_MM + at) / 2 : (at + right) / 2;
        double line = TOP_MM + BOARD_MM / 2;
        sketch.text(
                f.text(DrawingMessage.CARD_KEEP.of()),
                new Spot(middle, setUp.setting().faceUp() == SawSetting.FaceUp.EITHER ? line + 1.3 : line - 0.4),
                TextSize.NAME,
                Mark.Anchor.MIDDLE,
                TypeFace.BOLD);
        if (setUp.setting().faceUp() == SawSetting.FaceUp.EITHER) {
            return;
        }
        sketch.text(
                f.text(DrawingMessage.CARD_FACE.of(setUp.setting().faceUp())),
                new Spot(middle, line + 3.2),
                TextSize.NORMAL,
                Mark.Anchor.MIDDLE,
                TypeFace.REGULAR);
    }
}
