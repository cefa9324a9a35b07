package borderwright.engine.strength.box;

import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Box.Course;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.strength.box.DrivenScrews.Driven;
import borderwright.engine.strength.box.UprightLine.Meeting;
import borderwright.engine.strength.frame.JointRigidity;
import borderwright.engine.strength.frame.Vector;
import borderwright.engine.strength.timber.TimberSection;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;

/**
 * The boards of the walls: every one a beam on its side's middle line, broken where the boards are joined, screwed to
 * the uprights that it crosses. At a corner it ends where the middle lines meet, whichever board laps: screws in end grain
 * count for nothing, so both hang on the post.
 */
final class Walls {
    private static final double SAME_MM = 0.5;
    private static final double LEAST_OVERLAP_MM = 5;
    private static final int COURSES = 1000;

    private final FrameOfBox frame;
    private final UprightStems uprights;
    private final Crosspieces crosspieces;
    private final CappingLines capping;
    private final WallSupports supports;

    Walls(FrameOfBox frame, UprightStems uprights, Crosspieces crosspieces, CappingLines capping) {
        this.frame = frame;
        this.uprights = uprights;
        this.crosspieces = crosspieces;
        this.capping = capping;
        supports = new WallSupports(frame);
    }

    /** A crossing of a board and an upright that it is screwed to. */
    private record Crossing(double alongMm, UprightLine upright, Meeting meeting, Driven driven) {}

    List<Board> draw() {
        List<Board> boards = new ArrayList<>();
        Map<Integer, Laps.End> starts = new HashMap<>();
        Map<Integer, Laps.End> ends = new HashMap<>();
        List<Piece> walls = frame.pieces(Role.WALL);
        for (SideFrame side : frame.lines.sides) {
            for (Course course : frame.box.courses()) {
                List<Piece> row = walls.stream()
                        .filter(p -> p.side() == side.side() && p.course() == course.number())
                        .sorted(Comparator.comparingDouble(p -> side.s(UprightLine.middle(p))))
                        .toList();
                for (int i = 0; i < row.size(); i++) {
                    double from = i == 0 ? frame.lines.startMm(side.side()) : end(side, row.get(i), false);
                    double to = i == row.size() - 1 ? frame.lines.endMm(side.side()) : end(side, row.get(i), true);
                    Board board = board(row.get(i), side, from, to);
                    boards.add(board);
                    Vector along = frame.lines.along(side.side());
                    int key = side.side() * COURSES + course.number();
                    if (i == 0) {
                        int node = board.parts().get(0).startNode();
                        starts.put(key, new Laps.End(row.get(i), node, board.outward(), along));
                    }
                    if (i == row.size() - 1) {
                        int node = board.parts().get(board.parts().size() - 1).endNode();
                        ends.put(key, new Laps.End(row.get(i), node, board.outward(), along.times(-1)));
                    }
                }
            }
        }
        lap(starts, ends);
        return boards;
    }

    private void lap(Map<Integer, Laps.End> starts, Map<Integer, Laps.End> ends) {
        Laps laps = new Laps(frame);
        for (SideFrame side : frame.lines.sides) {
            int before = StrictMath.floorMod(side.side() - 1, frame.lines.sides.size());
            for (Course course : frame.box.courses()) {
                Laps.End start = starts.get(side.side() * COURSES + course.number());
                Laps.End end = ends.get(before * COURSES + course.number());
                if (start != null && end != null && side.startAngle() < StrictMath.PI) {
                    double height = (course.bottomMm() + course.topMm()) / 2;
                    Vector middle = CentreLines.at(frame.lines.corner(side.side()), height);
                    laps.join(start, end, side.start(), middle);
                }
            }
        }
    }

    WallSupports supports() {
        return supports;
    }

    private static double end(SideFrame side, Piece piece, boolean last) {
        double most = last ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
        for (Point p : piece.place().plan().corners()) {
            most = last ? StrictMath.max(most, side.s(p)) : StrictMath.min(most, side.s(p));
        }
        return most;
    }

    private Board board(Piece piece, SideFrame side, double fromMm, double toMm) {
        double height = (piece.place().bottomMm() + piece.place().topMm()) / 2;
        List<Crossing> crossings = crossings(piece, side, fromMm, toMm);
        List<Double> held = held(side, crossings, fromMm, toMm);
        List<Double> places = places(piece, side, held);
        TimberSection section = frame.section(piece);
        JointRigidity rigidity = frame.onEdge(section, frame.materials.timber(piece.section()));
        List<Integer> nodes = new ArrayList<>();
        for (double s : places) {
            nodes.add(frame.boardNode(CentreLines.at(frame.lines.at(side.side(), s), height)));
        }
        for (Crossing crossing : crossings) {
            fix(piece, crossing, section, height, nodes.get(nearest(places, crossing.alongMm)));
        }
        List<Board.Part> parts = new ArrayList<>();
        for (int i = 1; i < nodes.size(); i++) {
            int member = frame.builder.member(nodes.get(i - 1), nodes.get(i), rigidity, Vector.Z);
            parts.add(part(member, side, height, places.get(i - 1), places.get(i))
                    .startNode(nodes.get(i - 1))
                    .endNode(nodes.get(i))
                    .build());
        }
        supports.back(piece, nodes, parts);
        if (piece.course() == 1 && frame.bedFriction > 0) {
            supports.rub(piece, nodes, parts);
        }
        return Board.builder()
                .label(piece.label())
                .sectionName(piece.section())
                .side(side.side())
                .course(piece.course())
                .bottomMm(piece.place().bottomMm())
                .topMm(piece.place().topMm())
                .section(section)
                .outward(frame.lines.outward(side.side()))
                .heldMm(held)
                .parts(parts)
                .build();
    }

    private Board.Part.Builder part(int member, SideFrame side, double height, double fromMm, double toMm) {
        return Board.Part.builder()
                .member(member)
                .fromMm(fromMm)
                .toMm(toMm)
                .start(CentreLines.at(frame.lines.at(side.side(), fromMm), height))
                .end(CentreLines.at(frame.lines.at(side.side(), toMm), height))
                .rightPlanter(planter(side, (fromMm + toMm) / 2))
                .leftPlanter(-1);
    }

    /** A board that only just lies on an upright is not screwed to it, and not held there. */
    private List<Crossing> crossings(Piece piece, SideFrame side, double fromMm, double toMm) {
        double height = (piece.place().bottomMm() + piece.place().topMm()) / 2;
        List<Crossing> found = new ArrayList<>();
        for (UprightLine upright : uprights.all) {
            for (Meeting meeting : upright.meetings) {
                double overlap = Math.min(meeting.toMm(), toMm) - Math.max(meeting.fromMm(), fromMm);
                if (meeting.side() == side.side() && overlap > LEAST_OVERLAP_MM && upright.reaches(height)) {
                    double s = Math.max(fromMm, Math.min(toMm, side.s(upright.at())));
                    frame.driven
                            .ofWall(piece, upright.piece)
                            .ifPresent(driven -> found.add(new Crossing(s, upright, meeting, driven)));
                }
            }
        }
        return found;
    }

    /** Its ends, and where uprights and dividers meet it. */
    private List<Double> held(SideFrame side, List<Crossing> crossings, double fromMm, double toMm) {
        NavigableSet<Double> places = new TreeSet<>(List.of(fromMm, toMm));
        crossings.forEach(crossing -> add(places, crossing.alongMm));
        for (double divider : crosspieces.dividersMm(side.side())) {
            if (divider > fromMm && divider < toMm) {
                add(places, divider);
            }
        }
        return List.copyOf(places);
    }

    /** With the screws of the capping, and so close that the fill behind it stands against it evenly. */
    private List<Double> places(Piece piece, SideFrame side, List<Double> held) {
        NavigableSet<Double> places = new TreeSet<>(held);
        if (piece.course() == frame.box.courses().size()) {
            capping.placesMm(side.side()).stream()
                    .filter(s -> s > places.first() && s < places.last())
                    .forEach(s -> add(places, s));
        }
        return split(places);
    }

    private List<Double> split(NavigableSet<Double> places) {
        List<Double> all = new ArrayList<>();
        for (double to : places) {
            double from = all.isEmpty() ? to : all.get(all.size() - 1);
            long parts = (long) StrictMath.ceil((to - from) / frame.longestPartMm);
            for (long k = 1; k < parts; k++) {
                all.add(from + (to - from) * k / parts);
            }
            all.add(to);
        }
        return all;
    }

    private static void add(NavigableSet<Double> places, double s) {
        if (places.subSet(s - SAME_MM, true, s + SAME_MM, true).isEmpty()) {
            places.add(s);
        }
    }

    private static int nearest(List<Double> places, double s) {
        int best = 0;
        for (int i = 1; i < places.size(); i++) {
            if (Math.abs(places.get(i) - s) < Math.abs(places.get(best) - s)) {
                best = i;
            }
        }
        return best;
    }

    private void fix(Piece piece, Crossing crossing, TimberSection section, double height, int node) {
        int side = crossing.meeting.side();
        UprightLine upright = crossing.upright;
        Screws.Faces faces = Screws.Faces.builder()
                .kind(Box.Hold.WALL_TO_UPRIGHT)
                .label(piece.label())
                .receiverLabel(upright.piece.label())
                .fixed(piece.section())
                .fixedMm(section.thicknessMm())
                .receiver(upright.piece.section())
                .receiverMm(UprightStems.extent(
                        upright.piece, frame.lines.sides.get(side).inwards()))
                .widthMm(crossing.meeting.toMm() - crossing.meeting.fromMm())
                .heightMm(section.widthMm())
                .square(upright.bends() ? Screws.Square.KEPT : Screws.Square.FREE)
                .build();
        frame.screws.join(
                faces,
                Optional.of(crossing.driven),
                upright.node(height),
                node,
                CentreLines.at(frame.lines.at(side, crossing.alongMm), height),
                frame.lines.outward(side),
                frame.lines.along(side));
    }

    private int planter(SideFrame side, double alongMm) {
        Point inside = side.at(alongMm, frame.lines.wallMm + 2);
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < frame.box.inside().size(); i++) {
            Ring ring = frame.box.inside().get(i);
            double off = ring.contains(inside, 0) ? 0 : away(ring, inside);
            if (off < least) {
                least = off;
                best = i;
            }
        }
        return best;
    }

    private static double away(Ring ring, Point point) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < ring.size(); i++) {
            least = Math.min(least, ring.side(i).distanceMm(point));
        }
        return least;
    }
}
