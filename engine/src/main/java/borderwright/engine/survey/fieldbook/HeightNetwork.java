package borderwright.engine.survey.fieldbook;

import borderwright.engine.garden.Measure;
import borderwright.engine.garden.SurveySpec;
import borderwright.engine.problem.Problem;
import borderwright.engine.survey.network.LeastSquares;
import borderwright.engine.survey.network.Network;
import borderwright.engine.survey.network.NetworkBuilder;
import borderwright.engine.survey.network.Positions;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Heights by themselves: which points have one, what they count from, and a first value for reducing tapes held along the
 * ground.
 *
 * @param first height of each levelled point, mm, in order of first mention
 * @param heldAtZero the point from which all heights count when nothing was levelled to the datum
 * @param problems heights that hang on nothing
 */
record HeightNetwork(Map<String, Double> first, Optional<String> heldAtZero, List<Problem> problems) {
    HeightNetwork {
        problems = List.copyOf(problems);
    }

    static HeightNetwork of(SurveySpec notes) {
        Map<String, String> joinedTo = new LinkedHashMap<>();
        boolean anyLevel = false;
        for (Measure measure : notes.measures()) {
            if (measure instanceof Measure.LevelReading level) {
                join(joinedTo, DATUM, level.level());
                anyLevel = true;
            } else if (measure instanceof Measure.Rise rise) {
                join(joinedTo, rise.rise().first(), rise.rise().last());
            }
        }
        if (joinedTo.isEmpty()) {
            return new HeightNetwork(Map.of(), Optional.empty(), List.of());
        }
        Optional<String> held = anyLevel ? Optional.empty() : Optional.of(base(notes, joinedTo));
        String root = root(joinedTo, held.orElse(DATUM));
        List<String> loose = joinedTo.keySet().stream()
                .filter(p -> !p.equals(DATUM) && !root(joinedTo, p).equals(root))
                .toList();
        if (!loose.isEmpty()) {
            return new HeightNetwork(Map.of(), held, List.of(loose(loose, held.orElse(highest(joinedTo, root)))));
        }
        return new HeightNetwork(adjusted(notes, held), held, List.of());
    }

    /** No point can be called this: names are never blank. */
    private static final String DATUM = "";

    private static void join(Map<String, String> joinedTo, String one, String other) {
        joinedTo.putIfAbsent(one, one);
        joinedTo.putIfAbsent(other, other);
        joinedTo.put(root(joinedTo, one), root(joinedTo, other));
    }

    private static String root(Map<String, String> joinedTo, String point) {
        String at = point;
        while (!joinedTo.getOrDefault(at, at).equals(at)) {
            at = joinedTo.getOrDefault(at, at);
        }
        return at;
    }

    /** The first corner that has a height, or else the first point by name. */
    private static String base(SurveySpec notes, Map<String, String> joinedTo) {
        return notes.corners().list().stream()
                .filter(joinedTo::containsKey)
                .findFirst()
                .orElseGet(() -> joinedTo.keySet().stream().sorted().findFirst().orElseThrow());
    }

    private static String highest(Map<String, String> joinedTo, String root) {
        return joinedTo.keySet().stream()
                .filter(p -> !p.equals(DATUM) && root(joinedTo, p).equals(root))
                .findFirst()
                .orElseThrow();
    }

    private static Problem loose(List<String> loose, String held) {
        return new Problem(
                "survey.measures", FieldBookMessage.HEIGHT_NOT_FIXED.of(loose, loose.size(), held, loose.get(0)));
    }

    private static Map<String, Double> adjusted(SurveySpec notes, Optional<String> held) {
        NetworkBuilder builder = new NetworkBuilder();
        held.ifPresent(p -> builder.givenHeight(p, 0));
        for (Measure measure : notes.measures()) {
            if (measure instanceof Measure.LevelReading level) {
                builder.height(
                        level.level(), level.height().mm(), level.height().sdMm());
            } else if (measure instanceof Measure.Rise rise) {
                builder.rise(
                        rise.rise().first(),
                        rise.rise().last(),
                        rise.height().mm(),
                        rise.height().sdMm());
            }
        }
        Network network = builder.build();
        Positions at = LeastSquares.adjust(network, network.given())
                .orElseThrow(() -> new IllegalArgumentException("heights that hang together can be adjusted"))
                .positions();
        Map<String, Double> heights = new LinkedHashMap<>();
        List<String> names = new ArrayList<>(network.names());
        for (int p = 0; p < names.size(); p++) {
            heights.put(names.get(p), at.height(p));
        }
        return heights;
    }
}
