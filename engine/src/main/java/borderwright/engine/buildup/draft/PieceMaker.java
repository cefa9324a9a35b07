package borderwright.engine.buildup.draft;

import borderwright.engine.buildup.parts.CutWords.Lie;
import borderwright.engine.buildup.parts.CutWords.SideNames;
import borderwright.engine.buildup.parts.EndCut;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.Piece.Axis;
import borderwright.engine.buildup.parts.Piece.Notch;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.buildup.parts.Strip;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.geometry.Prism;
import borderwright.engine.geometry.Ring;
import borderwright.engine.message.Message;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Turns placed solids into pieces with their cuts. */
public final class PieceMaker {
    private final Draft draft;

    public PieceMaker(Draft draft) {
        this.draft = draft;
    }

    /**
     * What a piece is, apart from where it lies.
     *
     * @param label its label
     * @param planter the planter that it is called after
     * @param role what it does
     * @param course its course, 0 for none
     * @param side its side, -1 for none
     * @param section what it is cut from
     * @param names what its two sides are called
     * @param faceOut which face goes out or up
     * @param waits cut only after its gap has been re-measured
     * @param touchesGround whether it stands on the bed
     */
    public record Part(
            String label,
            String planter,
            Role role,
            int course,
            int side,
            SectionSpec section,
            SideNames names,
            Message faceOut,
            boolean waits,
            boolean touchesGround) {
        public static Builder builder() {
            return new Builder();
        }

        /** Sets the parts one by one; what may be left out has a value here. */
        public static final class Builder {
            private @Nullable String label;
            private @Nullable String planter;
            private @Nullable Role role;
            private int course = 0;
            private int side = -1;
            private @Nullable SectionSpec section;
            private @Nullable SideNames names;
            private @Nullable Message faceOut;
            private boolean waits;
            private boolean touchesGround;

            private Builder() {}

            public Builder label(String set) {
                label = set;
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

            public Builder section(SectionSpec set) {
                section = set;
                return this;
            }

            public Builder names(SideNames set) {
                names = set;
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

            /**
             * With all that was set.
             *
             * @throws NullPointerException where a part without a value is missing; its name is the message
             */
            public Part build() {
                return new Part(
                        Objects.requireNonNull(label, "label"),
                        Objects.requireNonNull(planter, "planter"),
                        Objects.requireNonNull(role, "role"),
                        course,
                        side,
                        Objects.requireNonNull(section, "section"),
                        Objects.requireNonNull(names, "names"),
                        Objects.requireNonNull(faceOut, "faceOut"),
                        waits,
                        touchesGround);
            }
        }
    }

    /** A board on edge. */
    public Piece onEdge(Part part, Strip strip, double bottomMm, double topMm) {
        Strip cut = strip.squared();
        return lying(part, cut, cut.outline(), List.of(), Lie.ON_EDGE, bottomMm, topMm);
    }

    /** A board lying flat. */
    public Piece flat(Part part, Strip strip, double bottomMm, double topMm) {
        Strip cut = strip.squared();
        return lying(part, cut, cut.outline(), List.of(), Lie.FLAT, bottomMm, topMm);
    }

    /** A board lying flat with notches: {@code outline} is what is left of the strip. */
    public Piece notched(Part part, Strip strip, Ring outline, List<Notch> notches, double bottomMm, double topMm) {
        return lying(part, strip, outline, notches, Lie.FLAT, bottomMm, topMm);
    }

    private Piece lying(
            Part part, Strip strip, Ring outline, List<Notch> notches, Lie lie, double bottomMm, double topMm) {
        return Piece.builder()
                .label(part.label)
                .box(draft.plan.name())
                .planter(part.planter)
                .role(part.role)
                .course(part.course)
                .side(part.side)
                .section(part.section.name())
                .length(draft.means.steps().down(strip.overallMm() - slackMm(part.role)))
                .left(draft.words.left(strip, part.section, lie, part.names))
                .right(draft.words.right(strip, part.section, lie, part.names))
                .notches(notches)
                .faceOut(part.faceOut)
                .waits(part.waits)
                .touchesGround(part.touchesGround)
                .place(new Prism(outline, bottomMm, topMm))
                .alongMm(new Axis(strip.along().xMm(), strip.along().yMm(), 0))
                .build();
    }

    private double slackMm(Role role) {
        boolean outer = role == Role.WALL || role == Role.CAPPING;
        return outer ? 0 : draft.means.steps().slackMm(draft.wallMm(), draft.plan);
    }

    /** An upright piece: its left end is its foot. */
    public Piece upright(Part part, UprightPlan upright, double bottomMm, double topMm) {
        EndCut square = draft.words.square(part.section, topMm - bottomMm);
        return Piece.builder()
                .label(part.label)
                .box(draft.plan.name())
                .planter(part.planter)
                .role(part.role)
                .course(part.course)
                .side(part.side)
                .section(part.section.name())
                .length(draft.means.steps().down(topMm - bottomMm))
                .left(square)
                .right(square)
                .rip(upright.rip())
                .faceOut(part.faceOut)
                .waits(part.waits)
                .touchesGround(part.touchesGround)
                .place(new Prism(upright.plan(), bottomMm, topMm))
                .alongMm(new Axis(0, 0, 1))
                .build();
    }
}
