package borderwright.engine.strength.box;

import borderwright.engine.strength.frame.FrameAnswer;
import borderwright.engine.strength.frame.Freedom;
import borderwright.engine.strength.frame.MemberAnswer;
import borderwright.engine.strength.frame.Vector;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads how the courses have moved from a solved frame, less what the whole box has moved and turned as one.
 *
 * <p>The common movement is the one that leaves the least squares of the nodes' movements, each node counting by the
 * length of board about it.
 */
public final class BowLineFinder {
    /** Places read on each bar besides its ends. */
    private static final int READ = 4;

    private final BoxFrame frame;
    private final FrameAnswer answer;
    private double weight;
    private double x;
    private double y;
    private double shiftX;
    private double shiftY;
    private double turn;

    private BowLineFinder(BoxFrame frame, FrameAnswer answer) {
        this.frame = frame;
        this.answer = answer;
        fitCommonMovement();
    }

    /** The courses of all sides, side by side and from the bottom. */
    public static List<BowLine> of(BoxFrame frame, FrameAnswer answer) {
        return new BowLineFinder(frame, answer).lines();
    }

    private void fitCommonMovement() {
        frame.walls()
                .forEach(board -> board.parts().forEach(part -> {
                    takeCentre(part.start(), part.startNode(), part.lengthMm() / 2);
                    takeCentre(part.end(), part.endNode(), part.lengthMm() / 2);
                }));
        x /= weight;
        y /= weight;
        shiftX /= weight;
        shiftY /= weight;
        double[] turning = new double[2];
        frame.walls()
                .forEach(board -> board.parts().forEach(part -> {
                    takeTurn(part.start(), part.startNode(), part.lengthMm() / 2, turning);
                    takeTurn(part.end(), part.endNode(), part.lengthMm() / 2, turning);
                }));
        turn = turning[0] / turning[1];
    }

    private void takeCentre(Vector at, int node, double w) {
        weight += w;
        x += w * at.x();
        y += w * at.y();
        shiftX += w * answer.displacement(node, Freedom.UX);
        shiftY += w * answer.displacement(node, Freedom.UY);
    }

    private void takeTurn(Vector at, int node, double w, double[] turning) {
        double dx = at.x() - x;
        double dy = at.y() - y;
        turning[0] += w
                * (dx * (answer.displacement(node, Freedom.UY) - shiftY)
                        - dy * (answer.displacement(node, Freedom.UX) - shiftX));
        turning[1] += w * (dx * dx + dy * dy);
    }

    private List<BowLine> lines() {
        Map<Long, List<BowLine.At>> points = new HashMap<>();
        List<BowLine> lines = new ArrayList<>();
        for (Board board : frame.walls()) {
            long key = (long) board.side() << 32 | board.course();
            List<BowLine.At> line = points.get(key);
            if (line == null) {
                line = new ArrayList<>();
                points.put(key, line);
            }
            read(board, line);
        }
        for (Board board : frame.walls()) {
            List<BowLine.At> line = points.remove((long) board.side() << 32 | board.course());
            if (line != null) {
                lines.add(new BowLine(board.side(), board.course(), board.middleMm(), line));
            }
        }
        return lines;
    }

    private void read(Board board, List<BowLine.At> line) {
        boolean isFirst = true;
        for (Board.Part part : board.parts()) {
            MemberAnswer bar = answer.member(part.member());
            Vector along = part.end().minus(part.start()).unit();
            for (int k = isFirst ? 0 : 1; k <= READ; k++) {
                double from = part.lengthMm() * k / READ;
                Vector at = part.start().plus(along.times(from));
                double common = board.outward().x() * (shiftX - turn * (at.y() - y))
                        + board.outward().y() * (shiftY + turn * (at.x() - x));
                // The bar's own y axis looks into the box.
                line.add(new BowLine.At(part.fromMm() + from, -bar.deflectionY(from) - common));
            }
            isFirst = false;
        }
    }
}
