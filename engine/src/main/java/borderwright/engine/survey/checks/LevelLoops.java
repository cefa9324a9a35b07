package borderwright.engine.survey.checks;

import borderwright.engine.message.Message;
import borderwright.engine.survey.checks.SurveyReport.Closing;
import borderwright.engine.survey.fieldbook.FieldBook;
import borderwright.engine.survey.network.Adjustment;
import borderwright.engine.survey.network.Network;
import borderwright.engine.survey.network.Observation;
import borderwright.engine.survey.network.Observation.HeightDifference;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Level loops: each reading beyond a tree of readings closes one, the datum counting as a point. */
final class LevelLoops {
    private final Network network;
    private final FieldBook book;
    private final List<HeightDifference> readings = new ArrayList<>();

    LevelLoops(FieldBook book, Adjustment adjustment) {
        this.book = book;
        this.network = adjustment.network();
        for (Observation observation : network.observations()) {
            if (observation instanceof HeightDifference reading) {
                readings.add(reading);
            }
        }
    }

    List<Closing> all() {
        List<HeightDifference> tree = new ArrayList<>();
        List<Closing> closings = new ArrayList<>();
        for (HeightDifference reading : readings) {
            List<HeightDifference> way = way(tree, reading.from(), reading.to());
            if (way.isEmpty()) {
                tree.add(reading);
            } else {
                closings.add(closing(reading, way));
            }
        }
        return closings;
    }

    /** The readings of the tree that lead from one point to another, in order; none when nothing leads there. */
    private static List<HeightDifference> way(List<HeightDifference> tree, int from, int to) {
        Map<Integer, HeightDifference> cameBy = new LinkedHashMap<>();
        Deque<Integer> next = new ArrayDeque<>(List.of(from));
        while (!next.isEmpty()) {
            int at = next.remove();
            for (HeightDifference reading : tree) {
                int other = reading.from() == at ? reading.to() : reading.to() == at ? reading.from() : at;
                if (other != at && other != from && !cameBy.containsKey(other)) {
                    cameBy.put(other, reading);
                    next.add(other);
                }
            }
        }
        List<HeightDifference> way = new ArrayList<>();
        int at = to;
        while (cameBy.containsKey(at) && at != from) {
            HeightDifference by = cameBy.get(at);
            way.add(by);
            at = by.to() == at ? by.from() : by.to();
        }
        Collections.reverse(way);
        return at == from ? way : List.of();
    }

    private Closing closing(HeightDifference reading, List<HeightDifference> way) {
        double sum = 0;
        double variance = reading.sd() * reading.sd();
        int at = reading.from();
        for (HeightDifference step : way) {
            boolean forward = step.from() == at;
            sum += forward ? step.measured() : -step.measured();
            at = forward ? step.to() : step.from();
            variance += step.sd() * step.sd();
        }
        Message what = way.size() == 1
                ? ClosingMessage.CLOSING_TWO_LEVELS.of(name(reading), name(way.get(0)))
                : ClosingMessage.CLOSING_LEVELS.of(name(reading));
        return new Closing(what, reading.measured() - sum, Math.sqrt(variance));
    }

    private Message name(HeightDifference reading) {
        int number = network.observations().indexOf(reading);
        return book.entries().stream()
                .filter(e -> e.observation() == number)
                .findFirst()
                .orElseThrow()
                .name();
    }
}
