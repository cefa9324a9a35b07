package borderwright.pack.bench;

import borderwright.engine.assembly.BenchBoard;
import borderwright.engine.assembly.BenchCrosspiece;
import borderwright.engine.assembly.BenchUpright;
import borderwright.engine.assembly.WallBench;
import borderwright.pack.paper.Dimension;
import borderwright.pack.paper.DrawingBuilder;
import borderwright.pack.paper.Mark;
import borderwright.pack.paper.Spot;
import borderwright.pack.paper.TextSize;
import borderwright.pack.paper.Tone;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The names of the pieces on the drawing of a wall. */
final class WallNames {
    private static final int LABEL_PLACES = 24;

    /** Where a distance along a wall and a height lie on the paper. */
    interface OnPaper {
        Spot at(double alongMm, double upMm);
    }

    private final WallBench wall;
    private final DrawingBuilder sketch;
    private final OnPaper paper;

    WallNames(WallBench wall, DrawingBuilder sketch, OnPaper paper) {
        this.wall = wall;
        this.sketch = sketch;
        this.paper = paper;
    }

    /** Uprights above the wall, boards on themselves, ties and dividers beside them. */
    void all() {
        List<BenchUpright> uprights = fromTheLeft(wall);
        if (!uprights.isEmpty()) {
            double top = WallExtent.up(wall).toMm();
            Dimension.namesAbove(
                    sketch,
                    uprights.stream()
                            .map(upright -> paper.at(upright.face().middleMm(), top))
                            .toList(),
                    uprights.stream().map(BenchUpright::label).toList(),
                    TextSize.NORMAL);
        }
        for (BenchBoard board : wall.parts().boards()) {
            boardName(board);
        }
        for (BenchCrosspiece cross : wall.parts().crosspieces()) {
            crossName(cross);
        }
    }

    /** Paper that the names of its uprights take up above a wall, mm. */
    static double highMm(WallBench wall) {
        return Dimension.namesMm(
                wall.parts().uprights().stream().map(BenchUpright::label).toList(), TextSize.NORMAL);
    }

    private static List<BenchUpright> fromTheLeft(WallBench wall) {
        return wall.parts().uprights().stream()
                .sorted(Comparator.comparingDouble(upright -> upright.face().middleMm()))
                .toList();
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
