package borderwright.engine.survey.checks;

import borderwright.engine.survey.network.Adjustment;
import borderwright.engine.survey.network.Network;
import borderwright.engine.survey.network.Observation;
import borderwright.engine.survey.network.Positions;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The tapes of a survey as level lengths, those along a slope brought to the level, found by their ends. */
final class Tapes {
    private final Network network;
    private final List<Taped> all = new ArrayList<>();
    private final Map<List<Integer>, Taped> first = new LinkedHashMap<>();

    /** A level length between two points with its standard deviation. */
    record Taped(int a, int b, double lengthMm, double sdMm) {
        private boolean joins(int p, int q) {
            return (a == p && b == q) || (a == q && b == p);
        }
    }

    Tapes(Adjustment adjustment) {
        this.network = adjustment.network();
        for (Observation observation : network.observations()) {
            if (observation instanceof Observation.Distance d) {
                all.add(new Taped(d.a(), d.b(), d.measured(), d.sd()));
            } else if (observation instanceof Observation.SlopeDistance s) {
                Positions at = adjustment.positions();
                double rise = at.height(s.b()) - at.height(s.a());
                double level = Math.sqrt(Math.max(s.measured() * s.measured() - rise * rise, 0));
                all.add(new Taped(s.a(), s.b(), level, s.sd()));
            }
        }
        for (Taped tape : all) {
            first.putIfAbsent(pair(tape.a, tape.b), tape);
        }
    }

    /** Every tape, in the order of the readings. */
    List<Taped> all() {
        return all;
    }

    /** The first tape of each pair of points. */
    Collection<Taped> first() {
        return first.values();
    }

    /** Every tape of one pair of points. */
    List<Taped> between(int a, int b) {
        return all.stream().filter(tape -> tape.joins(a, b)).toList();
    }

    boolean has(int a, int b) {
        return first.containsKey(pair(a, b));
    }

    /** The first tape between two points; null where there is none. */
    @Nullable
    Taped firstBetween(int a, int b) {
        return first.get(pair(a, b));
    }

    /**
     * The first tape between two points.
     *
     * @throws IllegalArgumentException where there is none
     */
    Taped get(int a, int b) {
        Taped tape = firstBetween(a, b);
        if (tape == null) {
            throw new IllegalArgumentException("no tape " + name(a, b));
        }
        return tape;
    }

    /** As its reading is named. */
    String name(int a, int b) {
        return network.name(a) + "-" + network.name(b);
    }

    private static List<Integer> pair(int a, int b) {
        return List.of(Math.min(a, b), Math.max(a, b));
    }
}
