package borderwright.engine.strength.box;

import borderwright.engine.strength.frame.Vector;
import borderwright.engine.strength.timber.TimberSection;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One board of a wall, a divider or a tie as bars on its middle line.
 *
 * @param label as written on the piece
 * @param sectionName what it is cut from
 * @param side side of the box; -1 for dividers and ties
 * @param course its course from the bottom, 1 first; 0 for ties
 * @param bottomMm height of its underside
 * @param topMm height of its top
 * @param section its cross-section
 * @param outward unit vector out of the box; of a divider to its left
 * @param heldMm where uprights and dividers meet it, and its ends, along the side, in order; of others empty
 * @param parts its bars in order
 */
public record Board(
        String label,
        String sectionName,
        int side,
        int course,
        double bottomMm,
        double topMm,
        TimberSection section,
        Vector outward,
        List<Double> heldMm,
        List<Part> parts) {
    public Board {
        heldMm = List.copyOf(heldMm);
        parts = List.copyOf(parts);
    }

    /**
     * One bar between two crossings.
     *
     * @param member its index in the frame
     * @param startNode index of its first node
     * @param endNode index of its second node
     * @param fromMm distance of its start along the side from the side's first corner, mm; of others from their start
     * @param toMm distance of its end
     * @param start where it starts, mm
     * @param end where it ends, mm
     * @param rightPlanter index of the planter inside; of a divider the one on its right
     * @param leftPlanter of a divider the planter on its left; -1 otherwise
     */
    public record Part(
            int member,
            int startNode,
            int endNode,
            double fromMm,
            double toMm,
            Vector start,
            Vector end,
            int rightPlanter,
            int leftPlanter) {
        public double lengthMm() {
            return end.minus(start).length();
        }

        public static Builder builder() {
            return new Builder();
        }

        /** Sets the parts one by one; none may be left out. */
        public static final class Builder {
            private @Nullable Integer member;
            private @Nullable Integer startNode;
            private @Nullable Integer endNode;
            private @Nullable Double fromMm;
            private @Nullable Double toMm;
            private @Nullable Vector start;
            private @Nullable Vector end;
            private @Nullable Integer rightPlanter;
            private @Nullable Integer leftPlanter;

            private Builder() {}

            public Builder member(int set) {
                member = set;
                return this;
            }

            public Builder startNode(int set) {
                startNode = set;
                return this;
            }

            public Builder endNode(int set) {
                endNode = set;
                return this;
            }

            public Builder fromMm(double set) {
                fromMm = set;
                return this;
            }

            public Builder toMm(double set) {
                toMm = set;
                return this;
            }

            public Builder start(Vector set) {
                start = set;
                return this;
            }

            public Builder end(Vector set) {
                end = set;
                return this;
            }

            public Builder rightPlanter(int set) {
                rightPlanter = set;
                return this;
            }

            public Builder leftPlanter(int set) {
                leftPlanter = set;
                return this;
            }

            /**
             * With all that was set.
             *
             * @throws NullPointerException where a part without a value is missing; its name is the message
             */
            public Part build() {
                return new Part(
                        Objects.requireNonNull(member, "member"),
                        Objects.requireNonNull(startNode, "startNode"),
                        Objects.requireNonNull(endNode, "endNode"),
                        Objects.requireNonNull(fromMm, "fromMm"),
                        Objects.requireNonNull(toMm, "toMm"),
                        Objects.requireNonNull(start, "start"),
                        Objects.requireNonNull(end, "end"),
                        Objects.requireNonNull(rightPlanter, "rightPlanter"),
                        Objects.requireNonNull(leftPlanter, "leftPlanter"));
            }
        }
    }

    public double middleMm() {
        return (bottomMm + topMm) / 2;
    }

    public static Builder builder() {
        return new Builder();
    }

    /** Sets the parts one by one; none may be left out. */
    public static final class Builder {
        private @Nullable String label;
        private @Nullable String sectionName;
        private @Nullable Integer side;
        private @Nullable Integer course;
        private @Nullable Double bottomMm;
        private @Nullable Double topMm;
        private @Nullable TimberSection section;
        private @Nullable Vector outward;
        private @Nullable List<Double> heldMm;
        private @Nullable List<Part> parts;

        private Builder() {}

        public Builder label(String set) {
            label = set;
            return this;
        }

        public Builder sectionName(String set) {
            sectionName = set;
            return this;
        }

        public Builder side(int set) {
            side = set;
            return this;
        }

        public Builder course(int set) {
            course = set;
            return this;
        }

        public Builder bottomMm(double set) {
            bottomMm = set;
            return this;
        }

        public Builder topMm(double set) {
            topMm = set;
            return this;
        }

        public Builder section(TimberSection set) {
            section = set;
            return this;
        }

        public Builder outward(Vector set) {
            outward = set;
            return this;
        }

        public Builder heldMm(List<Double> set) {
            heldMm = set;
            return this;
        }

        public Builder parts(List<Part> set) {
            parts = set;
            return this;
        }

        /**
         * With all that was set.
         *
         * @throws NullPointerException where a part without a value is missing; its name is the message
         */
        public Board build() {
            return new Board(
                    Objects.requireNonNull(label, "label"),
                    Objects.requireNonNull(sectionName, "sectionName"),
                    Objects.requireNonNull(side, "side"),
                    Objects.requireNonNull(course, "course"),
                    Objects.requireNonNull(bottomMm, "bottomMm"),
                    Objects.requireNonNull(topMm, "topMm"),
                    Objects.requireNonNull(section, "section"),
                    Objects.requireNonNull(outward, "outward"),
                    Objects.requireNonNull(heldMm, "heldMm"),
                    Objects.requireNonNull(parts, "parts"));
        }
    }
}
