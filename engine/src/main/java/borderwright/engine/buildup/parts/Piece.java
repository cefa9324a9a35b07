package borderwright.engine.buildup.parts;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Prism;
import borderwright.engine.measure.Length;
import borderwright.engine.message.Message;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One piece of wood: what it is cut from, how its ends are cut, and where it goes.
 *
 * <p>A piece is described as it lies for reading: its marked face (the face that goes out, or up for flat pieces) towards
 * the reader, its left end to the left.
 *
 * @param label unique in the garden, short, written on the piece, such as {@code F1-2a}
 * @param box name of its box
 * @param planter name of the planter it belongs to, the first where it spans several
 * @param role what it does
 * @param course number of its course from the bottom, 1 first; 0 for pieces of no course
 * @param side index of the box's side that it belongs to; -1 for none
 * @param section name of the section it is cut from
 * @param length longest length, from long point to long point, as cut: whole ticks
 * @param left its left end
 * @param right its right end
 * @param rip bevel ripped along it, null for none
 * @param notches pieces taken out of it, none for most
 * @param faceOut which face goes out or up, and how to tell it
 * @param waits whether it is cut only after its gap has been re-measured
 * @param touchesGround whether a factory end or treated cut is wanted because it touches the ground
 * @param place the solid it fills in the box, mm
 * @param alongMm direction of its length from its left end to its right end, unit vector; upright pieces run upwards
 */
public record Piece(
        String label,
        String box,
        String planter,
        Role role,
        int course,
        int side,
        String section,
        Length length,
        EndCut left,
        EndCut right,
        @Nullable Rip rip,
        List<Notch> notches,
        Message faceOut,
        boolean waits,
        boolean touchesGround,
        Prism place,
        Axis alongMm) {
    public Piece {
        notches = List.copyOf(notches);
    }

    /**
     * Shortest length of the piece, along the face or edge that is shortest: from short point to short point where both
     * long points lie on the same face or edge, otherwise less the greater of the two offsets.
     */
    public Length shortLength() {
        boolean sameFace = left.longPoint() == right.longPoint();
        double cutBackMm =
                sameFace ? left.offsetMm() + right.offsetMm() : StrictMath.max(left.offsetMm(), right.offsetMm());
        return length.minus(Length.ofMm(cutBackMm));
    }

    /** What a piece does in its box. */
    public enum Role {
        WALL,
        DIVIDER,
        POST,
        BRACE,
        TIE,
        BEARER,
        LEG,
        SLAT,
        CAPPING
    }

    /**
     * Direction of a piece's length.
     *
     * @param x component to the right
     * @param y component away
     * @param z component upwards
     */
    public record Axis(double x, double y, double z) {
        /** The direction on the plan of a piece that lies level; zero for an upright one. */
        public Point level() {
            return new Point(x, y);
        }
    }

    /**
     * A bevel ripped along an edge, so that an upright fits a corner that is not square.
     *
     * @param tiltDeg blade tilt from square, degrees
     * @param words how to make it, for a person at the saw
     */
    public record Rip(double tiltDeg, Message words) {}

    /**
     * A rectangular notch, as a slat has round a post.
     *
     * @param fromLeft distance of its start from the left long point
     * @param width along the piece
     * @param depth across the piece, from the edge named
     * @param edge which edge it is cut from
     */
    public record Notch(Length fromLeft, Length width, Length depth, Message edge) {}

    public static Builder builder() {
        return new Builder();
    }

    /** Sets the parts one by one; what may be left out has a value here. */
    public static final class Builder {
        private @Nullable String label;
        private @Nullable String box;
        private @Nullable String planter;
        private @Nullable Role role;
        private int course = 0;
        private int side = -1;
        private @Nullable String section;
        private @Nullable Length length;
        private @Nullable EndCut left;
        private @Nullable EndCut right;
        private @Nullable Rip rip;
        private List<Notch> notches = List.of();
        private @Nullable Message faceOut;
        private boolean waits;
        private boolean touchesGround;
        private @Nullable Prism place;
        private @Nullable Axis alongMm;

        private Builder() {}

        public Builder label(String set) {
            label = set;
            return this;
        }

        public Builder box(String set) {
            box = set;
            return this;
        }

        public Builder planter(String set) {
            planter = set;
            return this;
        }

        public Builder role(Role set) {
            role = set;
            return this;
        }

        public Builder course(int set) {
            course = set;
            return this;
        }

        public Builder side(int set) {
            side = set;
            return this;
        }

        public Builder section(String set) {
            section = set;
            return this;
        }

        public Builder length(Length set) {
            length = set;
            return this;
        }

        public Builder left(EndCut set) {
            left = set;
            return this;
        }

        public Builder right(EndCut set) {
            right = set;
            return this;
        }

        public Builder rip(@Nullable Rip set) {
            rip = set;
            return this;
        }

        public Builder notches(List<Notch> set) {
            notches = set;
            return this;
        }

        public Builder faceOut(Message set) {
            faceOut = set;
            return this;
        }

        public Builder waits(boolean set) {
            waits = set;
            return this;
        }

        public Builder touchesGround(boolean set) {
            touchesGround = set;
            return this;
        }

        public Builder place(Prism set) {
            place = set;
            return this;
        }

        public Builder alongMm(Axis set) {
            alongMm = set;
            return this;
        }

        /**
         * With all that was set.
         *
         * @throws NullPointerException where a part without a value is missing; its name is the message
         */
        public Piece build() {
            return new Piece(
                    Objects.requireNonNull(label, "label"),
                    Objects.requireNonNull(box, "box"),
                    Objects.requireNonNull(planter, "planter"),
                    Objects.requireNonNull(role, "role"),
                    course,
                    side,
                    Objects.requireNonNull(section, "section"),
                    Objects.requireNonNull(length, "length"),
                    Objects.requireNonNull(left, "left"),
                    Objects.requireNonNull(right, "right"),
                    rip,
                    notches,
                    Objects.requireNonNull(faceOut, "faceOut"),
                    waits,
                    touchesGround,
                    Objects.requireNonNull(place, "place"),
                    Objects.requireNonNull(alongMm, "alongMm"));
        }
    }
}
