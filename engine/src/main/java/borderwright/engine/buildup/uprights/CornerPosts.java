package borderwright.engine.buildup.uprights;

import borderwright.engine.buildup.draft.Draft;
import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.buildup.draft.UprightPlan;
import borderwright.engine.buildup.draft.UprightPlan.Nook;
import borderwright.engine.buildup.draft.UprightPlan.Stance;
import borderwright.engine.buildup.parts.Box.Hold;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.geometry.Point;
import borderwright.engine.measure.Angle;
import java.util.ArrayList;
import java.util.List;

/**
 * The posts at the corners of the box.
 *
 * <p>Where the inside angle is below 180 degrees, the choices of {@link NookUprights} in their order, the first that has
 * room. Above 180, two uprights, one on each side with its end at the inner corner: they stand clear of each other
 * because each lies behind its own side's end.
 */
public final class CornerPosts {
    private static final String STRAP = "bent steel strap";

    private final Draft draft;
    private final UprightBuilder uprights;
    private final NookUprights nooks;

    public CornerPosts(Draft draft, UprightBuilder uprights, NookUprights nooks) {
        this.draft = draft;
        this.uprights = uprights;
        this.nooks = nooks;
    }

    public void build() {
        for (SideFrame side : draft.sides) {
            SideFrame before = draft.sides.get(StrictMath.floorMod(side.side() - 1, draft.sides.size()));
            boolean stood = side.startAngle() < StrictMath.PI ? inNook(before, side) : aboutReflex(before, side);
            if (!stood) {
                draft.note(corner(side) + ": no room for a post; its boards are held by the screws through the corner"
                        + " alone.");
            }
        }
    }

    private boolean inNook(SideFrame before, SideFrame side) {
        Point apex = side.at(side.innerStart(draft.wallMm()), draft.wallMm());
        double angle = side.startAngle();
        Nook onSide = new Nook(apex, side.along(), side.inwards(), angle);
        Nook onBefore = new Nook(apex, before.along().times(-1), before.inwards(), angle);
        boolean sideIsLonger = side.lengthMm() >= before.lengthMm();
        Nook first = sideIsLonger ? onSide : onBefore;
        Nook second = sideIsLonger ? onBefore : onSide;
        for (List<UprightPlan> choice : nooks.choices(first, second, draft.sections.posts())) {
            if (uprights.fits(choice)) {
                choice.forEach(upright -> uprights.stand(upright, Role.POST, side.side(), "P"));
                join(choice);
                tell(side, choice);
                return true;
            }
        }
        return false;
    }

    /** Two uprights hold the corner together only once they are joined. */
    private void join(List<UprightPlan> pair) {
        if (pair.size() < 2) {
            return;
        }
        int courses = draft.courses().size();
        if (pair.get(0).bearsOnBoth()) {
            double behind = Stance.of(draft.sections.posts()).faceMm();
            draft.fixings.add(
                    draft.screws.screw(Stance.of(draft.sections.posts()).depthMm(), behind, null),
                    Hold.UPRIGHTS_TOGETHER,
                    "the two uprights of a corner to each other, " + Hold.UPRIGHTS_TOGETHER.perJoint() + " a course",
                    Hold.UPRIGHTS_TOGETHER.perJoint() * courses);
        } else {
            draft.fixings.addPlain(
                    STRAP,
                    Hold.CORNER_STRAP,
                    "across the two uprights of a corner, one a course: steel at least 1.5 mm thick and 20 mm wide",
                    courses);
            draft.fixings.add(
                    draft.screws.strapScrew(),
                    Hold.STRAP_TO_UPRIGHT,
                    "straps to uprights, " + Hold.STRAP_TO_UPRIGHT.perJoint() / 2 + " in each leg",
                    Hold.STRAP_TO_UPRIGHT.perJoint() * courses);
        }
    }

    private boolean aboutReflex(SideFrame before, SideFrame side) {
        SectionSpec section = draft.sections.posts();
        Stance stance = Stance.of(section);
        double wall = draft.wallMm();
        Nook onSide = new Nook(side.at(side.innerStart(wall), wall), side.along(), side.inwards(), StrictMath.PI / 2);
        Nook onBefore = new Nook(
                before.at(before.innerEnd(wall), wall), before.along().times(-1), before.inwards(), StrictMath.PI / 2);
        List<UprightPlan> stood = new ArrayList<>();
        for (Nook nook : List.of(onBefore, onSide)) {
            UprightPlan upright = new UprightPlan(nook.rectangle(0, stance), section, null, false);
            if (uprights.fits(List.of(upright))) {
                uprights.stand(upright, Role.POST, side.side(), "P");
                stood.add(upright);
            }
        }
        join(stood);
        return !stood.isEmpty();
    }

    private void tell(SideFrame side, List<UprightPlan> choice) {
        SectionSpec section = draft.sections.posts();
        if (choice.get(0).rip() != null) {
            draft.note(corner(side) + ": its post has a ripped edge so that it bears on both boards.");
        } else if (choice.size() == 2 && !choice.get(0).bearsOnBoth()) {
            draft.note(corner(side) + ": two uprights, one on each board"
                    + (section.isTreated()
                            ? ", because treated timber is not ripped lengthwise (the rip would bare untreated wood)."
                            : ", because no saw at hand rips a post of " + section.name() + " to bear on both.")
                    + " A bent steel strap across them at each course holds the corner together.");
        } else if (choice.size() == 1 && !choice.get(0).bearsOnBoth()) {
            draft.note(corner(side) + ": room for one upright only, on the longer board.");
        }
    }

    private String corner(SideFrame side) {
        return "Corner " + (side.side() + 1) + " of " + draft.plan.name() + " ("
                + draft.format.angle(Angle.ofDegrees(StrictMath.toDegrees(side.startAngle()))) + ")";
    }
}
