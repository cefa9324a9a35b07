package borderwright.engine.survey.shape;

import borderwright.engine.geometry.Point;
import borderwright.engine.survey.network.Clue;
import borderwright.engine.survey.network.CornerOrder;
import borderwright.engine.survey.network.Network;
import borderwright.engine.survey.network.Positions;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds starting positions: nobody is asked for coordinates.
 *
 * <p>From a first pair of points the others are placed one by one where two clues meet. Each point may have several such
 * places (mirror images, or clues that disagree); the best few partial sketches are kept side by side. A sketch is judged
 * by how many clues it breaks rather than by how much, so that one gross slip does not drag it along, and by whether the
 * going-round order crosses itself.
 */
final class StartPositions {
    /** Partial sketches kept side by side: bounds the search; 2 to the power of 5 open mirror cases. */
    private static final int SKETCHES = 32;

    private static final int PLACES_PER_POINT = 4;
    /** Clues intersected in pairs for one point; more would only repeat the same places. */
    private static final int CLUES_PER_POINT = 8;
    /** One broken clue counts no more than this many tolerances. */
    private static final double MOST_MISFIT = 20;

    private static final double CROSSING_COST = 15;
    /** Share of the typical length within which clues count as kept while a sketch grows. */
    private static final double TOLERANCE = 0.003;

    private final Network network;
    private final CornerOrder order;
    private final ClueBook clues;
    private final double tolerance;

    StartPositions(Network network, CornerOrder order) {
        this.network = network;
        this.order = order;
        this.clues = new ClueBook(network);
        this.tolerance = TOLERANCE * clues.typicalLength();
    }

    double typicalLength() {
        return clues.typicalLength();
    }

    /** First sketches to grow from: the given places, or pairs of points whose distance is known, best connected first. */
    List<PartialPlacement> seeds(int most) {
        List<PartialPlacement> seeds = new ArrayList<>();
        boolean[] given = new boolean[network.points()];
        boolean any = false;
        for (int p = 0; p < network.points(); p++) {
            given[p] = network.hasGivenPlace(p);
            any |= given[p];
        }
        if (any) {
            seeds.add(new PartialPlacement(network.given(), given, 0));
            return seeds;
        }
        Comparator<Clue.Apart> connected = Comparator.comparingInt(c -> -(clues.cluesAt(c.a()) + clues.cluesAt(c.b())));
        List<Clue.Apart> pairs = clues.lengths().stream()
                .sorted(connected
                        .thenComparingInt(c -> Math.min(c.a(), c.b()))
                        .thenComparingInt(c -> Math.max(c.a(), c.b()))
                        .thenComparingDouble(Clue.Apart::distance))
                .toList();
        for (Clue.Apart pair : pairs) {
            if (seeds.size() < most) {
                seeds.add(seed(pair));
            }
        }
        return seeds;
    }

    private PartialPlacement seed(Clue.Apart pair) {
        Positions at = network.given();
        boolean[] placed = new boolean[network.points()];
        at.place(pair.b(), new Point(pair.distance(), 0));
        placed[pair.a()] = true;
        placed[pair.b()] = true;
        return new PartialPlacement(at, placed, 0);
    }

    /** Sketches grown from a seed as far as clues reach, best first; points without a place stay unplaced in all. */
    List<PartialPlacement> grow(PartialPlacement seed) {
        List<PartialPlacement> sketches = List.of(seed);
        boolean[] putOff = new boolean[network.points()];
        while (true) {
            int next = nextPoint(sketches.get(0), putOff);
            if (next < 0) {
                return sketches;
            }
            List<PartialPlacement> grown = new ArrayList<>();
            for (PartialPlacement sketch : sketches) {
                grown.addAll(place(sketch, next));
            }
            if (grown.isEmpty()) {
                putOff[next] = true;
            } else {
                grown.sort(Comparator.comparingDouble(PartialPlacement::cost));
                sketches = List.copyOf(grown.subList(0, Math.min(grown.size(), SKETCHES)));
                putOff = new boolean[network.points()];
            }
        }
    }

    /** The unplaced point with most clues to placed points, at least two of them; -1 when there is none. */
    private int nextPoint(PartialPlacement sketch, boolean[] putOff) {
        int best = -1;
        int most = 0;
        for (int p = 0; p < network.points(); p++) {
            if (!network.inPlan(p) || sketch.placed()[p] || putOff[p]) {
                continue;
            }
            int weight = 0;
            for (Locus locus : clues.loci(p, sketch.at(), sketch.placed())) {
                weight += locus instanceof Locus.Spot ? 2 : 1;
            }
            if (weight >= 2 && weight > most) {
                most = weight;
                best = p;
            }
        }
        return best;
    }

    private List<PartialPlacement> place(PartialPlacement sketch, int point) {
        List<Locus> loci = clues.loci(point, sketch.at(), sketch.placed());
        List<Candidate> candidates = new ArrayList<>();
        for (Point place : meetings(loci)) {
            candidates.add(new Candidate(place, misfit(loci, place)));
        }
        candidates.sort(Comparator.comparingDouble(Candidate::cost));
        List<Candidate> kept = new ArrayList<>();
        for (Candidate candidate : candidates) {
            if (kept.size() < PLACES_PER_POINT
                    && kept.stream().noneMatch(k -> k.place.distanceMm(candidate.place) < 2 * tolerance)) {
                kept.add(candidate);
            }
        }
        List<PartialPlacement> grown = new ArrayList<>();
        for (Candidate candidate : kept) {
            Positions at = sketch.at().copy();
            at.place(point, candidate.place);
            boolean[] placed = sketch.placed().clone();
            placed[point] = true;
            double crossings = CROSSING_COST * order.crossingsAt(point, at, placed);
            grown.add(new PartialPlacement(at, placed, sketch.cost() + candidate.cost + crossings));
        }
        return grown;
    }

    private record Candidate(Point place, double cost) {}

    private static List<Point> meetings(List<Locus> all) {
        List<Locus> loci = all.subList(0, Math.min(all.size(), CLUES_PER_POINT));
        List<Point> meetings = new ArrayList<>();
        for (int i = 0; i < loci.size(); i++) {
            if (loci.get(i) instanceof Locus.Spot spot) {
                meetings.add(spot.place());
                continue;
            }
            for (int j = i + 1; j < loci.size(); j++) {
                for (Locus.Curve one : loci.get(i).curves()) {
                    for (Locus.Curve other : loci.get(j).curves()) {
                        meetings.addAll(Locus.meet(one, other));
                    }
                }
            }
        }
        return meetings;
    }

    private double misfit(List<Locus> loci, Point place) {
        double sum = 0;
        for (Locus locus : loci) {
            double allowed = tolerance + 3 * locus.unsure(place);
            sum += Math.min(locus.misfit(place) / allowed, MOST_MISFIT);
        }
        return sum;
    }
}
