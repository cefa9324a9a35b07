package borderwright.bench.solid;

import java.util.List;

/** What each spring of a box is doing: works, is open, or slips. */
final class States {
    private static final int OPEN = 2;

    /** Lengthening that rounding may leave of nothing. */
    private static final double ROUNDING_MM = 1e-6;

    private final List<Link> links;

    /** 0 works, 2 open, 1 and -1 slips while lengthened and shortened. */
    private final int[] state;

    /** All work. */
    States(List<Link> links) {
        this(links, new int[links.size()]);
    }

    private States(List<Link> links, int[] state) {
        this.links = links;
        this.state = state;
    }

    /** The states that lengthenings call for; where one is as good as nothing, the state that it has here. */
    States after(double[] stretchMm) {
        int[] found = state.clone();
        for (int i = 0; i < found.length; i++) {
            if (Math.abs(stretchMm[i]) > ROUNDING_MM) {
                found[i] = wanted(links.get(i), stretchMm[i]);
            }
        }
        return new States(links, found);
    }

    int differFrom(States other) {
        int count = 0;
        for (int i = 0; i < state.length; i++) {
            count += state[i] == other.state[i] ? 0 : 1;
        }
        return count;
    }

    boolean works(int link) {
        return state[link] == 0;
    }

    /** 1 or -1 where it slips, else 0. */
    int sliding(int link) {
        return state[link] == OPEN ? 0 : state[link];
    }

    boolean slips() {
        for (int one : state) {
            if (one == 1 || one == -1) {
                return true;
            }
        }
        return false;
    }

    /** Forces of the springs in these states, whether or not the lengthenings belong to them: N, tension positive. */
    double[] forcesN(double[] stretchMm) {
        double[] forces = new double[state.length];
        for (int i = 0; i < forces.length; i++) {
            Link one = links.get(i);
            forces[i] = works(i) ? one.stiffness() * stretchMm[i] : sliding(i) * one.limitN();
        }
        return forces;
    }

    private static int wanted(Link link, double stretchMm) {
        return switch (link.law()) {
            case ELASTIC -> 0;
            case CONTACT -> stretchMm > 0 ? OPEN : 0;
            case SLIPPING -> link.stiffness() * Math.abs(stretchMm) > link.limitN() ? (int) Math.signum(stretchMm) : 0;
        };
    }
}
