package borderwright.engine.strength.frame;

import java.util.List;

/** Turns load cases and settlements into forces on the free displacements. */
final class LoadVector {
    private LoadVector() {}

    static double[] of(Frame frame, Loads loads, UnknownScales scales) {
        double[] full = onNodes(frame, loads);
        addSettlements(frame, scales, full);
        double[] force = new double[frame.numbering.count];
        for (int i = 0; i < full.length; i++) {
            if (frame.numbering.equation[i] >= 0) {
                force[frame.numbering.equation[i]] = full[i];
            }
        }
        return force;
    }

    /** Six forces of every node, those on members shared out as clamped ends would hold them. */
    static double[] onNodes(Frame frame, Loads loads) {
        double[] full = new double[Freedom.COUNT * frame.places.size()];
        for (Loads.OnNode load : loads.onNodes) {
            full[Freedom.COUNT * load.node() + load.freedom().index()] += load.value();
        }
        for (Loads.OnMember load : loads.onMembers) {
            Member member = frame.members.get(load.member());
            double[] ends = clamped(member, List.of(load));
            for (int block = 0; block < 4; block++) {
                Vector global = member.toGlobal(new Vector(ends[3 * block], ends[3 * block + 1], ends[3 * block + 2]));
                int node = block < 2 ? member.start() : member.end();
                for (int i = 0; i < 3; i++) {
                    full[Freedom.COUNT * node + 3 * (block % 2) + i] -= global.component(i);
                }
            }
        }
        return full;
    }

    /** The 12 forces, in the member's own axes, by which clamped ends hold it under the loads given. */
    static double[] clamped(Member member, List<Loads.OnMember> loads) {
        double l = member.length();
        double[] ends = new double[12];
        SpanLoad[] spans = spans(member, loads);
        double axial = spans[0].integral(l, 2) / l;
        ends[0] = -axial;
        ends[6] = axial - spans[0].integral(l, 1);
        double[] towardsY = spans[1].clampedEnds(l);
        ends[1] = towardsY[0];
        ends[5] = towardsY[1];
        ends[7] = towardsY[2];
        ends[11] = towardsY[3];
        double[] towardsZ = spans[2].clampedEnds(l);
        ends[2] = towardsZ[0];
        ends[4] = -towardsZ[1];
        ends[8] = towardsZ[2];
        ends[10] = -towardsZ[3];
        return ends;
    }

    /** The loads of a member along its own three axes. */
    static SpanLoad[] spans(Member member, List<Loads.OnMember> loads) {
        SpanLoad[] spans = {new SpanLoad(), new SpanLoad(), new SpanLoad()};
        for (Loads.OnMember load : loads) {
            Vector local = member.toLocal(load.direction());
            for (int i = 0; i < 3; i++) {
                spans[i].add(load, local.component(i));
            }
        }
        return spans;
    }

    private static void addSettlements(Frame frame, UnknownScales scales, double[] full) {
        boolean any = false;
        for (double value : frame.held) {
            any |= value != 0;
        }
        for (int m = 0; any && m < frame.members.size(); m++) {
            Member member = frame.members.get(m);
            double[] k = member.globalStiffness();
            for (int i = 0; i < 12; i++) {
                for (int j = 0; j < 12; j++) {
                    full[index(member, i)] -= scales.ofMember(m) * k[12 * i + j] * frame.held[index(member, j)];
                }
            }
        }
    }

    static int index(Member member, int i) {
        return Freedom.COUNT * (i < 6 ? member.start() : member.end()) + i % 6;
    }
}
