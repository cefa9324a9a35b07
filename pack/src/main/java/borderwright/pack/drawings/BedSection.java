package borderwright.pack.drawings;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.garden.GroundSpec;
import borderwright.engine.ground.BoxGround;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.plan.Plan;
import borderwright.pack.paper.Drawing;
import borderwright.pack.paper.DrawingBuilder;
import borderwright.pack.paper.Hatch;
import borderwright.pack.paper.Mark;
import borderwright.pack.paper.Pen;
import borderwright.pack.paper.Spot;
import borderwright.pack.paper.TextSize;
import borderwright.pack.paper.Tone;
import java.util.List;

/** The first box cut through from front to back, not to scale: what lies under it and how thick. */
public final class BedSection {
    private static final double HEIGHT_MM = 62;
    private static final double GROUND_MM = 34;
    private static final double TRENCH_MM = 18;

    private BedSection() {}

    public static Drawing draw(Plan plan, double widthMm) {
        LengthFormat lengths = new LengthFormat(plan.garden().units());
        GroundSpec wish = plan.garden().ground();
        BoxGround ground = plan.site().ground().boxes().get(0);
        Box box = plan.boxes().get(0);
        boolean hard = wish.surface().isHard();
        DrawingBuilder sketch = new DrawingBuilder(widthMm, HEIGHT_MM);
        double left = widthMm * 0.12;
        double right = widthMm * 0.52;
        double wall = 3;
        double top = 8;
        double bed = hard ? GROUND_MM - 5 : GROUND_MM + 8;
        double dug = hard ? bed : GROUND_MM + TRENCH_MM;
        double margin = hard ? 0 : 6;
        if (hard) {
            sketch.line(Pen.HEAVY, new Spot(2, GROUND_MM), new Spot(right + 20, GROUND_MM));
        } else {
            sketch.line(
                    Pen.HEAVY,
                    new Spot(2, GROUND_MM),
                    new Spot(left - margin, GROUND_MM),
                    new Spot(left - margin, dug),
                    new Spot(right + margin, dug),
                    new Spot(right + margin, GROUND_MM),
                    new Spot(right + 20, GROUND_MM));
        }
        if (!hard && ground.gravelM3() > 0) {
            List<Spot> gravel = rectangle(left - margin, bed, right + margin, dug);
            sketch.hatch(gravel, Hatch.GROUND);
            sketch.shape(gravel, Pen.FINE, null);
        }
        for (double x : List.of(left, right - wall)) {
            sketch.shape(rectangle(x, top, x + wall, bed), Pen.EDGE, Tone.LIGHT);
            if (hard) {
                sketch.shape(rectangle(x, bed, x + wall, GROUND_MM), Pen.EDGE, Tone.BLACK);
            }
        }
        double x = right + 24;
        note(sketch, x, top + 2, "wall " + lengths.length(box.plan().heightMm()) + " above the bed", right, top + 4);
        if (hard) {
            note(sketch, x, GROUND_MM - 6, "feet: heights in the table", right, GROUND_MM - 2.5);
            note(sketch, x, GROUND_MM + 6, "paving or roof, not dug", right + 14, GROUND_MM);
        } else {
            double gravel = ground.bedMm() - ground.dugToMm();
            note(
                    sketch,
                    x,
                    GROUND_MM - 6,
                    ground.turfM3() > 0 ? "turf off " + lengths.length(wish.turfMm()) : "ground",
                    right + 14,
                    GROUND_MM);
            note(sketch, x, bed - 1, "bed, level", right + margin, bed);
            if (gravel > 0) {
                note(
                        sketch,
                        x,
                        bed + 6,
                        "gravel " + lengths.length(gravel) + " compacted"
                                + (ground.layers() > 1 ? ", in thinner layers" : ""),
                        right + margin - 2,
                        (bed + dug) / 2);
            }
            note(
                    sketch,
                    x,
                    dug + 3,
                    plan.site().ground().sheet().isPresent() ? "dug to, membrane on it" : "dug to",
                    right + margin - 4,
                    dug);
        }
        return sketch.finish(
                "The bed of " + ground.box() + " cut through: wall, bed, gravel and level dug to; not to scale");
    }

    private static void note(DrawingBuilder sketch, double x, double y, String text, double toX, double toY) {
        sketch.line(Pen.FINE, new Spot(x - 1, y - 0.9), new Spot(toX, toY));
        sketch.text(text, new Spot(x, y), TextSize.NORMAL, Mark.Anchor.START, false);
    }

    private static List<Spot> rectangle(double left, double top, double right, double bottom) {
        return List.of(new Spot(left, top), new Spot(right, top), new Spot(right, bottom), new Spot(left, bottom));
    }
}
