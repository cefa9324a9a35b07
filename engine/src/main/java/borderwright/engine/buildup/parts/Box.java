package borderwright.engine.buildup.parts;

import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.message.Message;
import borderwright.engine.problem.Problem;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One box with all its pieces.
 *
 * @param plan where it stands
 * @param courses heights and make-up of its wall, bottom first
 * @param pieces in build order
 * @param fixings by kind
 * @param joints what holds its walls together, with the place of every screw
 * @param inside plan outline inside the walls of each planter, mm, in the order of {@code plan.planters()}
 * @param soilDepthMm from the bed or platform to the rim, mm
 * @param notes what a builder should know
 * @param unmet what could not be built as requested, with the reason and what else to do
 */
public record Box(
        FootprintPlan plan,
        List<Course> courses,
        List<Piece> pieces,
        List<Fixing> fixings,
        List<Joint> joints,
        List<Ring> inside,
        double soilDepthMm,
        List<Message> notes,
        List<Problem> unmet) {
    public Box {
        courses = List.copyOf(courses);
        pieces = List.copyOf(pieces);
        fixings = List.copyOf(fixings);
        joints = List.copyOf(joints);
        inside = List.copyOf(inside);
        notes = List.copyOf(notes);
        unmet = List.copyOf(unmet);
    }

    /** Top of its wall, or of the capping that lies on it, as built, mm above the datum. */
    public double topMm() {
        return pieces.stream()
                .filter(piece -> piece.role() == Piece.Role.CAPPING)
                .mapToDouble(piece -> piece.place().topMm())
                .reduce(courses.get(courses.size() - 1).topMm(), StrictMath::max);
    }

    /** Height of its wall above the bed as built, capping included, mm; {@code plan.heightMm()} is what was asked for. */
    public double builtMm() {
        return topMm() - plan.bedMm();
    }

    /** Which sides and dividers no board is long enough for. */
    public List<Message> missingBoards() {
        return unmet.stream()
                .map(Problem::message)
                .filter(message -> message.code() == BuildMessage.SIDE_LONGER_THAN_BOARDS
                        || message.code() == BuildMessage.DIVIDER_LONGER_THAN_BOARDS)
                .toList();
    }

    /**
     * One course of the wall.
     *
     * @param number from the bottom, 1 first
     * @param bottomMm height of its underside above the datum, mm, boards as they arrive
     * @param topMm height of its top, mm
     * @param dryTopMm height of its top when the boards below and its own have dried, mm
     */
    public record Course(int number, double bottomMm, double topMm, double dryTopMm) {}

    /**
     * Screws or other fixings of one kind in one use.
     *
     * @param item name on the shopping list, such as {@code screw 5 x 70}
     * @param hold which joint they make
     * @param use what they hold
     * @param count how many
     * @param diameterMm thread diameter of a screw, mm; 0 for what is no screw
     * @param lengthMm length of a screw, mm; 0 for what is no screw
     * @param pilotMm pilot hole in the receiving piece, mm
     * @param clearanceMm clearance hole in the fixed piece, mm
     * @param countersinkMm diameter of the countersink, mm
     */
    public record Fixing(
            String item,
            Hold hold,
            Message use,
            int count,
            double diameterMm,
            double lengthMm,
            double pilotMm,
            double clearanceMm,
            double countersinkMm) {
        public static Builder builder() {
            return new Builder();
        }

        /** Sets the parts one by one; what may be left out has a value here. */
        public static final class Builder {
            private @Nullable String item;
            private @Nullable Hold hold;
            private @Nullable Message use;
            private @Nullable Integer count;
            private double diameterMm = 0;
            private double lengthMm = 0;
            private double pilotMm = 0;
            private double clearanceMm = 0;
            private double countersinkMm = 0;

            private Builder() {}

            public Builder item(String set) {
                item = set;
                return this;
            }

            public Builder hold(Hold set) {
                hold = set;
                return this;
            }

            public Builder use(Message set) {
                use = set;
                return this;
            }

            public Builder count(int set) {
                count = set;
                return this;
            }

            public Builder diameterMm(double set) {
                diameterMm = set;
                return this;
            }

            public Builder lengthMm(double set) {
                lengthMm = set;
                return this;
            }

            public Builder pilotMm(double set) {
                pilotMm = set;
                return this;
            }

            public Builder clearanceMm(double set) {
                clearanceMm = set;
                return this;
            }

            public Builder countersinkMm(double set) {
                countersinkMm = set;
                return this;
            }

            /**
             * With all that was set.
             *
             * @throws NullPointerException where a part without a value is missing; its name is the message
             */
            public Fixing build() {
                return new Fixing(
                        Objects.requireNonNull(item, "item"),
                        Objects.requireNonNull(hold, "hold"),
                        Objects.requireNonNull(use, "use"),
                        Objects.requireNonNull(count, "count"),
                        diameterMm,
                        lengthMm,
                        pilotMm,
                        clearanceMm,
                        countersinkMm);
            }
        }
    }

    /** Which joint of a box fixings make. */
    public enum Hold {
        /** Walls to posts and braces: {@link #perJoint} through each board into each upright. */
        WALL_TO_UPRIGHT(2),
        /** A tie to the brace beside it, at each end. */
        TIE_TO_BRACE(3),
        /** A divider to the upright beside it, in each board. */
        DIVIDER_TO_UPRIGHT(2),
        /** The two uprights of a corner to each other, in each course. */
        UPRIGHTS_TOGETHER(2),
        /** Through the lapping board into the end of the other, at each lapped corner in each course. */
        LAP(2),
        /** A strap across the two uprights of a corner, in each course. */
        CORNER_STRAP(1),
        /** A strap to the two uprights: half of these in each leg. */
        STRAP_TO_UPRIGHT(4),
        /** A bracket where a tie meets a brace askew. */
        TIE_BRACKET(1),
        /** Capping down into the top edge of the walls, at each place. */
        CAPPING_TO_WALL(1),
        /** Platform: nothing that holds the walls up. */
        OTHER(1);

        private final int perJoint;

        Hold(int perJoint) {
            this.perJoint = perJoint;
        }

        /** How many one joint has, as the builder sets them (common practice, no source). */
        public int perJoint() {
            return perJoint;
        }
    }

    public static Builder builder() {
        return new Builder();
    }

    /** Sets the parts one by one; what may be left out has a value here. */
    public static final class Builder {
        private @Nullable FootprintPlan plan;
        private @Nullable List<Course> courses;
        private @Nullable List<Piece> pieces;
        private @Nullable List<Fixing> fixings;
        private List<Joint> joints = List.of();
        private @Nullable List<Ring> inside;
        private @Nullable Double soilDepthMm;
        private List<Message> notes = List.of();
        private List<Problem> unmet = List.of();

        private Builder() {}

        public Builder plan(FootprintPlan set) {
            plan = set;
            return this;
        }

        public Builder courses(List<Course> set) {
            courses = set;
            return this;
        }

        public Builder pieces(List<Piece> set) {
            pieces = set;
            return this;
        }

        public Builder fixings(List<Fixing> set) {
            fixings = set;
            return this;
        }

        public Builder joints(List<Joint> set) {
            joints = set;
            return this;
        }

        public Builder inside(List<Ring> set) {
            inside = set;
            return this;
        }

        public Builder soilDepthMm(double set) {
            soilDepthMm = set;
            return this;
        }

        public Builder notes(List<Message> set) {
            notes = set;
            return this;
        }

        public Builder unmet(List<Problem> set) {
            unmet = set;
            return this;
        }

        /**
         * With all that was set.
         *
         * @throws NullPointerException where a part without a value is missing; its name is the message
         */
        public Box build() {
            return new Box(
                    Objects.requireNonNull(plan, "plan"),
                    Objects.requireNonNull(courses, "courses"),
                    Objects.requireNonNull(pieces, "pieces"),
                    Objects.requireNonNull(fixings, "fixings"),
                    joints,
                    Objects.requireNonNull(inside, "inside"),
                    Objects.requireNonNull(soilDepthMm, "soilDepthMm"),
                    notes,
                    unmet);
        }
    }
}
