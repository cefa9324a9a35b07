package borderwright.engine.strength.box;

import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Box.Course;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.buildup.parts.PostHole;
import borderwright.engine.geometry.Point;
import borderwright.engine.strength.box.UprightLine.Meeting;
import borderwright.engine.strength.frame.Freedom;
import borderwright.engine.strength.frame.JointRigidity;
import borderwright.engine.strength.frame.SpringLaw;
import borderwright.engine.strength.frame.Vector;
import borderwright.engine.strength.soil.PostFooting;
import borderwright.engine.strength.timber.Timber;
import borderwright.engine.strength.timber.TimberSection;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The posts and braces of a box as upright bars.
 *
 * <p>A corner's posts stand where the middle lines of its two walls meet, a brace on the middle line of its wall: boards
 * hang on them without eccentricity, as hinges. Only those that are let into the ground are held by it.
 */
final class UprightStems {
    final List<UprightLine> all = new ArrayList<>();
    final List<Foot> feet = new ArrayList<>();
    private final FrameOfBox frame;

    UprightStems(FrameOfBox frame) {
        this.frame = frame;
        for (Piece piece : frame.box.pieces()) {
            if (piece.role() == Role.POST || piece.role() == Role.BRACE) {
                all.add(line(piece));
            }
        }
    }

    private UprightLine line(Piece piece) {
        UprightLine line = new UprightLine(piece);
        for (SideFrame side : frame.lines.sides) {
            side.bearing(piece.place().plan(), frame.lines.wallMm)
                    .ifPresent(b -> line.meetings.add(new Meeting(side.side(), b.fromMm(), b.toMm())));
        }
        if (piece.role() == Role.POST) {
            int before = StrictMath.floorMod(piece.side() - 1, frame.lines.sides.size());
            line.meetings.removeIf(m -> m.side() != piece.side() && m.side() != before);
            line.stand(frame.lines.corner(piece.side()));
        } else if (!line.meetings.isEmpty()) {
            Meeting widest = line.meetings.get(0);
            for (Meeting meeting : line.meetings) {
                widest = meeting.toMm() - meeting.fromMm() > widest.toMm() - widest.fromMm() + 1e-6 ? meeting : widest;
            }
            line.meetings.clear();
            line.meetings.add(widest);
            line.stand(frame.lines.at(widest.side(), widest.middleMm()));
        }
        measure(line);
        for (Course course : frame.box.courses()) {
            line.want((course.bottomMm() + course.topMm()) / 2);
        }
        PostHole.of(piece, bedMm()).ifPresent(hole -> depthsMm(hole).forEach(depth -> line.want(bedMm() - depth)));
        return line;
    }

    private double bedMm() {
        return frame.box.courses().get(0).bottomMm();
    }

    /** Where springs stand for ground that bears alike all the way down: Gauss's two points. */
    private static List<Double> depthsMm(PostHole hole) {
        return List.of(hole.depthMm() / 2 * (1 - 1 / Math.sqrt(3)), hole.depthMm() / 2 * (1 + 1 / Math.sqrt(3)));
    }

    private void letIn(UprightLine line, PostHole hole) {
        PostFooting footing = new PostFooting(hole.depthMm() / 1000, hole.widthMm() / 1000, frame.ground);
        List<Double> depths = depthsMm(hole);
        double stiffness = footing.stiffnessNPerMm2() * hole.depthMm() / depths.size();
        List<Foot.Spring> springs = new ArrayList<>();
        for (double depth : depths) {
            Vector at = CentreLines.at(line.at(), bedMm() - depth);
            int node = line.node(bedMm() - depth);
            for (boolean across : new boolean[] {false, true}) {
                int index =
                        frame.builder.toGround(node, at, across ? Vector.Y : Vector.X, stiffness, SpringLaw.ELASTIC);
                springs.add(new Foot.Spring(index, depth, across));
            }
        }
        feet.add(new Foot(line.piece.label(), footing, springs));
    }

    /** Its width on the first wall that it bears on, and its depth; what a rip takes off thins it. */
    private void measure(UprightLine line) {
        int side = line.meetings.isEmpty() ? 0 : line.meetings.get(0).side();
        SideFrame wall = frame.lines.sides.get(side);
        double depth = extent(line.piece, wall.inwards());
        line.measured(new UprightLine.CrossSection(
                frame.lines.outward(side), line.piece.place().plan().areaMm2() / depth, depth));
    }

    static double extent(Piece piece, Point along) {
        double from = Double.POSITIVE_INFINITY;
        double to = Double.NEGATIVE_INFINITY;
        for (Point p : piece.place().plan().corners()) {
            from = StrictMath.min(from, p.dot(along));
            to = StrictMath.max(to, p.dot(along));
        }
        return to - from;
    }

    /** Gives each wanted height its node. */
    void stand() {
        for (UprightLine line : all) {
            for (Map.Entry<Double, Integer> entry : line.nodes.entrySet()) {
                Vector at = CentreLines.at(line.at(), entry.getKey());
                entry.setValue(
                        line.bends()
                                ? frame.builder.node(at, Freedom.UX, Freedom.UY, Freedom.RX, Freedom.RY, Freedom.RZ)
                                : frame.boardNode(at));
            }
            PostHole.of(line.piece, bedMm()).ifPresent(hole -> letIn(line, hole));
        }
    }

    /** The bars between the nodes. */
    List<Stem> drawn() {
        List<Stem> stems = new ArrayList<>();
        for (UprightLine line : all) {
            Timber timber = frame.materials.timber(line.piece.section());
            TimberSection section = new TimberSection(
                    line.crossSection().faceMm(), line.crossSection().depthMm());
            double e = timber.e0Mean();
            JointRigidity rigidity = new JointRigidity(
                    e * section.areaMm2(),
                    e * section.edgeMm4(),
                    e * section.flatMm4(),
                    timber.gMean() * section.torsionMm4());
            List<Integer> nodes = List.copyOf(line.nodes.values());
            List<Integer> members = new ArrayList<>();
            for (int i = 1; i < nodes.size(); i++) {
                members.add(frame.builder.member(
                        nodes.get(i - 1),
                        nodes.get(i),
                        rigidity,
                        line.crossSection().outward()));
            }
            stems.add(new Stem(line.piece.label(), line.piece.section(), section, members));
        }
        return stems;
    }

    /** Screws or straps between the two uprights of a corner that bear on one wall each. */
    void joinPairs() {
        for (int corner = 0; corner < frame.lines.sides.size(); corner++) {
            List<UprightLine> here = new ArrayList<>();
            for (UprightLine line : all) {
                if (line.piece.role() == Role.POST && line.piece.side() == corner) {
                    here.add(line);
                }
            }
            if (here.size() == 2) {
                joinPair(corner, here.get(0), here.get(1));
            }
        }
    }

    private void joinPair(int corner, UprightLine first, UprightLine second) {
        boolean screwed = frame.driven.holdTogether(first.piece, second.piece);
        for (double height : first.nodes.keySet()) {
            if (height < bedMm() || !second.reaches(height)) {
                continue;
            }
            Vector place = CentreLines.at(first.at(), height);
            int a = first.node(height);
            int b = second.node(height);
            if (screwed) {
                Vector apart = apart(first, second);
                frame.screws.join(
                        faces(first, second),
                        frame.driven.ofPair(Box.Hold.UPRIGHTS_TOGETHER, first.piece, second.piece, height),
                        a,
                        b,
                        place,
                        apart,
                        Vector.Z.cross(apart));
            } else {
                frame.screws.strap(
                        corner,
                        frame.driven.ofPair(Box.Hold.STRAP_TO_UPRIGHT, first.piece, second.piece, height),
                        a,
                        b,
                        place,
                        first.piece.section(),
                        first.crossSection().depthMm());
            }
        }
    }

    private Screws.Faces faces(UprightLine first, UprightLine second) {
        Course bottom = frame.box.courses().get(0);
        return Screws.Faces.builder()
                .kind(Box.Hold.UPRIGHTS_TOGETHER)
                .label(first.piece.label())
                .receiverLabel(second.piece.label())
                .fixed(second.piece.section())
                .fixedMm(second.crossSection().depthMm())
                .receiver(first.piece.section())
                .receiverMm(first.crossSection().faceMm())
                .widthMm(second.crossSection().faceMm())
                .heightMm(bottom.topMm() - bottom.bottomMm())
                .square(Screws.Square.FREE)
                .build();
    }

    /** The axis of the first one along which the second stands off. */
    private static Vector apart(UprightLine first, UprightLine second) {
        Point off = UprightLine.middle(second.piece).minus(UprightLine.middle(first.piece));
        Vector towards = new Vector(off.xMm(), off.yMm(), 0);
        Vector side = Vector.Z.cross(first.crossSection().outward());
        Vector axis = Math.abs(towards.dot(side))
                        > Math.abs(towards.dot(first.crossSection().outward()))
                ? side
                : first.crossSection().outward();
        return towards.dot(axis) > 0 ? axis : axis.times(-1);
    }
}
