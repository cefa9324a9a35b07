package borderwright.engine.survey.shape;

import borderwright.engine.geometry.Point;
import borderwright.engine.survey.network.Clue;
import borderwright.engine.survey.network.Network;
import borderwright.engine.survey.network.Positions;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The clues of a network by point, and where they put a point once others are placed. */
final class ClueBook {
    private final List<List<Clue>> byPoint = new ArrayList<>();
    private final List<Clue.Apart> lengths = new ArrayList<>();
    private final double typicalLength;

    ClueBook(Network network) {
        for (int p = 0; p < network.points(); p++) {
            byPoint.add(new ArrayList<>());
        }
        for (Clue clue : network.clues()) {
            enter(clue);
            if (clue instanceof Clue.InLine line) {
                fromItsEnds(line).forEach(this::enter);
            }
        }
        typicalLength =
                lengths.stream().mapToDouble(Clue.Apart::distance).average().orElse(givenSpread(network));
    }

    private static double givenSpread(Network network) {
        Positions given = network.given();
        double most = 1;
        for (int p = 0; p < network.points(); p++) {
            for (int q = 0; q < p; q++) {
                if (network.hasGivenPlace(p) && network.hasGivenPlace(q)) {
                    most = Math.max(most, given.at(p).distanceMm(given.at(q)));
                }
            }
        }
        return most;
    }

    private void enter(Clue clue) {
        if (clue instanceof Clue.Apart apart) {
            lengths.add(apart);
            add(clue, apart.a(), apart.b());
        } else if (clue instanceof Clue.Turned turned) {
            add(clue, turned.at(), turned.from(), turned.to());
        } else if (clue instanceof Clue.Heading heading) {
            add(clue, heading.from(), heading.to());
        } else if (clue instanceof Clue.InLine line) {
            line.points().forEach(p -> byPoint.get(p).add(clue));
        }
    }

    private void add(Clue clue, int... points) {
        Arrays.stream(points).forEach(p -> byPoint.get(p).add(clue));
    }

    /** Sums of short lengths are lengths too, good enough to start from. */
    private static List<Clue> fromItsEnds(Clue.InLine line) {
        List<Clue> sums = new ArrayList<>();
        int last = line.points().size() - 1;
        for (int i = 1; i <= last; i++) {
            double sum = line.marks().get(i) - line.marks().get(0);
            sums.add(new Clue.Apart(line.points().get(0), line.points().get(i), sum, 1));
        }
        return sums;
    }

    /** A length typical of the network, for judging what is near. */
    double typicalLength() {
        return typicalLength;
    }

    /** All known lengths, from which a first pair of points can be drawn. */
    List<Clue.Apart> lengths() {
        return lengths;
    }

    int cluesAt(int point) {
        return byPoint.get(point).size();
    }

    /** What is known of a point's place from the points that are placed. */
    List<Locus> loci(int point, Positions at, boolean[] placed) {
        List<Locus> loci = new ArrayList<>();
        for (Clue clue : byPoint.get(point)) {
            if (clue instanceof Clue.Apart apart) {
                int other = apart.a() == point ? apart.b() : apart.a();
                if (placed[other]) {
                    loci.add(new Locus.Around(at.at(other), apart.distance(), apart.sd()));
                }
            } else if (clue instanceof Clue.Turned turned) {
                turned(turned, point, at, placed, loci);
            } else if (clue instanceof Clue.Heading heading) {
                int other = heading.from() == point ? heading.to() : heading.from();
                double turn = heading.from() == point ? StrictMath.PI : 0;
                if (placed[other]) {
                    loci.add(new Locus.Towards(at.at(other), List.of(heading.angle() + turn), heading.sd()));
                }
            } else if (clue instanceof Clue.InLine line) {
                inLine(line, point, at, placed, loci);
            }
        }
        return loci;
    }

    private static void turned(Clue.Turned clue, int point, Positions at, boolean[] placed, List<Locus> loci) {
        if (clue.at() == point) {
            if (placed[clue.from()] && placed[clue.to()]) {
                Point first = at.at(clue.from());
                Point second = at.at(clue.to());
                if (first.distanceMm(second) > 0) {
                    loci.add(new Locus.Seeing(first, second, clue.angle(), clue.sd(), clue.eitherWay()));
                }
            }
            return;
        }
        int other = clue.from() == point ? clue.to() : clue.from();
        if (placed[clue.at()] && placed[other]) {
            Point arm = at.at(other).minus(at.at(clue.at()));
            double bearing = StrictMath.atan2(arm.yMm(), arm.xMm());
            double turn = clue.to() == point ? clue.angle() : -clue.angle();
            List<Double> bearings =
                    clue.eitherWay() ? List.of(bearing + turn, bearing - turn) : List.of(bearing + turn);
            loci.add(new Locus.Towards(at.at(clue.at()), bearings, clue.sd()));
        }
    }

    private static void inLine(Clue.InLine line, int point, Positions at, boolean[] placed, List<Locus> loci) {
        int first = -1;
        int last = -1;
        int mine = -1;
        for (int i = 0; i < line.points().size(); i++) {
            int p = line.points().get(i);
            if (p == point) {
                mine = i;
            } else if (placed[p]) {
                first = first < 0 ? i : first;
                last = i;
            }
        }
        if (first == last || mine < 0) {
            return;
        }
        Point from = at.at(line.points().get(first));
        Point arm = at.at(line.points().get(last)).minus(from);
        if (arm.lengthMm() > 0) {
            double along = line.marks().get(mine) - line.marks().get(first);
            loci.add(new Locus.Spot(from.plus(arm.unit().times(along))));
        }
    }
}
