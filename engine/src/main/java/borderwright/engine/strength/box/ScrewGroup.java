package borderwright.engine.strength.box;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.strength.timber.FastenerJoint;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The screws of one board at one upright, or of two uprights to each other in one course.
 *
 * @param kind which joint they make
 * @param fixed label of what lies under the heads
 * @param receiver label of what they end in
 * @param item the screw's name
 * @param joint resistance and stiffness of one
 * @param count how many share the force
 * @param across index of the spring that shears them
 * @param along index of the spring that pulls them when it lengthens
 * @param turn index of the spring by which they keep an upright square to a level board; -1 for none
 * @param leverMm distance between them up the board, mm
 */
public record ScrewGroup(
        Box.Hold kind,
        String fixed,
        String receiver,
        String item,
        FastenerJoint joint,
        int count,
        int across,
        int along,
        int turn,
        double leverMm) {
    public static Builder builder() {
        return new Builder();
    }

    /** Sets the parts one by one; none may be left out. */
    public static final class Builder {
        private Box.@Nullable Hold kind;
        private @Nullable String fixed;
        private @Nullable String receiver;
        private @Nullable String item;
        private @Nullable FastenerJoint joint;
        private @Nullable Integer count;
        private @Nullable Integer across;
        private @Nullable Integer along;
        private @Nullable Integer turn;
        private @Nullable Double leverMm;

        private Builder() {}

        public Builder kind(Box.Hold set) {
            kind = set;
            return this;
        }

        public Builder fixed(String set) {
            fixed = set;
            return this;
        }

        public Builder receiver(String set) {
            receiver = set;
            return this;
        }

        public Builder item(String set) {
            item = set;
            return this;
        }

        public Builder joint(FastenerJoint set) {
            joint = set;
            return this;
        }

        public Builder count(int set) {
            count = set;
            return this;
        }

        public Builder across(int set) {
            across = set;
            return this;
        }

        public Builder along(int set) {
            along = set;
            return this;
        }

        public Builder turn(int set) {
            turn = set;
            return this;
        }

        public Builder leverMm(double set) {
            leverMm = set;
            return this;
        }

        /**
         * With all that was set.
         *
         * @throws NullPointerException where a part without a value is missing; its name is the message
         */
        public ScrewGroup build() {
            return new ScrewGroup(
                    Objects.requireNonNull(kind, "kind"),
                    Objects.requireNonNull(fixed, "fixed"),
                    Objects.requireNonNull(receiver, "receiver"),
                    Objects.requireNonNull(item, "item"),
                    Objects.requireNonNull(joint, "joint"),
                    Objects.requireNonNull(count, "count"),
                    Objects.requireNonNull(across, "across"),
                    Objects.requireNonNull(along, "along"),
                    Objects.requireNonNull(turn, "turn"),
                    Objects.requireNonNull(leverMm, "leverMm"));
        }
    }
}
