package borderwright.engine.buildup;

import borderwright.engine.buildup.Piece.Role;
import borderwright.engine.buildup.Upright.Nook;
import borderwright.engine.buildup.Upright.Stance;
import borderwright.engine.garden.SectionNote;
import borderwright.engine.geometry.Point;
import borderwright.engine.measure.Angle;
import java.util.List;

/**
 * The posts at the corners of the box.
 *
 * <p>Where the inside angle is below 180 degrees, the choices of {@link NookUprights} in their order, the first that has
 * room. Above 180, two uprights, one on each side with its end at the inner corner: they stand clear of each other
 * because each lies behind its own side's end.
 */
final class CornerPosts {
    private final Draft draft;
    private final UprightBuilder uprights;
    private final NookUprights nooks;

    CornerPosts(Draft draft, UprightBuilder uprights, NookUprights nooks) {
        this.draft = draft;
        this.uprights = uprights;
        this.nooks = nooks;
    }

    void build() {
        for (SideFrame side : draft.sides) {
            SideFrame before = draft.sides.get(StrictMath.floorMod(side.side() - 1, draft.sides.size()));
            boolean stood = side.startAngle() < StrictMath.PI ? inNook(before, side) : aboutReflex(before, side);
            if (!stood) {
                draft.note(corner(side) + ": no room for a post; its boards are held by the screws through the corner"
                        + " alone, which the strength check counts for nothing in end grain.");
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
        for (List<Upright> choice : nooks.choices(first, second, draft.sections.posts())) {
            if (uprights.fits(choice)) {
                choice.forEach(upright -> uprights.stand(upright, Role.POST, side.side(), "P"));
                tell(side, choice);
                return true;
            }
        }
        return false;
    }

    private boolean aboutReflex(SideFrame before, SideFrame side) {
        SectionNote section = draft.sections.posts();
        Stance stance = Stance.of(section);
        double wall = draft.wallMm();
        Nook onSide = new Nook(side.at(side.innerStart(wall), wall), side.along(), side.inwards(), StrictMath.PI / 2);
        Nook onBefore = new Nook(
                before.at(before.innerEnd(wall), wall), before.along().times(-1), before.inwards(), StrictMath.PI / 2);
        boolean stood = false;
        for (Nook nook : List.of(onBefore, onSide)) {
            Upright upright = new Upright(nook.rectangle(0, stance), section, null, false);
            if (uprights.fits(List.of(upright))) {
                uprights.stand(upright, Role.POST, side.side(), "P");
                stood = true;
            }
        }
        return stood;
    }

    private void tell(SideFrame side, List<Upright> choice) {
        SectionNote section = draft.sections.posts();
        if (choice.get(0).rip() != null) {
            draft.note(corner(side) + ": its post has a ripped edge so that it bears on both boards.");
        } else if (choice.size() == 2 && !choice.get(0).bearsOnBoth()) {
            draft.note(corner(side) + ": two uprights, one on each board"
                    + (section.isTreated()
                            ? ", because treated timber is not ripped lengthwise (the rip would bare untreated wood)."
                            : ", because no single post of " + section.name() + " would bear on both."));
        } else if (choice.size() == 1 && !choice.get(0).bearsOnBoth()) {
            draft.note(corner(side) + ": room for one upright only, on the longer board.");
        }
    }

    private String corner(SideFrame side) {
        return "Corner " + (side.side() + 1) + " of " + draft.plan.name() + " ("
                + draft.format.angle(Angle.ofDegrees(StrictMath.toDegrees(side.startAngle()))) + ")";
    }
}
