package borderwright.engine.strength.box;

import borderwright.engine.buildup.Box;
import borderwright.engine.buildup.Box.Fixing;
import borderwright.engine.strength.frame.SpringLaw;
import borderwright.engine.strength.frame.Vector;
import borderwright.engine.strength.timber.Fastener;
import borderwright.engine.strength.timber.Joint;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Turns the screws of a box into springs: in shear, pulled, and the contact of the faces that they draw together. */
final class Screws {
    /** Wood left beyond the point, as the builder leaves it. */
    private static final double COVER_MM = 2;

    final List<ScrewGroup> holds = new ArrayList<>();
    final List<Strap> straps = new ArrayList<>();
    private final FrameOfBox frame;
    private final Map<String, Joint> joints = new HashMap<>();

    Screws(FrameOfBox frame) {
        this.frame = frame;
    }

    /**
     * Two faces that screws draw together.
     *
     * @param kind which joint
     * @param words what is joined
     * @param fixed section under the heads
     * @param fixedMm its thickness
     * @param receiver section that they end in
     * @param receiverMm its depth
     * @param widthMm of the upright's face, across the pull
     * @param heightMm of the board on it
     * @param leverMm distance between two screws up the board; 0 where they do not keep the upright square
     */
    record Faces(
            Box.Hold kind,
            String words,
            String fixed,
            double fixedMm,
            String receiver,
            double receiverMm,
            double widthMm,
            double heightMm,
            double leverMm) {}

    /**
     * Joins a node of what the screws end in to a node of what lies under their heads.
     *
     * @param receiver node of the upright
     * @param fixed node of the board
     * @param place of both
     * @param pull unit vector in which the board moves off the upright
     * @param shear unit vector across
     */
    void join(Faces faces, int receiver, int fixed, Vector place, Vector pull, Vector shear) {
        Optional<Fixing> found = fixing(faces);
        if (found.isEmpty()) {
            frame.unheld.add("no screws are listed for " + faces.words);
            return;
        }
        Fixing fixing = found.get();
        Joint joint = joints.computeIfAbsent(
                faces.kind + faces.fixed + "/" + faces.receiver + "/" + faces.receiverMm + "/" + fixing.item(),
                key -> joint(faces, fixing));
        int count = faces.kind.perJoint();
        int across =
                frame.builder.spring(receiver, fixed, place, shear, count * joint.slipModulus(), SpringLaw.ELASTIC);
        int along = frame.builder.spring(
                receiver, fixed, place, pull, count * frame.materials.pullStiffness(joint), SpringLaw.ELASTIC);
        press(faces, receiver, fixed, place, pull, shear);
        int turn = -1;
        if (faces.leverMm > 0) {
            double lever = faces.leverMm / 2;
            turn = frame.builder.turningToGround(receiver, pull, count * joint.slipModulus() * lever * lever);
        }
        holds.add(new ScrewGroup(
                faces.kind, faces.words, fixing.item(), joint, count, across, along, turn, faces.leverMm));
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

    /** A strap across two uprights; its own stiffness is that of two small screws in each leg. */
    void strap(int corner, int first, int second, Vector place, String section, double depthMm) {
        Fastener screw = Materials.STRAP_SCREW;
        double one = frame.materials
                .joint(screw, Materials.STRAP_MM, section, depthMm, section)
                .slipModulus();
        // Two legs one after the other are half as stiff as one.
        double stiffness = Materials.STRAP_SCREWS * one / 2;
        straps.add(new Strap(
                corner,
                place.z(),
                frame.builder.spring(first, second, place, Vector.X, stiffness, SpringLaw.ELASTIC),
                frame.builder.spring(first, second, place, Vector.Y, stiffness, SpringLaw.ELASTIC)));
    }

    private Joint joint(Faces faces, Fixing fixing) {
        return frame.materials.joint(
                frame.materials.screw(fixing.diameterMm(), fixing.lengthMm()),
                faces.fixedMm,
                faces.fixed,
                faces.receiverMm,
                faces.receiver);
    }

    /** The longest of the box's screws for this joint that stays in the wood; the shortest where none does. */
    private Optional<Fixing> fixing(Faces faces) {
        double mostMm = faces.fixedMm + faces.receiverMm - COVER_MM + 1e-6;
        Optional<Fixing> best = Optional.empty();
        for (Fixing fixing : frame.box.fixings()) {
            if (fixing.hold() != faces.kind || !(fixing.diameterMm() > 0)) {
                continue;
            }
            boolean better = best.isEmpty()
                    || (fixing.lengthMm() <= mostMm
                            ? fixing.lengthMm() > best.get().lengthMm()
                                    || best.get().lengthMm() > mostMm
                            : fixing.lengthMm() < best.get().lengthMm());
            if (better) {
                best = Optional.of(fixing);
            }
        }
        return best;
    }
}
