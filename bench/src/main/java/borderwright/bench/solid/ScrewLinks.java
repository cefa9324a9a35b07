package borderwright.bench.solid;

import borderwright.bench.solid.Link.Kind;
import borderwright.bench.solid.Link.Law;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Box.Hold;
import borderwright.engine.buildup.parts.Joint;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.ScrewLine;
import borderwright.engine.geometry.Point;
import borderwright.engine.strength.box.BoxFrame;
import borderwright.engine.strength.box.ScrewGroup;
import borderwright.engine.strength.timber.FastenerJoint;
import borderwright.engine.strength.timber.LoadDuration;
import borderwright.engine.strength.worked.Working;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Every screw of a box as springs where it is driven, and the faces that it draws together. The stiffness of one screw is the
 * plan's own (EN 1995-1-1 table 7.1, or its maker's): it is a material here, and no result.
 */
final class ScrewLinks {
    private static final double INSIDE_MM = 1;
    private static final Set<Hold> SCREWED = Set.of(Hold.WALL_TO_UPRIGHT, Hold.TIE_TO_BRACE, Hold.DIVIDER_TO_UPRIGHT);

    /** Faces are this stiff, N/mm3: some ten times the wood behind them. */
    private static final double FACES = 50;

    /** What is left of the screws' hold upwards where joints are hinges: no more than keeps an upright in its place. */
    private static final double LITTLE = 1e-3;

    private final SolidBox solid;
    private final BoxFrame given;
    private final Stands stands;
    private final Set<String> faced = new HashSet<>();

    ScrewLinks(SolidBox solid) {
        this.solid = solid;
        stands = solid.stands();
        given = BoxFrame.of(solid.box, solid.terms.materials(), solid.terms.fill(), 0, solid.terms.postGround());
        if (!given.capping().isEmpty()
                || !given.feet().isEmpty()
                || !given.unheld().isEmpty()) {
            throw new IllegalArgumentException(
                    "capping that counts, posts in the ground and loose parts are not compared");
        }
    }

    void draw() {
        for (boolean walls : new boolean[] {true, false}) {
            for (Joint joint : solid.box.joints()) {
                if (joint.hold() == Hold.WALL_TO_UPRIGHT == walls && SCREWED.contains(joint.hold())) {
                    Mate mate = mate(joint.screws().get(0));
                    stands.take(joint, mate.through().piece, mate.into().piece);
                }
            }
        }
        for (Joint joint : solid.box.joints()) {
            switch (joint.hold()) {
                case WALL_TO_UPRIGHT, TIE_TO_BRACE, DIVIDER_TO_UPRIGHT, UPRIGHTS_TOGETHER -> screws(joint);
                case LAP -> laps(joint);
                case STRAP_TO_UPRIGHT -> straps(joint);
                default -> {}
            }
        }
    }

    /** Of a board, a tie or a divider on an upright, whichever of them lies under the heads. */
    private Mate mate(ScrewLine screw) {
        Block head = holding(screw, INSIDE_MM, piece -> true);
        Block into = holding(screw, piece -> !piece.equals(head.piece));
        Mate mate = Mate.of(head, into, screw);
        return head.upright && !into.upright ? mate.turned() : mate;
    }

    /** The first piece wanted on a screw's way. */
    private Block holding(ScrewLine screw, Predicate<Piece> wanted) {
        for (double depth = INSIDE_MM; depth < screw.lengthMm(); depth += INSIDE_MM) {
            Point place = screw.planAt(depth);
            double z = screw.zAt(depth);
            for (Block block : solid.blocks) {
                if (wanted.test(block.piece) && isIn(block.piece, place, z)) {
                    return block;
                }
            }
        }
        throw new IllegalArgumentException("a screw holds one piece alone, at " + screw.head() + ", " + screw.zMm());
    }

    private static boolean isIn(Piece piece, Point place, double zMm) {
        return piece.place().plan().contains(place, 0)
                && piece.place().bottomMm() <= zMm
                && zMm <= piece.place().topMm();
    }

    private Block holding(ScrewLine screw, double depthMm, Predicate<Piece> wanted) {
        Point place = screw.planAt(depthMm);
        double z = screw.zAt(depthMm);
        return solid.blocks.stream()
                .filter(block -> wanted.test(block.piece) && isIn(block.piece, place, z))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no piece about a screw at " + place + ", " + z));
    }

    private void screws(Joint joint) {
        for (ScrewLine screw : joint.screws()) {
            Mate real = mate(screw);
            face(real);
            Block board = real.through();
            Block upright = real.into();
            FastenerJoint one = group(joint.hold(), board.piece.label(), upright.piece.label())
                    .joint();
            String name = name(joint.hold(), board.piece.label(), upright.piece.label());
            double shear = one.slipModulus() / one.creepFactor();
            boolean hinge = solid.drawing.isHinged();
            Mate mate = hinge ? real.standingAt(stands.of(upright.piece)) : real;
            double middle = board.heightMm(board.up / 2);
            double z = hinge ? middle : screw.zMm();
            double square = hinge ? middle + offMiddleMm(joint, screw, board.piece) : z;
            elastic(name, Kind.SCREW_ALONG_WALL, shear, mate.stretch(mate.place(), square, mate.sideways()));
            elastic(name, Kind.SCREW_UPWARDS, hinge ? LITTLE * shear : shear, mate.rise(mate.place(), z));
            elastic(name, Kind.SCREW_PULLED, pull(one), mate.stretch(mate.place(), z, mate.normal()));
        }
    }

    /** The plan counts on screws one above the other to keep an upright square to the boards of a wall, and to no others. */
    private static double offMiddleMm(Joint joint, ScrewLine screw, Piece board) {
        double mean = joint.screws().stream()
                .filter(other -> isIn(board, other.planAt(INSIDE_MM), other.zMm()))
                .mapToDouble(ScrewLine::zMm)
                .average()
                .orElse(screw.zMm());
        return joint.hold() == Hold.WALL_TO_UPRIGHT ? screw.zMm() - mean : 0;
    }

    static String name(Hold hold, String board, String upright) {
        return hold + " " + board + " " + upright;
    }

    private double pull(FastenerJoint joint) {
        double declared = solid.terms.materials().axialStiffnessNPerMm();
        double first = !joint.holdsPull() ? 0 : declared > 0 ? declared : joint.slipModulus();
        return first / joint.creepFactor();
    }

    private void elastic(String name, Kind kind, double stiffness, List<Link.Term> terms) {
        if (stiffness > 0) {
            solid.links.add(new Link(name, kind, Law.ELASTIC, stiffness, 0, terms));
        }
    }

    private void face(Mate mate) {
        if (!faced.add(System.identityHashCode(mate.through()) + "/" + System.identityHashCode(mate.into()))) {
            return;
        }
        boolean lap = mate.into().piece.role() == Piece.Role.WALL;
        Mate drawn = lap || !solid.drawing.isHinged() ? mate : mate.standingAt(stands.of(mate.into().piece));
        double heightMm = mate.through().piece.place().heightMm();
        if (solid.drawing == Drawing.AS_FRAME) {
            solid.links.addAll(drawn.edges(plansContact(mate, lap), mate.widthMm()));
        } else if (solid.drawing == Drawing.AS_HINGES && !lap) {
            solid.links.addAll(drawn.hingedFaces(FACES, mate.widthMm(), heightMm));
        } else {
            solid.links.addAll(drawn.faces(FACES));
        }
    }

    /** N/mm of one edge in the plan's frame: wood pressed across the grain, through both pieces or at a lap through one. */
    private double plansContact(Mate mate, boolean lap) {
        double pressed = solid.timber(mate.through()).e90Mean()
                * mate.through().piece.place().heightMm();
        double deepMm = mate.through().depthMm(mate.normal()) + mate.into().depthMm(mate.normal());
        return lap ? pressed : pressed * mate.widthMm() / deepMm;
    }

    private ScrewGroup group(Hold hold, String through, String into) {
        return given.holds().stream()
                .filter(group -> group.kind() == hold
                        && group.fixed().equals(through)
                        && group.receiver().equals(into))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the plan has no screws " + through + " to " + into));
    }

    /** The end of one board against the face of the other, and the screws through both as far as the plan counts them. */
    private void laps(Joint joint) {
        for (ScrewLine screw : joint.screws()) {
            Block through = holding(screw, INSIDE_MM, piece -> piece.role() == Piece.Role.WALL);
            Block into = holding(screw, screw.lengthMm() - INSIDE_MM, piece -> piece.role() == Piece.Role.WALL);
            Mate mate = Mate.of(through, into, screw);
            face(mate);
            if (!given.helps().isEmpty()) {
                FastenerJoint one = given.helps().get(0).joint();
                double limit = 1 / one.utilisation(1, 0, 1, LoadDuration.PERMANENT, Working.SILENT);
                solid.links.add(new Link(
                        "LAP " + through.piece.label() + " " + into.piece.label(),
                        Kind.LAP_SCREW,
                        Law.SLIPPING,
                        one.slipModulus() / one.creepFactor(),
                        limit,
                        mate.stretch(mate.place(), screw.zMm(), mate.sideways())));
            }
        }
    }

    /**
     * A strap in each course, both level directions: from the middle of one leg's screws to the middle of the other's in the
     * boards that they are driven into; as hinges, from upright to upright.
     */
    private void straps(Joint joint) {
        for (Box.Course course : solid.box.courses()) {
            List<ScrewLine> here = joint.screws().stream()
                    .filter(screw -> screw.zMm() >= course.bottomMm() && screw.zMm() <= course.topMm())
                    .toList();
            if (here.isEmpty()) {
                continue;
            }
            FastenerJoint leg = given.straps().get(0).leg();
            double stiffness = here.size() / 2.0 * leg.slipModulus() / leg.creepFactor() / 2;
            for (Point direction : List.of(new Point(1, 0), new Point(0, 1))) {
                List<Link.Term> terms = solid.drawing.isHinged()
                        ? uprights(joint, (course.bottomMm() + course.topMm()) / 2, direction)
                        : legs(here, direction);
                elastic("STRAP " + joint.through() + " " + course.number(), Kind.STRAP, stiffness, terms);
            }
        }
    }

    private List<Link.Term> uprights(Joint joint, double zMm, Point direction) {
        List<Link.Term> terms = new ArrayList<>();
        for (Block block : solid.blocks) {
            boolean first = block.piece.label().equals(joint.through());
            if (first || block.piece.label().equals(joint.into())) {
                Point middle = block.piece.place().plan().meanCorner();
                Mate.add(terms, block, middle, zMm, direction, first ? -1 : 1);
            }
        }
        return terms;
    }

    private List<Link.Term> legs(List<ScrewLine> screws, Point direction) {
        List<Link.Term> terms = new ArrayList<>();
        Block first = holding(screws.get(0), INSIDE_MM, piece -> true);
        for (ScrewLine screw : screws) {
            Block board = holding(screw, INSIDE_MM, piece -> true);
            double share = (board.piece.equals(first.piece) ? -2.0 : 2.0) / screws.size();
            Mate.add(terms, board, screw.head(), screw.zMm(), direction, share);
        }
        return terms;
    }
}
