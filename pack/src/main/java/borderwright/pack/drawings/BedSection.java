package borderwright.pack.drawings;

import borderwright.engine.ground.BoxGround;
import borderwright.engine.message.Message;
import borderwright.engine.plan.Plan;
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

/** The first box of a garden that is dug, cut through from front to back, not to scale: what lies under it and how thick. */
public final class BedSection {
    private static final double HEIGHT_MM = 49;
    private static final double GROUND_MM = 24;
    private static final double TRENCH_MM = 18;

    private static final double WALL_MM = 3;
    private static final double TOP_MM = 4;

    private final Plan plan;
    private final BoxGround ground;
    private final PrintedFigures f;
    private final DrawingBuilder sketch;
    private final double left;
    private final double right;
    private final double bed;
    private final double dug;
    private final double margin;

    private BedSection(Plan plan, double widthMm) {
        this.plan = plan;
        ground = plan.site().ground().boxes().get(0);
        f = PrintedFigures.in(plan.garden().units());
        sketch = new DrawingBuilder(widthMm, HEIGHT_MM);
        left = 8;
        right = 28;
        bed = GROUND_MM + 8;
        dug = GROUND_MM + TRENCH_MM;
        margin = 6;
    }

    public static Drawing draw(Plan plan, double widthMm) {
        BedSection section = new BedSection(plan, widthMm);
        section.ground();
        section.walls();
        double x = section.right + 12;
        section.note(
                x, TOP_MM + 2, DrawingMessage.BED_WALL.of(plan.boxes().get(0).builtMm()), section.right, TOP_MM + 4);
        section.trenchNotes(x);
        return section.sketch.finish(section.f.text(DrawingMessage.BED_SECTION.of(section.ground.box())));
    }

    private void ground() {
        sketch.line(
                Pen.HEAVY,
                new Spot(2, GROUND_MM),
                new Spot(left - margin, GROUND_MM),
                new Spot(left - margin, dug),
                new Spot(right + margin, dug),
                new Spot(right + margin, GROUND_MM),
                new Spot(right + 12, GROUND_MM));
        if (ground.gravelM3() > 0) {
            List<Spot> gravel = rectangle(left - margin, bed, right + margin, dug);
            sketch.hatch(gravel, Hatch.GROUND);
            sketch.shape(gravel, Pen.FINE, null);
        }
    }

    private void walls() {
        for (double x : List.of(left, right - WALL_MM)) {
            sketch.shape(rectangle(x, TOP_MM, x + WALL_MM, bed), Pen.EDGE, Tone.LIGHT);
        }
    }

    private void trenchNotes(double x) {
        double gravel = ground.gravelMm();
        Message surface = ground.turfM3() > 0
                ? DrawingMessage.BED_TURF.of(plan.garden().ground().turfMm())
                : DrawingMessage.BED_GROUND.of();
        note(x, GROUND_MM - 6, surface, right + 9, GROUND_MM);
        note(x, bed - 1, DrawingMessage.BED_LEVEL.of(), right + margin, bed);
        if (gravel > 0) {
            DrawingMessage compacted =
                    ground.layers() > 1 ? DrawingMessage.BED_GRAVEL_IN_LAYERS : DrawingMessage.BED_GRAVEL;
            note(x, bed + 6, compacted.of(gravel), right + margin - 2, (bed + dug) / 2);
        }
        boolean covered = plan.site().ground().sheet().isPresent();
        DrawingMessage bottom = covered ? DrawingMessage.BED_DUG_TO_MEMBRANE : DrawingMessage.BED_DUG_TO;
        note(x, dug + 3, bottom.of(), right + margin - 4, dug);
    }

    private void note(double x, double y, Message text, double toX, double toY) {
        sketch.line(Pen.FINE, new Spot(x - 1, y - 0.9), new Spot(toX, toY));
        sketch.text(f.text(text), new Spot(x, y), TextSize.NORMAL, Mark.Anchor.START, TypeFace.REGULAR);
    }

    private static List<Spot> rectangle(double left, double top, double right, double bottom) {
        return List.of(new Spot(left, top), new Spot(right, top), new Spot(right, bottom), new Spot(left, bottom));
    }
}
