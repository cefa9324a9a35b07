package borderwright.pack.bench;

import borderwright.engine.assembly.WallBench;
import borderwright.engine.message.Message;
import borderwright.pack.figures.PrintedFigures;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Which label stands on a wall or divider in the place of each label of the drawing that it shares. */
final class AlikeLabels {
    private final WallBench drawn;
    private final PrintedFigures f;

    AlikeLabels(WallBench drawn, PrintedFigures f) {
        this.drawn = drawn;
        this.f = f;
    }

    /** One sentence for each wall; one for all where each has the name of its box in its labels, and the drawn one too. */
    List<Message> of(List<WallBench> alike, List<String> names) {
        if (alike.isEmpty()) {
            return List.of();
        }
        boolean own = alike.stream().allMatch(wall -> planters(wall).equals(Map.of(drawn.box(), wall.box())));
        if (own) {
            return List.of(BenchMessage.LABELS_OF_OWN_BOX.of(drawn.box()));
        }
        List<Message> all = new ArrayList<>();
        for (int i = 0; i < alike.size(); i++) {
            Map<String, String> planters = planters(alike.get(i));
            all.add(BenchMessage.LABELS_THERE.of(
                    names.get(i), swaps(planters.isEmpty() ? pieces(alike.get(i)) : planters)));
        }
        return all;
    }

    private String swaps(Map<String, String> swaps) {
        return String.join(
                ", ",
                swaps.entrySet().stream()
                        .map(swap -> f.text(BenchMessage.LABEL_FOR_LABEL.of(swap.getValue(), swap.getKey())))
                        .toList());
    }

    private Map<String, String> pieces(WallBench wall) {
        Map<String, String> swaps = new LinkedHashMap<>();
        List<String> here = drawn.labels();
        List<String> there = wall.labels();
        for (int i = 0; i < here.size(); i++) {
            swaps.put(here.get(i), there.get(i));
        }
        return swaps;
    }

    /** Which planter's name stands for which, where nothing else differs in the labels; empty where something does. */
    private Map<String, String> planters(WallBench wall) {
        Map<String, String> swaps = new LinkedHashMap<>();
        for (Map.Entry<String, String> piece : pieces(wall).entrySet()) {
            int here = piece.getKey().indexOf('-');
            int there = piece.getValue().indexOf('-');
            boolean same =
                    piece.getKey().substring(here).equals(piece.getValue().substring(there));
            String name = piece.getValue().substring(0, there);
            String before = swaps.putIfAbsent(piece.getKey().substring(0, here), name);
            if (!same || (before != null && !before.equals(name))) {
                return Map.of();
            }
        }
        return swaps;
    }
}
