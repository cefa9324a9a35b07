package borderwright.engine.strength.box;

import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.measure.Gravity;
import borderwright.engine.strength.frame.SpringLaw;
import borderwright.engine.strength.frame.Vector;
import java.util.ArrayList;
import java.util.List;

/** What the boards of the walls lean on and rub on: the fill behind them, and the bed under the lowest. */
final class WallSupports {
    /** Movement into loose fill at which it stands against a wall as much as it can (careful default, no source). */
    private static final double PASSIVE_AT_MM = 10;

    /** Stiffness of friction before it slips, N/mm for each mm of board (careful default, no source). */
    private static final double BED_STIFFNESS = 0.1;

    private final FrameOfBox frame;
    private final List<Integer> bed = new ArrayList<>();
    private final List<Backing> backings = new ArrayList<>();

    WallSupports(FrameOfBox frame) {
        this.frame = frame;
    }

    /** The springs of the bed. */
    List<Integer> bed() {
        return bed;
    }

    /** The springs of the fill. */
    List<Backing> backings() {
        return backings;
    }

    /** The fill behind each node, for half of the bars on either side of it. */
    void back(Piece piece, List<Integer> nodes, List<Board.Part> parts) {
        Buried buried = Buried.of(
                frame.box, frame.fill, piece.place().bottomMm(), piece.place().topMm());
        if (buried.heightMm() == 0) {
            return;
        }
        double perMm3 = frame.fill.standsAgainst(buried.depthMm()) / PASSIVE_AT_MM;
        for (int i = 0; i < nodes.size(); i++) {
            Vector at =
                    i < parts.size() ? parts.get(i).start() : parts.get(i - 1).end();
            double stiffness = perMm3 * buried.heightMm() * share(i, parts);
            int planter = parts.get(Math.min(i, parts.size() - 1)).rightPlanter();
            backings.add(new Backing(
                    frame.builder.toGround(
                            nodes.get(i), at, frame.lines.outward(piece.side()), stiffness, SpringLaw.CONTACT),
                    planter));
        }
    }

    /** Length of board that counts to a node. */
    private static double share(int node, List<Board.Part> parts) {
        return (node > 0 ? parts.get(node - 1).lengthMm() : 0) / 2
                + (node < parts.size() ? parts.get(node).lengthMm() : 0) / 2;
    }

    /** Friction of the bottom course on its bed, from the weight of the wall above it alone. */
    void rub(Piece piece, List<Integer> nodes, List<Board.Part> parts) {
        double heightMm =
                frame.box.courses().get(frame.box.courses().size() - 1).topMm()
                        - frame.box.courses().get(0).bottomMm();
        double kgPerM3 = frame.materials.section(piece.section()).densityKgPerM3();
        double weightPerMm = kgPerM3 * Gravity.N_PER_KG * 1e-9 * heightMm * frame.lines.wallMm;
        for (int i = 0; i < nodes.size(); i++) {
            double share = share(i, parts);
            SpringLaw law = SpringLaw.slipping(frame.bedFriction * weightPerMm * share);
            Vector at =
                    i < parts.size() ? parts.get(i).start() : parts.get(i - 1).end();
            bed.add(frame.builder.toGround(
                    nodes.get(i), at, frame.lines.outward(piece.side()), BED_STIFFNESS * share, law));
            bed.add(frame.builder.toGround(
                    nodes.get(i), at, frame.lines.along(piece.side()), BED_STIFFNESS * share, law));
        }
    }
}
