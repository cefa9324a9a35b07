package borderwright.engine.buildup.uprights;

import borderwright.engine.buildup.draft.Draft;
import borderwright.engine.buildup.draft.JointPlan;
import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.buildup.draft.StrapLegs;
import borderwright.engine.buildup.draft.UprightPlan;
import borderwright.engine.buildup.draft.UprightPlan.Nook;
import borderwright.engine.buildup.draft.UprightPlan.Stance;
import borderwright.engine.buildup.parts.Box.Hold;
import borderwright.engine.buildup.parts.BuildMessage;
import borderwright.engine.buildup.parts.FixingMessage;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.buildup.parts.ScrewRules.Screw;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Prism;
import borderwright.engine.geometry.Ring;
import borderwright.engine.message.Message;
import java.util.ArrayList;
import java.util.List;

/**
 * The posts at the corners of the box.
 *
 * <p>Where the inside angle is below 180 degrees, the choices of {@link NookUprights} in their order, the first that has
 * room. Above 180, two uprights, one on each side with its end at the inner corner: they stand clear of each other
 * because each lies behind its own side's end. A strap round the inner corner ties the boards to each other.
 */
public final class CornerPosts {
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
                draft.note(about(side, BuildMessage.CORNER_WITHOUT_POST));
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
                List<String> labels = choice.stream()
                        .map(upright -> uprights.stand(upright, Role.POST, side.side()))
                        .toList();
                join(side, labels, choice.get(0).bearsOnBoth());
                note(side, choice);
                return true;
            }
        }
        return false;
    }

    /** Two uprights hold the corner together only once they are joined. */
    private void join(SideFrame side, List<String> labels, boolean touch) {
        if (labels.size() < 2) {
            return;
        }
        if (touch) {
            double behind = Stance.of(draft.sections.posts()).faceMm();
            Screw screw = draft.screws.screw(Stance.of(draft.sections.posts()).depthMm(), behind);
            draft.join(new JointPlan(
                    Hold.UPRIGHTS_TOGETHER,
                    FixingMessage.UPRIGHTS_OF_A_CORNER.of(Hold.UPRIGHTS_TOGETHER.perJoint()),
                    screw,
                    side.side(),
                    labels.get(1),
                    labels.get(0)));
        } else {
            uprights.strap(side.side(), draft.screws.strapScrew(), FixingMessage.STRAPS_TO_UPRIGHTS, labels);
        }
    }

    /**
     * The posts begin where the boards are whole and the legs of a strap on their inner faces have room: a mitre tapers to
     * nothing at the inner corner, and a screw there would find no wood.
     */
    private boolean aboutReflex(SideFrame before, SideFrame side) {
        SectionSpec section = draft.sections.posts();
        Stance stance = Stance.of(section);
        double wall = draft.wallMm();
        Nook onSide = new Nook(side.at(StrapLegs.POST_MM, wall), side.along(), side.inwards(), StrictMath.PI / 2);
        Nook onBefore = new Nook(
                before.at(before.lengthMm() - StrapLegs.POST_MM, wall),
                before.along().times(-1),
                before.inwards(),
                StrictMath.PI / 2);
        List<Prism> legs = List.of(
                leg(side, side.innerStart(wall), StrapLegs.POST_MM),
                leg(before, before.lengthMm() - StrapLegs.POST_MM, before.innerEnd(wall)));
        boolean room = legs.stream().allMatch(draft.clearance::isFree);
        legs.forEach(draft.clearance::take);
        List<String> stood = new ArrayList<>();
        for (Nook nook : List.of(onBefore, onSide)) {
            UprightPlan upright = UprightPlan.onOneFace(nook.rectangle(0, stance), section);
            if (uprights.fits(List.of(upright))) {
                stood.add(uprights.stand(upright, Role.POST, side.side()));
            }
        }
        if (room && stood.size() == 2) {
            uprights.strap(side.side(), draft.screws.strapScrew(wall), FixingMessage.STRAPS_TO_BOARDS, stood);
        }
        return !stood.isEmpty();
    }

    /** The room of a strap's leg on a wall's inner face; the boards end in it, so nothing else may stand there. */
    private Prism leg(SideFrame side, double from, double to) {
        double wall = draft.wallMm();
        double off = wall + StrapLegs.THICK_MM;
        return draft.wallHigh(
                new Ring(List.of(side.at(from, wall), side.at(to, wall), side.at(to, off), side.at(from, off))));
    }

    private void note(SideFrame side, List<UprightPlan> choice) {
        SectionSpec section = draft.sections.posts();
        if (choice.get(0).rip() != null) {
            draft.note(about(side, BuildMessage.CORNER_POST_RIPPED));
        } else if (choice.size() == 2 && !choice.get(0).bearsOnBoth()) {
            draft.note(
                    section.isTreated()
                            ? about(side, BuildMessage.CORNER_POSTS_TREATED)
                            : BuildMessage.CORNER_POSTS_UNRIPPED.of(
                                    side.side() + 1, draft.plan.name(), angleDeg(side), section.name()));
        } else if (choice.size() == 1 && !choice.get(0).bearsOnBoth()) {
            draft.note(about(side, BuildMessage.CORNER_POST_ON_ONE_BOARD));
        }
    }

    private Message about(SideFrame side, BuildMessage message) {
        return message.of(side.side() + 1, draft.plan.name(), angleDeg(side));
    }

    private static double angleDeg(SideFrame side) {
        return StrictMath.toDegrees(side.startAngle());
    }
}
