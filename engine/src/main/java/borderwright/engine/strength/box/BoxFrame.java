package borderwright.engine.strength.box;

import borderwright.engine.buildup.Box;
import borderwright.engine.strength.frame.Frame;
import borderwright.engine.strength.frame.Scales;
import borderwright.engine.strength.soil.Fill;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * A box as one structure: its frame, and which bar and spring stands for which piece and screw.
 *
 * @param box as built up
 * @param materials what it is made of
 * @param frame its bars and springs
 * @param walls boards of the walls, course by course
 * @param dividers boards of the dividers
 * @param ties each one bar
 * @param stems posts and braces
 * @param holds every group of screws that carries a push on a wall
 * @param straps at corners with two uprights that do not touch
 * @param bed springs of friction under the bottom course, where friction is stated
 * @param backings the fill behind the walls, which stands against what comes in
 * @param unheld what the model leaves loose, each a sentence
 */
public record BoxFrame(
        Box box,
        Materials materials,
        Frame frame,
        List<Board> walls,
        List<Board> dividers,
        List<Board> ties,
        List<Stem> stems,
        List<ScrewGroup> holds,
        List<Strap> straps,
        List<Integer> bed,
        List<Backing> backings,
        List<String> unheld) {
    private static final double NOTHING = 1e-12;

    public BoxFrame {
        walls = List.copyOf(walls);
        dividers = List.copyOf(dividers);
        ties = List.copyOf(ties);
        stems = List.copyOf(stems);
        holds = List.copyOf(holds);
        straps = List.copyOf(straps);
        bed = List.copyOf(bed);
        backings = List.copyOf(backings);
        unheld = List.copyOf(unheld);
    }

    /** The frame of a box whose bottom course slides freely on its bed. */
    public static BoxFrame of(Box box, Materials materials, Fill fill) {
        return of(box, materials, fill, 0);
    }

    /**
     * The frame of a box.
     *
     * @param fill what stands against walls that come in
     * @param bedFriction stated coefficient of friction under the bottom course, with the weight of the wall alone; 0 for
     *     none
     */
    public static BoxFrame of(Box box, Materials materials, Fill fill, double bedFriction) {
        return new FrameOfBox(box, materials, fill, bedFriction).build();
    }

    /** Whether any board is in it; a box that could not be built has none. */
    public boolean isEmpty() {
        return walls.isEmpty();
    }

    /** Stiffnesses after creep under a lasting load (EN 1995-1-1 2.3.2.2, or what the rule set takes for it). */
    public Scales crept() {
        return scales(true, hold -> 1);
    }

    /** Takes the fill away from behind the walls of the planters that are still empty. */
    public Scales emptied(Scales scales, Set<Integer> empty) {
        for (Backing backing : backings) {
            if (empty.contains(backing.planter())) {
                scales.spring(backing.spring(), NOTHING);
            }
        }
        return scales;
    }

    /** Stiffnesses for strength, at first or after creep. */
    public Scales forStrength(boolean afterCreep) {
        return scales(afterCreep, hold -> hold.joint().ultimateShare());
    }

    private Scales scales(boolean afterCreep, ToDoubleFunction<ScrewGroup> share) {
        Scales scales = Scales.of(frame);
        if (afterCreep) {
            creep(walls, scales);
            creep(dividers, scales);
            creep(ties, scales);
            for (Stem stem : stems) {
                double factor = 1 / materials.timber(stem.sectionName()).creepFactor();
                stem.members().forEach(m -> scales.member(m, factor));
            }
        }
        double strapFactor = 1;
        for (ScrewGroup hold : holds) {
            double factor =
                    share.applyAsDouble(hold) / (afterCreep ? hold.joint().creepFactor() : 1);
            scales.spring(hold.across(), factor).spring(hold.along(), factor);
            if (hold.turn() >= 0) {
                scales.spring(hold.turn(), factor);
            }
            strapFactor = Math.min(strapFactor, factor);
        }
        for (Strap strap : straps) {
            scales.spring(strap.first(), strapFactor).spring(strap.second(), strapFactor);
        }
        return scales;
    }

    private void creep(List<Board> boards, Scales scales) {
        @Nullable String section = null;
        double factor = 1;
        for (Board board : boards) {
            if (!board.sectionName().equals(section)) {
                section = board.sectionName();
                factor = 1 / materials.timber(section).creepFactor();
            }
            for (Board.Part part : board.parts()) {
                scales.member(part.member(), factor);
            }
        }
    }
}
