package borderwright.engine.buildup.draft;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Box.Course;
import borderwright.engine.buildup.parts.BracingScheme;
import borderwright.engine.buildup.parts.BuildMeans;
import borderwright.engine.buildup.parts.CutWords;
import borderwright.engine.buildup.parts.FixingTally;
import borderwright.engine.buildup.parts.Joint;
import borderwright.engine.buildup.parts.PartSections;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.PieceLabels;
import borderwright.engine.buildup.parts.PlacedSolids;
import borderwright.engine.buildup.parts.SawBench;
import borderwright.engine.buildup.parts.ScrewRules;
import borderwright.engine.buildup.parts.Strip;
import borderwright.engine.garden.BuildSpec;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Prism;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.message.Message;
import borderwright.engine.problem.Problem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** A box while it is being built: what is settled, what has been placed, and its notes. */
public final class Draft {
    public final FootprintPlan plan;
    public final BuildSpec rules;
    public final BuildMeans means;
    public final BracingScheme scheme;
    public final PartSections sections;
    public final CourseStack stack;
    public final List<SideFrame> sides;
    public final List<DividerStrip> dividers;
    public final List<Ring> inside;
    public final SawBench bench;
    final CutWords words;
    public final ScrewRules screws;
    public final PieceLabels labels = new PieceLabels();
    private final PlanterFinder finder;
    public final PlacedSolids clearance = new PlacedSolids();
    public final FixingTally fixings = new FixingTally();
    private final List<JointPlan> joints = new ArrayList<>();
    private final List<Piece> pieces = new ArrayList<>();
    private final Set<Message> notes = new LinkedHashSet<>();
    private final List<Problem> unmet = new ArrayList<>();

    /**
     * What is to be built.
     *
     * @param plan where the box stands
     * @param rules which section for what, corner style, faces, screws
     * @param means sections as measured, saws, longest pieces, units
     * @param scheme how closely it is braced and tied
     */
    public record Order(FootprintPlan plan, BuildSpec rules, BuildMeans means, BracingScheme scheme) {}

    /**
     * The walls and dividers as lines and strips on the plan, before any board.
     *
     * @param stack courses of the walls
     * @param sides of the outline
     * @param dividers across the box
     * @param inside of each planter
     */
    public record Shell(CourseStack stack, List<SideFrame> sides, List<DividerStrip> dividers, List<Ring> inside) {}

    public Draft(Order order, PartSections sections, Shell shell) {
        this.plan = order.plan;
        this.rules = order.rules;
        this.means = order.means;
        this.scheme = order.scheme;
        this.sections = sections;
        this.stack = shell.stack;
        this.sides = shell.sides;
        this.dividers = shell.dividers;
        this.inside = shell.inside;
        this.finder = new PlanterFinder(inside);
        this.bench = new SawBench(means.saws());
        this.words = new CutWords(bench, means.steps());
        this.screws = new ScrewRules(means.units());
    }

    public double wallMm() {
        return sections.walls().thickness().mm();
    }

    public List<Course> courses() {
        return stack.courses();
    }

    /** Name of the planter that a point lies in, or the nearest. */
    public String planterAt(Point p) {
        return plan.planters().get(finder.at(p));
    }

    /**
     * Whether a board waits for its gap to be re-measured: its side closes a gap, and it reaches into the last planter of
     * the box, where the run closes. The boards before it can be cut as planned; what they are out, it takes up.
     */
    public boolean waits(SideFrame side, Strip board) {
        if (!plan.sides().get(side.side()).waits()) {
            return false;
        }
        String last = plan.planters().get(plan.planters().size() - 1);
        double startMm = StrictMath.max(
                StrictMath.max(board.left().nearMm(), board.left().farMm()), side.innerStart(wallMm()));
        double endMm = StrictMath.min(
                StrictMath.min(board.right().nearMm(), board.right().farMm()), side.innerEnd(wallMm()));
        double insideMm = wallMm() + 1;
        return planterAt(side.at(startMm + 1, insideMm)).equals(last)
                || planterAt(side.at(endMm - 1, insideMm)).equals(last);
    }

    /** The whole height of the wall over a plan. */
    public Prism wallHigh(Ring ring) {
        return new Prism(ring, stack.bottomMm(), stack.topMm());
    }

    public void add(Piece piece) {
        pieces.add(piece);
    }

    public List<Piece> pieces() {
        return pieces;
    }

    /** The bottom course stands first, then what holds it up, then the rest. */
    private static int turn(Piece piece) {
        return switch (piece.role()) {
            case WALL -> piece.course() == 1 ? 0 : 2;
            case POST -> 1;
            case DIVIDER -> 3;
            case BRACE -> 4;
            case TIE -> 5;
            case LEG -> 6;
            case BEARER -> 7;
            case SLAT -> 8;
            case CAPPING -> 9;
        };
    }

    /** Settles a joint; its screws are placed and counted when all pieces stand. */
    public void join(JointPlan joint) {
        joints.add(joint);
        fixings.add(joint.screw(), joint.hold(), joint.use(), 0);
    }

    public List<JointPlan> joints() {
        return joints;
    }

    public void note(Message message) {
        notes.add(message);
    }

    public void cannot(Problem problem) {
        unmet.add(problem);
    }

    /** The box, its pieces in the order in which they are put up. */
    public Box box(List<Joint> placed, double soilDepthMm) {
        pieces.sort(Comparator.comparingInt(Draft::turn).thenComparingInt(Piece::course));
        return Box.builder()
                .plan(plan)
                .courses(stack.courses())
                .pieces(pieces)
                .fixings(fixings.fixings())
                .joints(placed)
                .inside(inside)
                .soilDepthMm(soilDepthMm)
                .notes(List.copyOf(notes))
                .unmet(unmet)
                .build();
    }
}
