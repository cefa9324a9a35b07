package borderwright.pack.bench;

import borderwright.engine.assembly.BenchBoard;
import borderwright.engine.assembly.BenchCrosspiece;
import borderwright.engine.assembly.BenchUpright;
import borderwright.engine.assembly.FixingLine;
import borderwright.engine.assembly.WallBench;
import borderwright.engine.buildup.parts.Box;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.DrawingBuilder;
import borderwright.pack.paper.Mark;
import borderwright.pack.paper.Spot;
import borderwright.pack.paper.TextSize;
import borderwright.pack.paper.Tone;
import borderwright.pack.paper.TypeFace;
import java.util.ArrayList;
import java.util.List;

/** The names of the pieces on the drawing of a wall. */
final class WallNames {
    private static final int LABEL_PLACES = 24;

    /** Where a distance along a wall and a height lie on the paper. */
    interface OnPaper {
        Spot at(double alongMm, double upMm);
    }

    private final WallBench wall;
    private final PrintedFigures f;
    private final DrawingBuilder sketch;
    private final OnPaper paper;

    WallNames(WallBench wall, PrintedFigures f, DrawingBuilder sketch, OnPaper paper) {
        this.wall = wall;
        this.f = f;
        this.sketch = sketch;
        this.paper = paper;
    }

    /** Uprights above the wall with their number of screws, boards on themselves, ties and dividers beside them. */
    void all() {
        double top = paper.at(0, WallExtent.up(wall).toMm()).y();
        for (BenchUpright upright : wall.parts().uprights()) {
            int screws = wall.fixings().stream()
                    .filter(line -> line.through().isEmpty() && line.into().equals(upright.label()))
                    .filter(line -> line.hold() != Box.Hold.LAP)
                    .mapToInt(FixingLine::count)
                    .sum();
            double x = paper.at(upright.face().middleMm(), 0).x();
            sketch.labelIfRoom(
                    f.text(BenchMessage.SCREWS_OF_UPRIGHT.of(screws)),
                    TextSize.NORMAL,
                    Tone.BLACK,
                    List.of(new DrawingBuilder.Place(new Spot(x, top - 1.4), Mark.Anchor.MIDDLE)));
            List<DrawingBuilder.Place> places = new ArrayList<>();
            for (int row = 0; row < 3; row++) {
                places.add(new DrawingBuilder.Place(new Spot(x, top - 5.0 - 4.2 * row), Mark.Anchor.MIDDLE));
            }
            sketch.label(
                    upright.label(),
                    paper.at(upright.face().middleMm(), upright.height().toMm()),
                    TextSize.NAME,
                    TypeFace.BOLD,
                    Tone.BLACK,
                    places,
                    0);
        }
        for (BenchBoard board : wall.parts().boards()) {
            boardName(board);
        }
        for (BenchCrosspiece cross : wall.parts().crosspieces()) {
            crossName(cross);
        }
    }

    /** Beside a tie, or the lowest board of a divider, on the wall. */
    private void crossName(BenchCrosspiece cross) {
        double y = paper.at(0, cross.height().middleMm()).y() + 0.27 * TextSize.NORMAL.emMm();
        sketch.labelIfRoom(
                cross.label(),
                TextSize.NORMAL,
                Tone.BLACK,
                List.of(
                        new DrawingBuilder.Place(
                                new Spot(paper.at(cross.inner().toMm(), 0).x() + 0.8, y), Mark.Anchor.START),
                        new DrawingBuilder.Place(
                                new Spot(paper.at(cross.inner().fromMm(), 0).x() - 0.8, y), Mark.Anchor.END)));
    }

    private void boardName(BenchBoard board) {
        double y = paper.at(0, board.height().middleMm()).y() + 0.27 * TextSize.NORMAL.emMm();
        List<DrawingBuilder.Place> places = new ArrayList<>();
        for (int i = 1; i < LABEL_PLACES; i++) {
            int step = i / 2;
            double share = 0.5 + (i % 2 == 0 ? step : -step) / (double) LABEL_PLACES;
            double x = board.face().fromMm() + share * board.face().lengthMm();
            places.add(new DrawingBuilder.Place(new Spot(paper.at(x, 0).x(), y), Mark.Anchor.MIDDLE));
        }
        sketch.labelIfRoom(board.label(), TextSize.NORMAL, Tone.BLACK, places);
    }
}
