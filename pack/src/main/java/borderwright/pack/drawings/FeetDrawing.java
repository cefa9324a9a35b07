package borderwright.pack.drawings;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.ground.BoxGround;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.plan.Plan;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Drawing;
import borderwright.pack.paper.DrawingBuilder;
import borderwright.pack.paper.Pen;
import borderwright.pack.paper.Scale;
import borderwright.pack.paper.Spot;
import borderwright.pack.paper.TextSize;
import borderwright.pack.paper.Tone;
import borderwright.pack.paper.TypeFace;
import borderwright.pack.paper.View;
import java.util.ArrayList;
import java.util.List;

/** The feet under boxes on hard ground, each with how high it is packed, turned as the plan of the marks is. */
public final class FeetDrawing {
    private static final double MOST_HIGH_MM = 60;
    private static final double SIDE_MM = 14;
    private static final double MARGIN_MM = 4.5;

    private FeetDrawing() {}

    public static Drawing draw(Plan plan, PrintedFigures f, double widthMm) {
        UnitSystem units = plan.garden().units();
        List<Point> places = new ArrayList<>();
        plan.boxes().forEach(box -> places.addAll(box.plan().outline().corners()));
        double turn = PegDrawing.turn(plan, widthMm);
        View.Extent extent = View.extent(places, turn);
        double roomHeight = MOST_HIGH_MM - 2 * MARGIN_MM;
        Scale scale = Scale.fitting(units, extent.width(), extent.height(), widthMm - 2 * SIDE_MM, roomHeight);
        DrawingBuilder sketch = new DrawingBuilder(widthMm, scale.paper(extent.height()) + 2 * MARGIN_MM);
        double left = (widthMm - scale.paper(extent.width())) / 2;
        View view = View.of(scale, turn, extent, new Spot(left, MARGIN_MM));
        for (Box box : plan.boxes()) {
            sketch.shape(view.at(box.plan().outline()), Pen.EDGE, Tone.PALE);
            new SideMarks(sketch, view, f).draw(box);
        }
        for (int i = 0; i < plan.boxes().size(); i++) {
            Ring ring = plan.boxes().get(i).plan().outline();
            for (BoxGround.Foot foot : plan.site().ground().boxes().get(i).feet()) {
                Spot at = view.at(ring.corner(foot.side())
                        .plus(ring.direction(foot.side()).times(foot.alongMm())));
                sketch.dot(at, 0.6, null, Tone.BLACK);
                sketch.label(f.lengths().piece(foot.heightMm()), at, TextSize.NORMAL, TypeFace.BOLD, Tone.BLACK);
            }
        }
        return sketch.finish(f.text(DrawingMessage.DRAWN_FEET.of()));
    }
}
