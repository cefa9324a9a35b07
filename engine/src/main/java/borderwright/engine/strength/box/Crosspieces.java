package borderwright.engine.strength.box;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.geometry.Point;
import borderwright.engine.layout.plan.DividerLine;
import borderwright.engine.strength.frame.JointRigidity;
import borderwright.engine.strength.frame.Vector;
import borderwright.engine.strength.timber.TimberSection;
import java.util.ArrayList;
import java.util.List;

/**
 * Dividers and ties: what goes across the box from wall to wall, screwed sideways to an upright at either end. Their ends
 * are carried on to the walls' middle lines.
 */
final class Crosspieces {
    private final FrameOfBox frame;
    private final UprightStems uprights;
    private final List<Crosspiece> dividers = new ArrayList<>();
    private final List<Crosspiece> ties = new ArrayList<>();

    /**
     * One piece across.
     *
     * @param piece it
     * @param along unit vector from its start to its end
     * @param startSide side at its start
     * @param endSide side at its end
     * @param start on that side's middle line
     * @param end on that side's middle line
     * @param atStart uprights that its start is screwed to
     * @param atEnd those of its end
     */
    private record Crosspiece(
            Piece piece,
            Point along,
            int startSide,
            int endSide,
            Point start,
            Point end,
            List<UprightLine> atStart,
            List<UprightLine> atEnd) {
        double heightMm() {
            return (piece.place().bottomMm() + piece.place().topMm()) / 2;
        }
    }

    Crosspieces(FrameOfBox frame, UprightStems uprights) {
        this.frame = frame;
        this.uprights = uprights;
        for (Piece piece : frame.pieces(Role.DIVIDER)) {
            DividerLine line = frame.box.plan().dividers().get(index(piece));
            dividers.add(crosspiece(piece, line.fromSide(), line.toSide()));
        }
        for (Piece piece : frame.pieces(Role.TIE)) {
            ties.add(crosspiece(piece, piece.side(), opposite(piece)));
        }
    }

    private int index(Piece divider) {
        return frame.box.plan().planters().indexOf(divider.planter());
    }

    /** The side whose inner face its far end lies on. */
    private int opposite(Piece tie) {
        Point end = UprightLine.middle(tie).plus(axis(tie).times(UprightStems.extent(tie, axis(tie)) / 2));
        int nearest = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < frame.lines.sides.size(); i++) {
            double off = frame.box.plan().outline().side(i).distanceMm(end);
            if (i != tie.side() && off < least) {
                least = off;
                nearest = i;
            }
        }
        return nearest;
    }

    private static Point axis(Piece piece) {
        return new Point(piece.alongMm().x(), piece.alongMm().y());
    }

    private Crosspiece crosspiece(Piece piece, int startSide, int endSide) {
        Point along = axis(piece);
        Point middle = UprightLine.middle(piece);
        double fromMm = frame.lines.crossingMm(startSide, middle, along);
        double toMm = frame.lines.crossingMm(endSide, middle, along);
        Point start = frame.lines.at(startSide, fromMm);
        Point end = frame.lines.at(endSide, toMm);
        List<UprightLine> atStart = new ArrayList<>();
        List<UprightLine> atEnd = new ArrayList<>();
        double height = (piece.place().bottomMm() + piece.place().topMm()) / 2;
        for (UprightLine line : uprights.all) {
            boolean beside = line.piece.role() == Role.BRACE && line.reaches(height);
            if (beside && Touch.faces(line.piece.place().plan(), piece.place().plan())) {
                boolean nearStart = line.at.distanceMm(start) < line.at.distanceMm(end);
                line.at = nearStart ? start : end;
                line.want(height);
                (nearStart ? atStart : atEnd).add(line);
            }
        }
        return new Crosspiece(piece, along, startSide, endSide, start, end, atStart, atEnd);
    }

    /** Where dividers meet a side, along it: boards are divided there, since the soil may differ on either hand. */
    List<Double> dividersMm(int side) {
        List<Double> at = new ArrayList<>();
        for (Crosspiece divider : dividers) {
            if (divider.startSide == side) {
                at.add(frame.lines.sides.get(side).s(divider.start));
            }
            if (divider.endSide == side) {
                at.add(frame.lines.sides.get(side).s(divider.end));
            }
        }
        return at;
    }

    List<Board> drawDividers() {
        List<Board> boards = new ArrayList<>();
        for (Crosspiece divider : dividers) {
            int start = frame.boardNode(CentreLines.at(divider.start, divider.heightMm()));
            int end = frame.boardNode(CentreLines.at(divider.end, divider.heightMm()));
            boards.add(draw(divider, start, end, Box.Hold.DIVIDER_TO_UPRIGHT));
        }
        return boards;
    }

    List<Board> drawTies() {
        List<Board> boards = new ArrayList<>();
        for (Crosspiece tie : ties) {
            int start = frame.pinNode(CentreLines.at(tie.start, tie.heightMm()));
            int end = frame.pinNode(CentreLines.at(tie.end, tie.heightMm()));
            boards.add(draw(tie, start, end, Box.Hold.TIE_TO_BRACE));
        }
        return boards;
    }

    private Board draw(Crosspiece piece, int start, int end, Box.Hold kind) {
        boolean tie = kind == Box.Hold.TIE_TO_BRACE;
        TimberSection section = frame.section(piece.piece);
        JointRigidity whole = frame.onEdge(section, frame.materials.timber(piece.piece.section()));
        JointRigidity rigidity = tie ? new JointRigidity(whole.axial(), 0, 0, 0) : whole;
        int member = frame.builder.member(start, end, rigidity, Vector.Z);
        fix(piece, piece.atStart, start, section, kind);
        fix(piece, piece.atEnd, end, section, kind);
        int right = tie ? -1 : index(piece.piece);
        Vector from = CentreLines.at(piece.start, piece.heightMm());
        Vector to = CentreLines.at(piece.end, piece.heightMm());
        return new Board(
                piece.piece.label(),
                piece.piece.section(),
                -1,
                piece.piece.course(),
                piece.piece.place().bottomMm(),
                piece.piece.place().topMm(),
                section,
                CentreLines.level(piece.along.left()),
                List.of(),
                List.of(new Board.Part(
                        member, start, end, 0, to.minus(from).length(), from, to, right, tie ? -1 : right + 1)));
    }

    private void fix(Crosspiece piece, List<UprightLine> to, int node, TimberSection section, Box.Hold kind) {
        if (to.isEmpty()) {
            frame.unheld.add(FrameMessage.END_WITHOUT_UPRIGHT.of(piece.piece.label()));
        }
        Vector shear = CentreLines.level(piece.along);
        for (UprightLine line : to) {
            Point off = UprightLine.middle(piece.piece).minus(UprightLine.middle(line.piece));
            Vector left = CentreLines.level(piece.along.left());
            Vector pull = CentreLines.level(off).dot(left) > 0 ? left : left.times(-1);
            Screws.Faces faces = new Screws.Faces(
                    kind,
                    piece.piece.label(),
                    line.piece.label(),
                    piece.piece.section(),
                    section.thicknessMm(),
                    line.piece.section(),
                    UprightStems.extent(line.piece, piece.along.left()),
                    line.depthMm,
                    section.widthMm(),
                    0);
            Vector place = CentreLines.at(line.at, piece.heightMm());
            frame.screws.join(faces, line.node(piece.heightMm()), node, place, pull, shear);
        }
    }
}
