package borderwright.engine.strength.box;

import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Box.Fixing;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.strength.frame.JointRigidity;
import borderwright.engine.strength.frame.Vector;
import borderwright.engine.strength.timber.FastenerJoint;
import borderwright.engine.strength.timber.Timber;
import borderwright.engine.strength.timber.TimberSection;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The capping: boards that lie flat on the top course and bend through their width, screwed down into its edge. It counts
 * only where those screws keep the rule set's distance from the faces of the walls; its boards are not joined to each other.
 */
final class CappingLines {
    private final FrameOfBox frame;
    private final List<Piece> pieces;
    private final Optional<Fixing> screw;

    CappingLines(FrameOfBox frame) {
        this.frame = frame;
        List<Piece> found = frame.pieces(Role.CAPPING);
        Optional<Fixing> fixing = frame.driven.any(Box.Hold.CAPPING_TO_WALL);
        boolean counts =
                fixing.isPresent() && frame.materials.staysInEdge(fixing.get().diameterMm(), frame.lines.wallMm);
        pieces = counts ? found : List.of();
        screw = fixing;
        if (!found.isEmpty() && !counts) {
            frame.unheld.add(FrameMessage.CAPPING_NOT_COUNTED.of());
        }
    }

    /** Where its screws stand along a side. */
    List<Double> placesMm(int side) {
        List<Double> places = new ArrayList<>();
        for (Piece piece : pieces) {
            if (piece.side() == side) {
                places.addAll(placesMm(piece));
            }
        }
        return places;
    }

    private List<Double> placesMm(Piece piece) {
        SideFrame side = frame.lines.sides.get(piece.side());
        double least = frame.lines.startMm(piece.side());
        double most = frame.lines.endMm(piece.side());
        return frame.box.joints().stream()
                .filter(joint -> joint.hold() == Box.Hold.CAPPING_TO_WALL
                        && joint.through().equals(piece.label()))
                .flatMap(joint -> joint.screws().stream())
                .map(screw -> Math.max(least, Math.min(most, side.s(screw.head()))))
                .sorted()
                .toList();
    }

    /**
     * Lays it on the top course.
     *
     * @param walls with a node at each of its screws
     */
    List<Board> draw(List<Board> walls) {
        List<Board> drawn = new ArrayList<>();
        for (Piece piece : pieces) {
            List<Board> under = walls.stream()
                    .filter(b -> b.side() == piece.side()
                            && b.course() == frame.box.courses().size())
                    .toList();
            if (!under.isEmpty()) {
                drawn.add(draw(piece, under));
            }
        }
        return drawn;
    }

    /** A node of the top course and where it lies. */
    private record Under(int node, double alongMm, Vector at) {}

    private static Under nearest(List<Board> boards, double alongMm) {
        Under best = new Under(-1, Double.NEGATIVE_INFINITY, Vector.ZERO);
        for (Board board : boards) {
            for (Board.Part part : board.parts()) {
                for (Under under : List.of(
                        new Under(part.startNode(), part.fromMm(), part.start()),
                        new Under(part.endNode(), part.toMm(), part.end()))) {
                    best = Math.abs(under.alongMm - alongMm) < Math.abs(best.alongMm - alongMm) ? under : best;
                }
            }
        }
        return best;
    }

    private Board draw(Piece piece, List<Board> walls) {
        TimberSection section = new TimberSection(
                frame.materials.section(piece.section()).thickness().mm(),
                frame.materials.section(piece.section()).width().mm());
        return Board.builder()
                .label(piece.label())
                .sectionName(piece.section())
                .side(piece.side())
                .course(0)
                .bottomMm(piece.place().bottomMm())
                .topMm(piece.place().topMm())
                .section(section)
                .outward(frame.lines.outward(piece.side()))
                .heldMm(List.of())
                .parts(parts(piece, section, walls))
                .build();
    }

    /** Its bars from screw to screw, each hung on the top course by that screw. */
    private List<Board.Part> parts(Piece piece, TimberSection section, List<Board> walls) {
        Timber timber = frame.materials.timber(piece.section());
        JointRigidity rigidity =
                new JointRigidity(timber.e0Mean() * section.areaMm2(), 0, timber.e0Mean() * section.edgeMm4(), 0);
        FastenerJoint joint = joint(piece, section, walls.get(0));
        List<Vector> level = List.of(frame.lines.outward(piece.side()), frame.lines.along(piece.side()));
        List<Board.Part> parts = new ArrayList<>();
        Under before = new Under(-1, 0, Vector.ZERO);
        int beforeNode = -1;
        for (double place : placesMm(piece)) {
            Under under = nearest(walls, place);
            if (under.node == before.node) {
                continue;
            }
            int node = frame.boardNode(under.at);
            frame.screws.help(joint, Box.Hold.CAPPING_TO_WALL.perJoint(), under.node, node, under.at, level);
            if (beforeNode >= 0) {
                parts.add(Board.Part.builder()
                        .member(frame.builder.member(beforeNode, node, rigidity, Vector.Z))
                        .startNode(beforeNode)
                        .endNode(node)
                        .fromMm(before.alongMm)
                        .toMm(under.alongMm)
                        .start(before.at)
                        .end(under.at)
                        .rightPlanter(-1)
                        .leftPlanter(-1)
                        .build());
            }
            before = under;
            beforeNode = node;
        }
        return parts;
    }

    private FastenerJoint joint(Piece piece, TimberSection section, Board wall) {
        Fixing fixing = screw.orElseThrow();
        return frame.materials.joint(
                frame.materials.screw(fixing.diameterMm(), fixing.lengthMm()),
                section.thicknessMm(),
                piece.section(),
                wall.section().widthMm(),
                wall.sectionName());
    }
}
