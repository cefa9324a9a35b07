package borderwright.engine.layout.boxes;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Segment;
import borderwright.engine.layout.plan.DividerLine;
import borderwright.engine.layout.plan.SidePlan.Role;
import borderwright.engine.layout.room.Leg;
import borderwright.engine.layout.room.LegJoint;
import borderwright.engine.layout.run.BoxSide;
import borderwright.engine.layout.run.JointKind;
import borderwright.engine.layout.run.Nose;
import borderwright.engine.layout.run.RunChain;
import borderwright.engine.layout.run.RunTerms;
import borderwright.engine.layout.run.SquareCut;
import borderwright.engine.layout.run.Stretch;
import java.util.ArrayList;
import java.util.List;

/**
 * Draws boxes along a fitted run: back along the legs, square end, front the other way, square end.
 */
final class BoxOutline {
    private final RunChain chain;
    private final RunTerms terms;

    BoxOutline(RunChain chain, RunTerms terms) {
        this.chain = chain;
        this.terms = terms;
    }

    /** Sides of the box from one bound of a stretch to another, anticlockwise, the back first. */
    List<BoxSide> between(Stretch stretch, int fromBound, int toBound) {
        SquareCut from = stretch.bound(fromBound);
        SquareCut to = stretch.bound(toBound);
        double half = terms.gapMm() / 2;
        double start = from.stationMm() + (fromBound == 0 ? 0 : half);
        double end = to.stationMm() - (toBound == stretch.planters() ? 0 : half);
        List<BoxSide> sides = new ArrayList<>();
        sides.add(new BoxSide(place(from.leg(), start, 0), Role.BACK, chain.leg(from.leg())));
        for (int joint = from.leg(); joint < to.leg(); joint++) {
            sides.addAll(backCorner(joint));
        }
        sides.add(new BoxSide(place(to.leg(), end, 0), Role.END, null));
        sides.add(new BoxSide(place(to.leg(), end, terms.depthMm()), Role.FRONT, chain.leg(to.leg())));
        for (int joint = to.leg() - 1; joint >= from.leg(); joint--) {
            sides.add(new BoxSide(chain.joint(joint).front(), Role.FRONT, chain.leg(joint)));
        }
        sides.add(new BoxSide(place(from.leg(), start, terms.depthMm()), Role.END, null));
        return sides;
    }

    private Point place(int leg, double stationMm, double depthMm) {
        return LegJoint.place(chain.leg(leg), stationMm, depthMm);
    }

    private List<BoxSide> backCorner(int joint) {
        Leg after = chain.leg(joint + 1);
        Nose nose = nose(joint);
        return nose.isCut()
                ? List.of(new BoxSide(nose.before(), Role.BACK, null), new BoxSide(nose.after(), Role.BACK, after))
                : List.of(new BoxSide(chain.joint(joint).back(), Role.BACK, after));
    }

    /** The nose of the corner planter at a joint. */
    Nose nose(int joint) {
        LegJoint at = chain.joint(joint);
        double tip = at.back().distanceMm(at.front());
        double wingBack = tip * StrictMath.cos(at.angle() / 2)
                + at.leastWingMm(terms.rules().leastEdgeMm());
        return chain.kindAfter(joint) == JointKind.MITRED ? Nose.of(at, tip, wingBack, terms) : new Nose(at, 0);
    }

    /** The divider at a bound of a stretch, in a box with these sides. */
    DividerLine divider(List<BoxSide> sides, SquareCut cut) {
        Point front = place(cut.leg(), cut.stationMm(), terms.depthMm());
        Point back = place(cut.leg(), cut.stationMm(), 0);
        return new DividerLine(sideAt(sides, Role.FRONT, cut, front), front, sideAt(sides, Role.BACK, cut, back), back);
    }

    private int sideAt(List<BoxSide> sides, Role role, SquareCut cut, Point point) {
        int best = -1;
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < sides.size(); i++) {
            if (sides.get(i).role() == role
                    && chain.leg(cut.leg()).equals(sides.get(i).leg())) {
                Point next = sides.get((i + 1) % sides.size()).from();
                double off = new Segment(sides.get(i).from(), next).distanceMm(point);
                if (off < nearest) {
                    nearest = off;
                    best = i;
                }
            }
        }
        return best;
    }
}
