package borderwright.engine.buildup.draft;

import borderwright.engine.buildup.draft.SideFrame.Bearing;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Where uprights bear on each side. */
public final class Supports {
    private final List<SideFrame> sides;
    private final double wallMm;
    private final List<List<Bearing>> bySide = new ArrayList<>();

    public Supports(List<SideFrame> sides, double wallMm) {
        this.sides = sides;
        this.wallMm = wallMm;
        for (int i = 0; i < sides.size(); i++) {
            bySide.add(new ArrayList<>());
        }
    }

    /** Records an upright on a side that it bears on. */
    public boolean add(SideFrame side, Ring upright) {
        Optional<Bearing> bearing = side.bearing(upright, wallMm);
        bearing.ifPresent(found -> add(side.side(), found));
        return bearing.isPresent();
    }

    public void add(int side, Bearing bearing) {
        bySide.get(side).add(bearing);
    }

    /** Middles of all bearings on a side, with its inner corners where nothing stands near them, in order. */
    public List<Double> middles(SideFrame side) {
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
