package borderwright.engine.strength.box;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.garden.vocabulary.ground.FoundationSoil;
import borderwright.engine.message.Message;
import borderwright.engine.strength.frame.Frame;
import borderwright.engine.strength.frame.UnknownScales;
import borderwright.engine.strength.soil.Fill;
import borderwright.engine.strength.timber.FastenerJoint;
import borderwright.engine.strength.timber.TimberAge;
import java.util.List;
import java.util.Objects;
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
 * @param capping where it counts: boards that bend through their width
 * @param stems posts and braces
 * @param holds every group of screws that carries a push on a wall
 * @param straps at corners with two uprights that do not touch
 * @param helps screws of laps and of the capping, which share load and give way
 * @param feet what of posts and braces is let into the ground
 * @param bed springs of friction under the bottom course, where friction is stated
 * @param backings the fill behind the walls, which stands against what comes in
 * @param unheld what the model leaves loose
 */
public record BoxFrame(
        Box box,
        MemberMaterials materials,
        Frame frame,
        List<Board> walls,
        List<Board> dividers,
        List<Board> ties,
        List<Board> capping,
        List<Stem> stems,
        List<ScrewGroup> holds,
        List<Strap> straps,
        List<Help> helps,
        List<Foot> feet,
        List<Integer> bed,
        List<Backing> backings,
        List<Message> unheld) {
    private static final double NOTHING = 1e-12;

    /** Halving this changes the worst bow by less than 0.5 % (test). */
    private static final double LONGEST_PART_MM = 200;

    public BoxFrame {
        walls = List.copyOf(walls);
        dividers = List.copyOf(dividers);
        ties = List.copyOf(ties);
        capping = List.copyOf(capping);
        stems = List.copyOf(stems);
        holds = List.copyOf(holds);
        straps = List.copyOf(straps);
        helps = List.copyOf(helps);
        feet = List.copyOf(feet);
        bed = List.copyOf(bed);
        backings = List.copyOf(backings);
        unheld = List.copyOf(unheld);
    }

    /** The frame of a box whose bottom course slides freely on its bed, on clay. */
    public static BoxFrame of(Box box, MemberMaterials materials, Fill fill) {
        return of(box, materials, fill, 0, FoundationSoil.CLAY);
    }

    /**
     * The frame of a box.
     *
     * @param fill what stands against walls that come in
     * @param bedFriction stated coefficient of friction under the bottom course, with the weight of the wall alone; 0 for
     *     none
     * @param ground what posts stand in that are let into it
     */
    public static BoxFrame of(
            Box box, MemberMaterials materials, Fill fill, double bedFriction, FoundationSoil ground) {
        return new FrameOfBox(box, materials, fill, bedFriction, ground, LONGEST_PART_MM).build();
    }

    /**
     * The same with no more nodes than crossings: the fill behind a wall then stands at these alone, which makes bows up to
     * a twentieth less. For what only asks whether a box is far over its limit.
     */
    public static BoxFrame coarse(
            Box box, MemberMaterials materials, Fill fill, double bedFriction, FoundationSoil ground) {
        return new FrameOfBox(box, materials, fill, bedFriction, ground, Double.POSITIVE_INFINITY).build();
    }

    /** Whether any board is in it; a box that could not be built has none. */
    public boolean isEmpty() {
        return walls.isEmpty();
    }

    /** Stiffnesses after creep under a lasting load (EN 1995-1-1 2.3.2.2, or what the rule set takes for it). */
    public UnknownScales crept() {
        return scales(TimberAge.CREPT, joint -> 1);
    }

    /** Takes the fill away from behind the walls of the planters that are still empty. */
    public UnknownScales emptied(UnknownScales scales, Set<Integer> empty) {
        for (Backing backing : backings) {
            if (empty.contains(backing.planter())) {
                scales.spring(backing.spring(), NOTHING);
            }
        }
        return scales;
    }

    /** Stiffnesses for strength. */
    public UnknownScales forStrength(TimberAge age) {
        return scales(age, FastenerJoint::ultimateShare);
    }

    private UnknownScales scales(TimberAge age, ToDoubleFunction<FastenerJoint> share) {
        UnknownScales scales = UnknownScales.of(frame);
        if (age == TimberAge.CREPT) {
            creep(walls, scales);
            creep(dividers, scales);
            creep(ties, scales);
            creep(capping, scales);
            for (Stem stem : stems) {
                double factor = 1 / materials.timber(stem.sectionName()).creepFactor();
                stem.members().forEach(m -> scales.member(m, factor));
            }
        }
        for (ScrewGroup hold : holds) {
            double factor = factor(hold.joint(), age, share);
            scales.spring(hold.across(), factor).spring(hold.along(), factor);
            if (hold.turn() >= 0) {
                scales.spring(hold.turn(), factor);
            }
        }
        for (Strap strap : straps) {
            double factor = factor(strap.leg(), age, share);
            scales.spring(strap.first(), factor).spring(strap.second(), factor);
        }
        for (Help help : helps) {
            double factor = factor(help.joint(), age, share);
            help.springs().forEach(spring -> scales.spring(spring, factor));
        }
        return scales;
    }

    private static double factor(FastenerJoint joint, TimberAge age, ToDoubleFunction<FastenerJoint> share) {
        return share.applyAsDouble(joint) / (age == TimberAge.CREPT ? joint.creepFactor() : 1);
    }

    private void creep(List<Board> boards, UnknownScales scales) {
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

    public static Builder builder() {
        return new Builder();
    }

    /** Sets the parts one by one; none may be left out. */
    public static final class Builder {
        private @Nullable Box box;
        private @Nullable MemberMaterials materials;
        private @Nullable Frame frame;
        private @Nullable List<Board> walls;
        private @Nullable List<Board> dividers;
        private @Nullable List<Board> ties;
        private @Nullable List<Board> capping;
        private @Nullable List<Stem> stems;
        private @Nullable List<ScrewGroup> holds;
        private @Nullable List<Strap> straps;
        private @Nullable List<Help> helps;
        private @Nullable List<Foot> feet;
        private @Nullable List<Integer> bed;
        private @Nullable List<Backing> backings;
        private @Nullable List<Message> unheld;

        private Builder() {}

        public Builder box(Box set) {
            box = set;
            return this;
        }

        public Builder materials(MemberMaterials set) {
            materials = set;
            return this;
        }

        public Builder frame(Frame set) {
            frame = set;
            return this;
        }

        public Builder walls(List<Board> set) {
            walls = set;
            return this;
        }

        public Builder dividers(List<Board> set) {
            dividers = set;
            return this;
        }

        public Builder ties(List<Board> set) {
            ties = set;
            return this;
        }

        public Builder capping(List<Board> set) {
            capping = set;
            return this;
        }

        public Builder stems(List<Stem> set) {
            stems = set;
            return this;
        }

        public Builder holds(List<ScrewGroup> set) {
            holds = set;
            return this;
        }

        public Builder straps(List<Strap> set) {
            straps = set;
            return this;
        }

        public Builder helps(List<Help> set) {
            helps = set;
            return this;
        }

        public Builder feet(List<Foot> set) {
            feet = set;
            return this;
        }

        public Builder bed(List<Integer> set) {
            bed = set;
            return this;
        }

        public Builder backings(List<Backing> set) {
            backings = set;
            return this;
        }

        public Builder unheld(List<Message> set) {
            unheld = set;
            return this;
        }

        /**
         * With all that was set.
         *
         * @throws NullPointerException where a part without a value is missing; its name is the message
         */
        public BoxFrame build() {
            return new BoxFrame(
                    Objects.requireNonNull(box, "box"),
                    Objects.requireNonNull(materials, "materials"),
                    Objects.requireNonNull(frame, "frame"),
                    Objects.requireNonNull(walls, "walls"),
                    Objects.requireNonNull(dividers, "dividers"),
                    Objects.requireNonNull(ties, "ties"),
                    Objects.requireNonNull(capping, "capping"),
                    Objects.requireNonNull(stems, "stems"),
                    Objects.requireNonNull(holds, "holds"),
                    Objects.requireNonNull(straps, "straps"),
                    Objects.requireNonNull(helps, "helps"),
                    Objects.requireNonNull(feet, "feet"),
                    Objects.requireNonNull(bed, "bed"),
                    Objects.requireNonNull(backings, "backings"),
                    Objects.requireNonNull(unheld, "unheld"));
        }
    }
}
