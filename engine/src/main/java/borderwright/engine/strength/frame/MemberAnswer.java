package borderwright.engine.strength.frame;

import java.util.ArrayList;
import java.util.List;

/**
 * What one member carries and how it bends, at any distance {@code x} from its start.
 *
 * <p>Positive: axial force in tension; moments that bend the member hollow towards its own +y (about z) or +z (about y);
 * deflections along +y and +z.
 */
public final class MemberAnswer {
    private final Member member;
    private final double scale;
    private final double[] displacements;
    private final double[] ends;
    private final SpanLoad[] spans;

    MemberAnswer(Member member, double scale, double[] displacements, List<Loads.OnMember> loads) {
        this.member = member;
        this.scale = scale;
        this.displacements = displacements;
        spans = LoadVector.spans(member, loads);
        ends = LoadVector.clamped(member, loads);
        double[] k = member.localStiffness();
        for (int i = 0; i < 12; i++) {
            for (int j = 0; j < 12; j++) {
                ends[i] += scale * k[12 * i + j] * displacements[j];
            }
        }
    }

    public double lengthMm() {
        return member.length();
    }

    public double axial(double x) {
        return -ends[0] - spans[0].integral(x, 1);
    }

    public double torsion() {
        return -ends[3];
    }

    public double shearY(double x) {
        return ends[1] + spans[1].integral(x, 1);
    }

    public double shearZ(double x) {
        return ends[2] + spans[2].integral(x, 1);
    }

    public double momentAboutZ(double x) {
        return -ends[5] + ends[1] * x + spans[1].integral(x, 2);
    }

    public double momentAboutY(double x) {
        return ends[4] + ends[2] * x + spans[2].integral(x, 2);
    }

    /** Displacement towards the member's own y. */
    public double deflectionY(double x) {
        double ei = scale * member.rigidity().aboutZ();
        return bent(x, displacements[1], displacements[5], ends[1], ends[5], spans[1], ei);
    }

    private static double bent(
            double x, double shift, double slope, double force, double moment, SpanLoad span, double ei) {
        if (ei == 0) {
            return shift + slope * x;
        }
        return shift + slope * x + (-moment * x * x / 2 + force * x * x * x / 6 + span.integral(x, 4)) / ei;
    }

    /** Places where a moment about z can be greatest: ends, changes of load, and where its shear is nothing. */
    public List<Double> peaksAboutZ() {
        return peaks(spans[1], ends[1]);
    }

    private List<Double> peaks(SpanLoad span, double startForce) {
        List<Double> at = new ArrayList<>(List.of(0.0, member.length()));
        for (double b : span.breaks()) {
            if (b > 0 && b < member.length()) {
                at.add(b);
            }
        }
        at.sort(Double::compare);
        List<Double> zeros = new ArrayList<>();
        for (int i = 1; i < at.size(); i++) {
            addZero(zeros, at.get(i - 1), at.get(i), span, startForce);
        }
        at.addAll(zeros);
        return at;
    }

    /** Regula falsi with halving: between two changes of load the shear is at most a parabola, mostly a straight line. */
    private static void addZero(List<Double> zeros, double from, double to, SpanLoad span, double startForce) {
        double low = from;
        double high = to;
        double atLow = startForce + span.integral(from, 1);
        double atHigh = startForce + span.integral(to - 1e-9 * (to - from), 1);
        if (!(atLow * atHigh < 0)) {
            return;
        }
        double small = 1e-12 * Math.max(Math.abs(atLow), Math.abs(atHigh));
        double middle = low;
        for (int i = 0; i < 60; i++) {
            middle = low + (high - low) * atLow / (atLow - atHigh);
            double atMiddle = startForce + span.integral(middle, 1);
            if (Math.abs(atMiddle) <= small) {
                break;
            }
            if (atMiddle * atLow > 0) {
                low = middle;
                atLow = atMiddle;
                atHigh /= 2;
            } else {
                high = middle;
                atHigh = atMiddle;
                atLow /= 2;
            }
        }
        zeros.add(middle);
    }
}
