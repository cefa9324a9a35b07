package borderwright.engine.layout.plan;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.List;

/**
 * What a box is built from, apart from its name and place: boxes of one shape are built alike.
 *
 * <p>Lengths are rounded to 0.1 mm, as pieces are cut and printed. Angles are rounded to 0.01 deg, by which a wall of 600 mm
 * moves its end by 0.1 mm.
 *
 * @param sides in the order of the corners
 * @param dividers in order along the run
 * @param heightTenthsMm height of the finished wall, 0.1 mm
 * @param floorTenthsMm height of the false floor above the bed, 0.1 mm; 0 for none
 * @param rim what its walls end in
 */
public record BoxShape(List<Side> sides, List<Divider> dividers, long heightTenthsMm, long floorTenthsMm, Rim rim) {
    public BoxShape {
        sides = List.copyOf(sides);
        dividers = List.copyOf(dividers);
    }

    /**
     * One side.
     *
     * @param tenthsMm its length, 0.1 mm
     * @param hundredthsDeg the angle inside the box at its first corner, 0.01 deg
     * @param role which side of the box it is
     */
    public record Side(long tenthsMm, long hundredthsDeg, SidePlan.Role role) {}

    /**
     * One divider.
     *
     * @param fromSide index of the side where it starts
     * @param fromTenthsMm how far along that side, 0.1 mm
     * @param toSide index of the side where it ends
     * @param toTenthsMm how far along that side, 0.1 mm
     */
    public record Divider(int fromSide, long fromTenthsMm, int toSide, long toTenthsMm) {}

    /** What walls end in. */
    public enum Rim {
        BARE,
        CAPPED
    }

    public static BoxShape of(FootprintPlan plan) {
        Ring outline = plan.outline();
        List<Side> sides = new ArrayList<>();
        for (int i = 0; i < outline.size(); i++) {
            sides.add(new Side(
                    tenths(outline.sideMm(i)),
                    StrictMath.round(StrictMath.toDegrees(outline.insideAngle(i)) * 100),
                    plan.sides().get(i).role()));
        }
        List<Divider> dividers = plan.dividers().stream()
                .map(line -> new Divider(
                        line.fromSide(),
                        along(outline, line.fromSide(), line.from()),
                        line.toSide(),
                        along(outline, line.toSide(), line.to())))
                .toList();
        return new BoxShape(
                sides,
                dividers,
                tenths(plan.heightMm()),
                tenths(plan.platformMm()),
                plan.capped() ? Rim.CAPPED : Rim.BARE);
    }

    private static long along(Ring outline, int side, Point at) {
        return tenths(at.minus(outline.corner(side)).dot(outline.direction(side)));
    }

    private static long tenths(double mm) {
        return StrictMath.round(mm * 10);
    }
}
