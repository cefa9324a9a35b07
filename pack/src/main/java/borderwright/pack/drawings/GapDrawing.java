package borderwright.pack.drawings;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.FacingGap;
import borderwright.engine.plan.Plan;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Dimension;
import borderwright.pack.paper.DrawingBuilder;
import borderwright.pack.paper.Pen;
import borderwright.pack.paper.Spot;
import borderwright.pack.paper.TextSize;
import borderwright.pack.paper.Tone;
import borderwright.pack.paper.TypeFace;
import borderwright.pack.paper.View;
import java.util.Set;
import java.util.TreeSet;

/**
 * Widths of aisles and gaps, and diagonals of boxes, on a plan. What is alike all along a run, or between two runs, is
 * dimensioned once.
 */
final class GapDrawing {
    private static final double SAME_MM = 0.5;
    private static final double DRAWN_SHARE = 0.22;

    private final DrawingBuilder sketch;
    private final View view;
    private final PrintedFigures f;

    GapDrawing(DrawingBuilder sketch, View view, PrintedFigures f) {
        this.sketch = sketch;
        this.view = view;
        this.f = f;
    }

    void gaps(Plan plan) {
        Set<String> drawn = new TreeSet<>();
        for (FacingGap gap : FacingGap.of(plan.layout().boxes(), plan.outline())) {
            String text = f.length(gap.widthMm());
            if (drawn.add(gap.run() + "/" + gap.faces() + "/" + text)) {
                Dimension.across(
                        sketch,
                        view.at(gap.across().from()),
                        view.at(gap.across().to()),
                        text);
            }
        }
    }

    /** Both diagonals of boxes of four corners; one where they are the same. */
    void diagonals(Plan plan) {
        Set<String> drawn = new TreeSet<>();
        for (Box box : plan.boxes()) {
            Ring ring = box.plan().outline();
            if (ring.size() == 4) {
                double first = ring.corner(0).distanceMm(ring.corner(2));
                double other = ring.corner(1).distanceMm(ring.corner(3));
                diagonal(box, 0, first, drawn);
                if (StrictMath.abs(first - other) > SAME_MM) {
                    diagonal(box, 1, other, drawn);
                }
            }
        }
    }

    private void diagonal(Box box, int corner, double lengthMm, Set<String> drawn) {
        String text = f.text(DrawingMessage.DRAWN_DIAGONAL.of(lengthMm));
        if (drawn.add(box.plan().run() + "/" + text)) {
            Ring ring = box.plan().outline();
            Spot from = view.at(ring.corner(corner));
            Spot to = view.at(ring.corner(corner + 2));
            // The middle is left free for the planter's name.
            sketch.line(Pen.CENTRE, from, from.towards(to, DRAWN_SHARE));
            sketch.line(Pen.CENTRE, to, to.towards(from, DRAWN_SHARE));
            sketch.label(text, from.towards(to, DRAWN_SHARE), TextSize.NORMAL, TypeFace.REGULAR, Tone.BLACK);
        }
    }
}
