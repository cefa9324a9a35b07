package borderwright.engine.buildup.draft;

import borderwright.engine.buildup.parts.Strip;
import borderwright.engine.geometry.Point;
import borderwright.engine.layout.plan.DividerLine;
import java.util.ArrayList;
import java.util.List;

/**
 * A divider between the inner faces of two sides, from front to back; its marked face is on the right of that direction.
 *
 * @param index its number, 0 first
 * @param fromSide side at its left end
 * @param toSide side at its right end
 * @param strip its boards' plan
 */
public record DividerStrip(int index, int fromSide, int toSide, Strip strip) {

    public static List<DividerStrip> of(
            List<DividerLine> lines, List<SideFrame> sides, double wallMm, double thicknessMm) {
        List<DividerStrip> strips = new ArrayList<>();
        for (int k = 0; k < lines.size(); k++) {
            DividerLine line = lines.get(k);
            Point along = line.to().minus(line.from()).unit();
            double half = thicknessMm / 2;
            Strip.End left = endOn(line.from(), along, half, sides.get(line.fromSide()), wallMm);
            Strip.End right = endOn(line.from(), along, half, sides.get(line.toSide()), wallMm);
            strips.add(new DividerStrip(
                    k, line.fromSide(), line.toSide(), new Strip(line.from(), along, -half, half, left, right)));
        }
        return strips;
    }

    private static Strip.End endOn(Point origin, Point along, double half, SideFrame side, double wallMm) {
        return Strip.endOn(origin, along, -half, half, side.at(0, wallMm), side.inwards());
    }

    public Point fromRight() {
        return strip.at(strip.left().nearMm(), strip.nearMm());
    }

    public Point fromLeft() {
        return strip.at(strip.left().farMm(), strip.farMm());
    }

    public Point toRight() {
        return strip.at(strip.right().nearMm(), strip.nearMm());
    }

    public Point toLeft() {
        return strip.at(strip.right().farMm(), strip.farMm());
    }

    Point fromMiddle() {
        return fromRight().towards(fromLeft(), 0.5);
    }
}
