package borderwright.engine.ground;

import borderwright.engine.ground.SheetPlan.Strip;
import java.util.ArrayList;
import java.util.List;

/** Gathers the strips of a job and cuts them from rolls; a strip longer than a roll is joined with the overlap. */
public final class SheetCutter {
    private final double rollWidthMm;
    private final double rollMm;
    private final double overlapMm;
    private final List<String> names = new ArrayList<>();
    private final List<Double> widthsMm = new ArrayList<>();
    private final List<Long> lengthsMm = new ArrayList<>();

    /**
     * A cutter of rolls of one size.
     *
     * @param rollWidthMm width of a roll, mm
     * @param rollMm its length, mm, more than the overlap
     * @param overlapMm overlap of a join, mm
     */
    public SheetCutter(double rollWidthMm, double rollMm, double overlapMm) {
        if (rollMm <= overlapMm || rollWidthMm <= overlapMm) {
            throw new IllegalArgumentException("a roll of " + rollWidthMm + " by " + rollMm
                    + " mm must be larger than its overlap of " + overlapMm + " mm");
        }
        this.rollWidthMm = rollWidthMm;
        this.rollMm = Math.floor(rollMm);
        this.overlapMm = overlapMm;
    }

    /** Takes a strip for a box. */
    public void strip(String box, double widthMm, long lengthMm) {
        if (widthMm > rollWidthMm) {
            throw new IllegalArgumentException("a strip " + widthMm + " mm wide from a roll of " + rollWidthMm);
        }
        for (long part : RollPacking.joined(lengthMm, (long) rollMm, (long) Math.ceil(overlapMm))) {
            names.add(box);
            widthsMm.add(widthMm);
            lengthsMm.add(part);
        }
    }

    /** The strips in as few rolls as are found. */
    public SheetPlan plan(int pins) {
        RollPacking packing = RollPacking.of(lengthsMm, (long) rollMm);
        List<Strip> strips = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            strips.add(new Strip(names.get(i), lengthsMm.get(i), packing.rolls().get(i) + 1, widthsMm.get(i)));
        }
        return new SheetPlan(strips, packing.count(), packing.proven(), pins);
    }
}
