package borderwright.pack.drawings;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.PieceLabels;
import borderwright.engine.geometry.Ring;
import borderwright.engine.geometry.Segment;
import borderwright.engine.layout.plan.DividerLine;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.DrawingBuilder;
import borderwright.pack.paper.Mark;
import borderwright.pack.paper.Spot;
import borderwright.pack.paper.TextSize;
import borderwright.pack.paper.Tone;
import borderwright.pack.paper.TypeFace;
import borderwright.pack.paper.View;
import java.util.ArrayList;
import java.util.List;

/** The letters of a box's sides and the numbers of its dividers on a plan, as the sheets for the bench call them. */
final class SideMarks {
    /** Between a wall's outer face, or a divider's middle line, and a mark beside it. */
    private static final double CLEAR_MM = 0.9;

    /** Height of a small letter. */
    private static final double LETTER_EM = 0.7;

    private static final int PLACES = 20;

    private final DrawingBuilder sketch;
    private final View view;
    private final PrintedFigures f;

    SideMarks(DrawingBuilder sketch, View view, PrintedFigures f) {
        this.sketch = sketch;
        this.view = view;
        this.f = f;
    }

    void draw(Box box) {
        Ring ring = box.plan().outline();
        for (int side = 0; side < ring.size(); side++) {
            beside(PieceLabels.letter(side), ring.side(side));
        }
        List<DividerLine> dividers = box.plan().dividers();
        for (int i = 0; i < dividers.size(); i++) {
            Segment line = new Segment(dividers.get(i).from(), dividers.get(i).to());
            beside(f.text(DrawingMessage.DRAWN_DIVIDER.of(Integer.toString(i + 1))), line);
        }
    }

    /** At the first free place along a line, from its middle outwards, on its left and else on its right. */
    private void beside(String text, Segment line) {
        Spot from = view.at(line.from());
        Spot to = view.at(line.to());
        Spot left = to.minus(from).unit().left();
        Spot down = new Spot(0, LETTER_EM / 2 * TextSize.FINE.emMm());
        double em = TextSize.FINE.emMm();
        double asideMm = CLEAR_MM
                + StrictMath.abs(left.x()) * TypeFace.REGULAR.widthEm(text) * em / 2
                + StrictMath.abs(left.y()) * em / 2;
        List<DrawingBuilder.Place> places = new ArrayList<>();
        for (double aside : List.of(asideMm, -asideMm)) {
            for (int i = 1; i < PLACES; i++) {
                double share = 0.5 + (i % 2 == 0 ? 1 : -1) * (i / 2) / (double) PLACES;
                Spot at = from.towards(to, share).plus(left.times(aside)).plus(down);
                places.add(new DrawingBuilder.Place(at, Mark.Anchor.MIDDLE));
            }
        }
        sketch.labelIfRoom(text, TextSize.FINE, Tone.BLACK, places);
    }
}
