package borderwright.engine.buildup;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Where uprights bear on each side. */
final class Supports {
    /** A face that stands off less than this still bears. */
    private static final double STAND_OFF_MM = 1.2;

    private final List<SideFrame> sides;
    private final double wallMm;
    private final List<List<Bearing>> bySide = new ArrayList<>();

    Supports(List<SideFrame> sides, double wallMm) {
        this.sides = sides;
        this.wallMm = wallMm;
        for (int i = 0; i < sides.size(); i++) {
            bySide.add(new ArrayList<>());
        }
    }

    /** From and to along a side, mm. */
    record Bearing(double fromMm, double toMm) {
        double middleMm() {
            return (fromMm + toMm) / 2;
        }
    }

    /** Where an upright bears on a side; nothing where it does not touch it. */
    Optional<Bearing> bearing(SideFrame side, Ring upright) {
        double from = Double.POSITIVE_INFINITY;
        double to = Double.NEGATIVE_INFINITY;
        for (Point p : upright.corners()) {
            if (StrictMath.abs(side.w(p) - wallMm) <= STAND_OFF_MM) {
                from = StrictMath.min(from, side.s(p));
                to = StrictMath.max(to, side.s(p));
            }
        }
        boolean bears = to - from > 5 && from > -wallMm && to < side.lengthMm() + wallMm;
        return bears ? Optional.of(new Bearing(from, to)) : Optional.empty();
    }

    /** Records an upright on a side that it bears on. */
    boolean add(SideFrame side, Ring upright) {
        Optional<Bearing> bearing = bearing(side, upright);
        bearing.ifPresent(found -> add(side.side(), found));
        return bearing.isPresent();
    }

    void add(int side, Bearing bearing) {
        bySide.get(side).add(bearing);
    }

    /** Middles of all bearings on a side, with its inner corners where nothing stands near them, in order. */
    List<Double> middles(SideFrame side) {
        List<Double> middles = new ArrayList<>();
        for (Bearing bearing : bySide.get(side.side())) {
            middles.add(bearing.middleMm());
        }
        middles.add(side.innerStart(wallMm));
        middles.add(side.innerEnd(wallMm));
        middles.sort(Comparator.naturalOrder());
        return dropCornersBesideUprights(middles, side);
    }

    /** An upright within two hands of a corner holds the side there: the corner itself is then no support to space from. */
    private List<Double> dropCornersBesideUprights(List<Double> middles, SideFrame side) {
        List<Double> kept = new ArrayList<>(middles);
        double near = 200;
        if (kept.size() > 2 && kept.get(1) - side.innerStart(wallMm) < near) {
            kept.remove(0);
        }
        if (kept.size() > 2 && side.innerEnd(wallMm) - kept.get(kept.size() - 2) < near) {
            kept.remove(kept.size() - 1);
        }
        return kept;
    }

    List<SideFrame> sides() {
        return sides;
    }
}
