package borderwright.engine.strength.box;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Box.Fixing;
import borderwright.engine.strength.box.DrivenScrews.Driven;
import borderwright.engine.strength.frame.SpringLaw;
import borderwright.engine.strength.frame.Vector;
import borderwright.engine.strength.timber.FastenerJoint;
import borderwright.engine.strength.timber.LoadDuration;
import borderwright.engine.strength.worked.Working;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Turns the screws of a box into springs: in shear, pulled, and the contact of the faces that they draw together. */
final class Screws {
    final List<ScrewGroup> holds = new ArrayList<>();
    final List<Strap> straps = new ArrayList<>();
    final List<Help> helps = new ArrayList<>();
    private final FrameOfBox frame;
    private final Map<String, FastenerJoint> joints = new HashMap<>();

    Screws(FrameOfBox frame) {
        this.frame = frame;
    }

    /** Whether the screws of a board keep what they end in square to it. */
    enum Square {
        KEPT,
        FREE
    }

    /**
     * Two faces that screws draw together.
     *
     * @param kind which joint
     * @param label of the piece under the heads
     * @param receiverLabel of the piece that they end in
     * @param fixed section under the heads
     * @param fixedMm its thickness
     * @param receiver section that they end in
     * @param receiverMm its depth
     * @param widthMm of the upright's face, across the pull
     * @param heightMm of the board on it
     * @param square whether screws one above the other keep the upright square to the board
     */
    record Faces(
            Box.Hold kind,
            String label,
            String receiverLabel,
            String fixed,
            double fixedMm,
            String receiver,
            double receiverMm,
            double widthMm,
            double heightMm,
            Square square) {
        static Builder builder() {
            return new Builder();
        }

        /** Sets the parts one by one; none may be left out. */
        static final class Builder {
            private Box.@Nullable Hold kind;
            private @Nullable String label;
            private @Nullable String receiverLabel;
            private @Nullable String fixed;
            private @Nullable Double fixedMm;
            private @Nullable String receiver;
            private @Nullable Double receiverMm;
            private @Nullable Double widthMm;
            private @Nullable Double heightMm;
            private @Nullable Square square;

            private Builder() {}

            Builder kind(Box.Hold set) {
                kind = set;
                return this;
            }

            Builder label(String set) {
                label = set;
                return this;
            }

            Builder receiverLabel(String set) {
                receiverLabel = set;
                return this;
            }

            Builder fixed(String set) {
                fixed = set;
                return this;
            }

            Builder fixedMm(double set) {
                fixedMm = set;
                return this;
            }

            Builder receiver(String set) {
                receiver = set;
                return this;
            }

            Builder receiverMm(double set) {
                receiverMm = set;
                return this;
            }

            Builder widthMm(double set) {
                widthMm = set;
                return this;
            }

            Builder heightMm(double set) {
                heightMm = set;
                return this;
            }

            Builder square(Square set) {
                square = set;
                return this;
            }

            /**
             * With all that was set.
             *
             * @throws NullPointerException where a part without a value is missing; its name is the message
             */
            Faces build() {
                return new Faces(
                        Objects.requireNonNull(kind, "kind"),
                        Objects.requireNonNull(label, "label"),
                        Objects.requireNonNull(receiverLabel, "receiverLabel"),
                        Objects.requireNonNull(fixed, "fixed"),
                        Objects.requireNonNull(fixedMm, "fixedMm"),
                        Objects.requireNonNull(receiver, "receiver"),
                        Objects.requireNonNull(receiverMm, "receiverMm"),
                        Objects.requireNonNull(widthMm, "widthMm"),
                        Objects.requireNonNull(heightMm, "heightMm"),
                        Objects.requireNonNull(square, "square"));
            }
        }
    }

    /**
     * Joins a node of what the screws end in to a node of what lies under their heads.
     *
     * @param found the screws, as they were placed
     * @param receiver node of the upright
     * @param fixed node of the board
     * @param place of both
     * @param pull unit vector in which the board moves off the upright
     * @param shear unit vector across
     */
    void join(Faces faces, Optional<Driven> found, int receiver, int fixed, Vector place, Vector pull, Vector shear) {
        if (found.isEmpty()) {
            frame.unheld.add(FrameMessage.JOINT_WITHOUT_SCREWS.of(faces.label, faces.receiverLabel));
            return;
        }
        Fixing fixing = found.get().fixing();
        FastenerJoint joint = joints.computeIfAbsent(
                faces.kind + faces.fixed + "/" + faces.receiver + "/" + faces.receiverMm + "/" + fixing.item(),
                key -> joint(faces, fixing));
        int count = found.get().count();
        int across =
                frame.builder.spring(receiver, fixed, place, shear, count * joint.slipModulus(), SpringLaw.ELASTIC);
        int along = frame.builder.spring(
                receiver, fixed, place, pull, count * frame.materials.pullStiffness(joint), SpringLaw.ELASTIC);
        press(faces, receiver, fixed, place, pull, shear);
        int turn = -1;
        double leverMm = faces.square == Square.KEPT ? found.get().leverMm() : 0;
        if (leverMm > 0) {
            double lever = leverMm / 2;
            turn = frame.builder.turningToGround(receiver, pull, count * joint.slipModulus() * lever * lever);
        }
        holds.add(ScrewGroup.builder()
                .kind(faces.kind)
                .fixed(faces.label)
                .receiver(faces.receiverLabel)
                .item(fixing.item())
                .joint(joint)
                .count(count)
                .across(across)
                .along(along)
                .turn(turn)
                .leverMm(leverMm)
                .build());
    }

    /** The faces on each other, as two contacts at the edges of the upright: they also keep the board from turning. */
    private void press(Faces faces, int receiver, int fixed, Vector place, Vector pull, Vector shear) {
        double e90 = frame.materials.timber(faces.fixed).e90Mean();
        double half = e90 * faces.widthMm * faces.heightMm / (faces.fixedMm + faces.receiverMm);
        for (int hand = -1; hand <= 1; hand += 2) {
            Vector edge = place.plus(shear.times(hand * faces.widthMm / 2));
            frame.builder.spring(receiver, fixed, edge, pull, half, SpringLaw.CONTACT);
        }
    }

    /** A strap across two uprights, as stiff as its screws: two legs one after the other are half as stiff as one. */
    void strap(
            int corner, Optional<Driven> found, int first, int second, Vector place, String section, double depthMm) {
        if (found.isEmpty()) {
            frame.unheld.add(FrameMessage.STRAP_WITHOUT_SCREWS.of(corner + 1));
            return;
        }
        Fixing fixing = found.get().fixing();
        FastenerJoint leg = joints.computeIfAbsent(
                "strap/" + section + "/" + depthMm + "/" + fixing.item(),
                key -> frame.materials.plate(
                        frame.materials.screw(fixing.diameterMm(), fixing.lengthMm()), depthMm, section));
        int count = found.get().count() / 2;
        double stiffness = count * leg.slipModulus() / 2;
        straps.add(new Strap(
                corner,
                place.z(),
                leg,
                count,
                fixing.item(),
                frame.builder.spring(first, second, place, Vector.X, stiffness, SpringLaw.ELASTIC),
                frame.builder.spring(first, second, place, Vector.Y, stiffness, SpringLaw.ELASTIC)));
    }

    /**
     * Screws that help as far as their design load for good goes and then give way: nothing leans on them alone.
     *
     * @param first node under their heads
     * @param second node that they end in
     * @param directions in which they are sheared
     */
    void help(FastenerJoint joint, int count, int first, int second, Vector place, List<Vector> directions) {
        double limit = count / joint.utilisation(1, 0, 1, LoadDuration.PERMANENT, Working.SILENT);
        List<Integer> springs = new ArrayList<>();
        for (Vector direction : directions) {
            springs.add(frame.builder.spring(
                    first, second, place, direction, count * joint.slipModulus(), SpringLaw.slipping(limit)));
        }
        helps.add(new Help(joint, springs));
    }

    private FastenerJoint joint(Faces faces, Fixing fixing) {
        return frame.materials.joint(
                frame.materials.screw(fixing.diameterMm(), fixing.lengthMm()),
                faces.fixedMm,
                faces.fixed,
                faces.receiverMm,
                faces.receiver);
    }
}
