package borderwright.engine.settingout;

import borderwright.engine.geometry.Line;
import borderwright.engine.geometry.Point;
import borderwright.engine.layout.plan.FootprintPlan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A string stretched between two pegs along a row of boxes, with a tape laid on it: the pegs between need no tapes of their own, and
 * none of them can be out of line (common practice, no source).
 *
 * @param boxes names of the boxes in the row, in order along the string
 * @param first number of the peg where string and tape are hooked
 * @param last number of the peg at the other end
 * @param stops the pegs along it, the last one too, in order
 */
public record PegString(List<String> boxes, int first, int last, List<Stop> stops) {
    /** Three boxes or fewer are pegged sooner one by one. */
    private static final int LEAST_BOXES = 4;

    /** A string is no straighter than this, mm. */
    private static final double LINE_MM = 2;

    public PegString {
        boxes = List.copyOf(boxes);
        stops = List.copyOf(stops);
    }

    /**
     * A peg on the string.
     *
     * @param peg its number
     * @param alongMm what the tape reads there, mm
     */
    public record Stop(int peg, double alongMm) {}

    /**
     * Two strings for each row of four boxes or more that stand in line, in the order of the boxes.
     *
     * @param pegs one for each corner of each box, in the boxes' order
     * @param boxes as they were pegged
     */
    public static List<PegString> of(PegList pegs, List<FootprintPlan> boxes) {
        List<PegString> strings = new ArrayList<>();
        int firstPeg = 0;
        int from = 0;
        while (from < boxes.size()) {
            int to = endOfRow(boxes, from);
            if (to - from >= LEAST_BOXES) {
                int side = inLine(boxes.get(from), boxes.get(from + 1), 0) ? 0 : 1;
                List<PegList.Peg> own = pegs.pegs().subList(firstPeg, firstPeg + 4 * (to - from));
                List<String> names = boxes.subList(from, to).stream()
                        .map(FootprintPlan::name)
                        .toList();
                strings.add(string(names, own, side));
                strings.add(string(names, own, side + 2));
            }
            for (int i = from; i < to; i++) {
                firstPeg += boxes.get(i).outline().size();
            }
            from = to;
        }
        return strings;
    }

    private static int endOfRow(List<FootprintPlan> boxes, int from) {
        FootprintPlan first = boxes.get(from);
        int to = from + 1;
        if (first.outline().size() != 4 || to == boxes.size()) {
            return to;
        }
        int side = inLine(first, boxes.get(to), 0) ? 0 : 1;
        while (to < boxes.size() && boxes.get(to).run().equals(first.run()) && inLine(first, boxes.get(to), side)) {
            to++;
        }
        return to;
    }

    /** Whether a side of a box and the side across from it lie on the lines of those of the first. */
    private static boolean inLine(FootprintPlan first, FootprintPlan box, int side) {
        if (box.outline().size() != 4) {
            return false;
        }
        for (int i = side; i < 4; i += 2) {
            Line line = new Line(first.outline().corner(i), first.outline().direction(i));
            if (StrictMath.abs(line.offsetMm(box.outline().corner(i))) > LINE_MM
                    || StrictMath.abs(line.offsetMm(box.outline().corner(i + 1))) > LINE_MM) {
                return false;
            }
        }
        return true;
    }

    private static PegString string(List<String> boxes, List<PegList.Peg> own, int side) {
        List<PegList.Peg> on = new ArrayList<>();
        for (int box = 0; box < own.size(); box += 4) {
            on.add(own.get(box + side));
            on.add(own.get(box + (side + 1) % 4));
        }
        Point start = on.get(0).at();
        Point along = on.get(on.size() - 1).at().minus(start);
        on.sort(Comparator.comparingDouble(peg -> peg.at().minus(start).dot(along)));
        Point hook = on.get(0).at();
        List<Stop> stops = on.stream()
                .skip(1)
                .map(peg -> new Stop(peg.number(), peg.at().distanceMm(hook)))
                .toList();
        return new PegString(boxes, on.get(0).number(), on.get(on.size() - 1).number(), stops);
    }
}
