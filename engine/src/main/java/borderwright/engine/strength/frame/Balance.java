package borderwright.engine.strength.frame;

/**
 * Sum of all forces, and of all moments about the origin, of the loads and of everything that holds the structure.
 *
 * @param force what is left over, N
 * @param moment what is left over, N mm
 * @param unbalanced greatest force or moment left over at a free displacement, N or N mm
 * @param loose greatest force that rests on the loose stiffness and so on nothing real, N
 * @param size sum of the magnitudes of all loads and reactions, N, to measure the leftovers by
 */
public record Balance(Vector force, Vector moment, double unbalanced, double loose, double size) {

    static Balance of(Frame frame, Loads loads, FrameAnswer answer) {
        double[] rest = answer.unbalanced();
        Vector force = Vector.ZERO;
        Vector moment = Vector.ZERO;
        double size = 0;
        double worst = 0;
        double loose = 0;
        for (int n = 0; n < frame.places.size(); n++) {
            double[] reaction = new double[Freedom.COUNT];
            for (int f = 0; f < Freedom.COUNT; f++) {
                int equation = frame.numbering.equation[Freedom.COUNT * n + f];
                double value = rest[Freedom.COUNT * n + f];
                if (equation < 0) {
                    reaction[f] = -value;
                } else {
                    double held = frame.loose[equation] * answer.displacement(n, f);
                    worst = Math.max(worst, Math.abs(value - held));
                    loose = f < 3 ? Math.max(loose, Math.abs(held)) : loose;
                    reaction[f] = -held;
                }
            }
            Vector push = new Vector(reaction[0], reaction[1], reaction[2]);
            force = force.plus(push);
            moment = moment.plus(frame.places.get(n).cross(push))
                    .plus(new Vector(reaction[3], reaction[4], reaction[5]));
            size += push.length();
        }
        return withGroundAndLoads(frame, loads, answer, new Balance(force, moment, worst, loose, size));
    }

    private static Balance withGroundAndLoads(Frame frame, Loads loads, FrameAnswer answer, Balance held) {
        Balance sum = held;
        for (int s = 0; s < frame.springs.size(); s++) {
            Spring spring = frame.springs.get(s);
            if (spring.first().node() >= 0) {
                continue;
            }
            Vector pull = spring.direction().times(-answer.springForce(s));
            Vector at = frame.places
                    .get(spring.second().node())
                    .plus(spring.second().arm());
            sum = spring.turning() ? sum.turned(pull) : sum.pushed(at, pull);
        }
        for (Loads.OnNode load : loads.onNodes) {
            int f = load.freedom().index();
            Vector push = axis(f % 3).times(load.value());
            sum = f < 3 ? sum.pushed(frame.places.get(load.node()), push) : sum.turned(push);
        }
        for (Loads.OnMember load : loads.onMembers) {
            Member member = frame.members.get(load.member());
            Vector at = frame.places.get(member.start()).plus(member.x().times(load.centre()));
            sum = sum.pushed(at, load.direction().times(load.total()));
        }
        return sum;
    }

    private static Vector axis(int i) {
        return i == 0 ? Vector.X : i == 1 ? Vector.Y : Vector.Z;
    }

    private Balance pushed(Vector at, Vector push) {
        return new Balance(force.plus(push), moment.plus(at.cross(push)), unbalanced, loose, size + push.length());
    }

    private Balance turned(Vector turn) {
        return new Balance(force, moment.plus(turn), unbalanced, loose, size);
    }
}
