package borderwright.engine.buildup.joints;

import borderwright.engine.buildup.draft.Draft;
import borderwright.engine.buildup.draft.JointPlan;
import borderwright.engine.buildup.parts.Box.Hold;
import borderwright.engine.buildup.parts.BuildMessage;
import borderwright.engine.buildup.parts.Joint;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/** Places the screws of every joint of a box, and counts them. */
public final class JointMaker {
    private final Draft draft;
    private final WallScrews walls;
    private final FlankScrews flanks;
    private final CornerScrews corners;
    private final StrapScrews straps;
    private final CapScrews caps;
    private final PlacedPieces pieces;
    private final Set<String> covered = new TreeSet<>();
    private int coveredCount;

    public JointMaker(Draft draft) {
        this.draft = draft;
        this.pieces = new PlacedPieces(draft);
        ScrewSpace space = new ScrewSpace();
        this.walls = new WallScrews(pieces, space);
        this.flanks = new FlankScrews(pieces, space);
        this.corners = new CornerScrews(pieces, space);
        this.straps = new StrapScrews(pieces, space);
        this.caps = new CapScrews(pieces, space);
    }

    /** Those that have a screw, in the order in which they were settled. */
    public List<Joint> joints() {
        IdentityHashMap<JointPlan, Driven> placed = new IdentityHashMap<>();
        draft.joints().stream()
                .sorted(Comparator.comparingInt(this::turn))
                .forEach(plan -> placed.put(plan, driven(plan)));
        List<Joint> joints = new ArrayList<>();
        for (JointPlan plan : draft.joints()) {
            Driven driven = Objects.requireNonNull(placed.get(plan));
            if (!driven.lines().isEmpty()) {
                look(plan, driven);
                draft.fixings.add(
                        driven.screw(), plan.hold(), plan.use(), driven.lines().size());
                joints.add(new Joint(
                        plan.hold(),
                        plan.use(),
                        driven.screw().item(),
                        plan.side(),
                        plan.through(),
                        plan.into(),
                        driven.lines()));
            }
        }
        if (!covered.isEmpty()) {
            draft.note(BuildMessage.HEADS_COVERED.of(coveredCount, draft.plan.name(), List.copyOf(covered)));
        }
        return joints;
    }

    /**
     * When a joint is placed. Walls come first: every second one, then those between, and of an odd number the last after
     * both its neighbours. So walls and dividers of one make have their screws at the same heights and share a drawing.
     */
    private int turn(JointPlan plan) {
        return switch (plan.hold()) {
            case WALL_TO_UPRIGHT ->
                draft.sides.size() % 2 == 1 && plan.side() == draft.sides.size() - 1 ? 2 : plan.side() % 2;
            case UPRIGHTS_TOGETHER, LAP -> 3;
            case TIE_TO_BRACE, TIE_BRACKET -> 4;
            case DIVIDER_TO_UPRIGHT -> 5;
            case CORNER_STRAP -> 6;
            case STRAP_TO_UPRIGHT -> 7;
            case CAPPING_TO_WALL, OTHER -> 8;
        };
    }

    /** Heads that no driver reaches once all stands; those of a corner's uprights are driven before their wall goes on. */
    private void look(JointPlan plan, Driven driven) {
        boolean mayBeCovered = plan.hold() == Hold.TIE_TO_BRACE
                || plan.hold() == Hold.DIVIDER_TO_UPRIGHT
                || plan.hold() == Hold.STRAP_TO_UPRIGHT;
        if (mayBeCovered) {
            int count = (int) driven.lines().stream()
                    .filter(line -> pieces.isWood(line.planAt(-FlankScrews.CLEAR_MM), line.zMm()))
                    .count();
            coveredCount += count;
            if (count > 0) {
                covered.add(plan.into());
            }
        }
    }

    private Driven driven(JointPlan plan) {
        return switch (plan.hold()) {
            case WALL_TO_UPRIGHT -> walls.place(plan);
            case TIE_TO_BRACE -> flanks.tie(plan);
            case TIE_BRACKET -> flanks.bracket(plan);
            case DIVIDER_TO_UPRIGHT -> flanks.divider(plan);
            case UPRIGHTS_TOGETHER -> flanks.together(plan);
            case LAP -> corners.lap(plan);
            case CORNER_STRAP -> straps.straps(plan);
            case STRAP_TO_UPRIGHT -> straps.screws(plan);
            case CAPPING_TO_WALL -> caps.place(plan);
            case OTHER -> throw new IllegalArgumentException("no wall is held by " + plan.use());
        };
    }
}
