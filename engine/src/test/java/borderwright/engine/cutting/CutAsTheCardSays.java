package borderwright.engine.cutting;

import borderwright.engine.cutting.SawSetting.FaceUp;
import borderwright.engine.cutting.SawSetting.Lean;
import java.util.ArrayList;
import java.util.List;

/**
 * A board and a saw, in space: does what a card says and no more.
 *
 * <p>For a person at the saw {@code x} runs to the right, {@code y} away, {@code z} up. The board is a bar about the axis
 * {@code x}; only its left and right ends change. An end is a plane, kept as its {@code x} at the four long edges of
 * the bar: (near, down), (near, up), (far, down), (far, up).
 */
final class CutAsTheCardSays {
    private final double[] left;
    private final double[] right;
    private final double halfWidthMm;
    private final double halfThicknessMm;

    private CutAsTheCardSays(double[] left, double[] right, double halfWidthMm, double halfThicknessMm) {
        this.left = left;
        this.right = right;
        this.halfWidthMm = halfWidthMm;
        this.halfThicknessMm = halfThicknessMm;
    }

    /** A board that is square at both ends, as it is drawn. */
    static CutAsTheCardSays board(double lengthMm, double widthMm, double thicknessMm) {
        return new CutAsTheCardSays(
                new double[] {0, 0, 0, 0},
                new double[] {lengthMm, lengthMm, lengthMm, lengthMm},
                widthMm / 2,
                thicknessMm / 2);
    }

    /** What lies right of the blade once the cut of a card is made, as little taken off as makes a whole end. */
    CutAsTheCardSays freshEnd(CuttingPlan.SetUp card, FaceUp drawn) {
        CutAsTheCardSays lies = laidFor(card, drawn);
        double[] plane = lies.plane(card.setting());
        return lies.with(shifted(plane, greatest(lies.left) - least(plane)), lies.right)
                .laidFor(card, drawn);
    }

    /** What lies left of the blade: the stop touches the long point on the left, the cut's long point is so far from it. */
    CutAsTheCardSays toLength(CuttingPlan.SetUp card, FaceUp drawn, double lengthMm) {
        CutAsTheCardSays lies = laidFor(card, drawn);
        double[] plane = lies.plane(card.setting());
        return lies.with(lies.left, shifted(plane, least(lies.left) + lengthMm - greatest(plane)))
                .laidFor(card, drawn);
    }

    /** Turned over where the card wants the face up that is down as the piece is drawn; turned over again it lies as before. */
    private CutAsTheCardSays laidFor(CuttingPlan.SetUp card, FaceUp drawn) {
        return card.setting().faceUp() == FaceUp.EITHER || card.setting().faceUp() == drawn ? this : turnedOver();
    }

    /** x of the cut at the four long edges, through the middle at 0. */
    private double[] plane(SawSetting setting) {
        double towards = setting.lean() == Lean.RIGHT ? 1 : setting.lean() == Lean.LEFT ? -1 : 0;
        double perMmUp = towards * Math.tan(Math.toRadians(setting.tiltDeg()));
        double perMmAway = towards * Math.tan(Math.toRadians(setting.fenceDeg()));
        double[] plane = new double[4];
        for (int c = 0; c < 4; c++) {
            plane[c] = (c < 2 ? -1 : 1) * halfWidthMm * perMmAway + (c % 2 == 0 ? -1 : 1) * halfThicknessMm * perMmUp;
        }
        return plane;
    }

    private CutAsTheCardSays with(double[] newLeft, double[] newRight) {
        return new CutAsTheCardSays(newLeft, newRight, halfWidthMm, halfThicknessMm);
    }

    /** About its length: far and near change, and up and down; the left end stays on the left. */
    private CutAsTheCardSays turnedOver() {
        return with(across(left), across(right));
    }

    /** About the upright axis: the right end comes to the left, near and far change. */
    private CutAsTheCardSays endForEnd() {
        return with(negated(swapped(right)), negated(swapped(left)));
    }

    /** Every way in which the solid can be laid down without a mirror, its first long point on the left at 0. */
    List<double[]> everyWayRound() {
        List<double[]> ways = new ArrayList<>();
        for (CutAsTheCardSays way :
                List.of(this, turnedOver(), endForEnd(), endForEnd().turnedOver())) {
            double[] all = new double[8];
            double first = least(way.left);
            for (int c = 0; c < 4; c++) {
                all[c] = way.left[c] - first;
                all[4 + c] = way.right[c] - first;
            }
            ways.add(all);
        }
        return ways;
    }

    private static double[] across(double[] end) {
        return new double[] {end[3], end[2], end[1], end[0]};
    }

    private static double[] swapped(double[] end) {
        return new double[] {end[2], end[3], end[0], end[1]};
    }

    private static double[] negated(double[] end) {
        return new double[] {-end[0], -end[1], -end[2], -end[3]};
    }

    private static double[] shifted(double[] end, double by) {
        return new double[] {end[0] + by, end[1] + by, end[2] + by, end[3] + by};
    }

    private static double least(double[] end) {
        return Math.min(Math.min(end[0], end[1]), Math.min(end[2], end[3]));
    }

    private static double greatest(double[] end) {
        return Math.max(Math.max(end[0], end[1]), Math.max(end[2], end[3]));
    }
}
