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
import java.util.Objects;
import org.jspecify.annotations.Nullable;

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

        static Builder builder() {
            return new Builder();
        }

        /** Sets the parts one by one; none may be left out. */
        static final class Builder {
            private @Nullable Piece piece;
            private @Nullable Point along;
            private @Nullable Integer startSide;
            private @Nullable Integer endSide;
            private @Nullable Point start;
            private @Nullable Point end;
            private @Nullable List<UprightLine> atStart;
            private @Nullable List<UprightLine> atEnd;

            private Builder() {}

            Builder piece(Piece set) {
                piece = set;
                return this;
            }

            Builder along(Point set) {
                along = set;
                return this;
            }

            Builder startSide(int set) {
                startSide = set;
                return this;
            }

            Builder endSide(int set) {
                endSide = set;
                return this;
            }

            Builder start(Point set) {
                start = set;
                return this;
            }

            Builder end(Point set) {
                end = set;
                return this;
            }

            Builder atStart(List<UprightLine> set) {
                atStart = set;
                return this;
            }

            Builder atEnd(List<UprightLine> set) {
                atEnd = set;
                return this;
            }

            /**
             * With all that was set.
             *
             * @throws NullPointerException where a part without a value is missing; its name is the message
             */
            Crosspiece build() {
                return new Crosspiece(
                        Objects.requireNonNull(piece, "piece"),
                        Objects.requireNonNull(along, "along"),
                        Objects.requireNonNull(startSide, "startSide"),
                        Objects.requireNonNull(endSide, "endSide"),
                        Objects.requireNonNull(start, "start"),
                        Objects.requireNonNull(end, "end"),
                        Objects.requireNonNull(atStart, "atStart"),
                        Objects.requireNonNull(atEnd, "atEnd"));
            }
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
        return piece.alongMm().level();
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
        Box.Hold hold = piece.role() == Role.TIE ? Box.Hold.TIE_TO_BRACE : Box.Hold.DIVIDER_TO_UPRIGHT;
        for (UprightLine line : uprights.all) {
            boolean screwed = frame.driven.ofCrosspiece(hold, piece, line.piece).isPresent();
            if (screwed && line.reaches(height)) {
                boolean nearStart = line.at().distanceMm(start) < line.at().distanceMm(end);
                line.stand(nearStart ? start : end);
                line.want(height);
                (nearStart ? atStart : atEnd).add(line);
            }
        }
        return Crosspiece.builder()
                .piece(piece)
                .along(along)
                .startSide(startSide)
                .endSide(endSide)
                .start(start)
                .end(end)
                .atStart(atStart)
                .atEnd(atEnd)
                .build();
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
        return Board.builder()
                .label(piece.piece.label())
                .sectionName(piece.piece.section())
                .side(-1)
                .course(piece.piece.course())
                .bottomMm(piece.piece.place().bottomMm())
                .topMm(piece.piece.place().topMm())
                .section(section)
                .outward(CentreLines.level(piece.along.left()))
                .heldMm(List.of())
                .parts(List.of(Board.Part.builder()
                        .member(member)
                        .startNode(start)
                        .endNode(end)
                        .fromMm(0)
                        .toMm(to.minus(from).length())
                        .start(from)
                        .end(to)
                        .rightPlanter(right)
                        .leftPlanter(tie ? -1 : right + 1)
                        .build()))
                .build();
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
            Screws.Faces faces = Screws.Faces.builder()
                    .kind(kind)
                    .label(piece.piece.label())
                    .receiverLabel(line.piece.label())
                    .fixed(piece.piece.section())
                    .fixedMm(section.thicknessMm())
                    .receiver(line.piece.section())
                    .receiverMm(UprightStems.extent(line.piece, piece.along.left()))
                    .widthMm(line.crossSection().depthMm())
                    .heightMm(section.widthMm())
                    .square(Screws.Square.FREE)
                    .build();
            Vector place = CentreLines.at(line.at(), piece.heightMm());
            frame.screws.join(
                    faces,
                    frame.driven.ofCrosspiece(kind, piece.piece, line.piece),
                    line.node(piece.heightMm()),
                    node,
                    place,
                    pull,
                    shear);
        }
    }
}
