package borderwright.pack.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Marks by the layer that they lie on: layers in the order of their first marks, marks of one layer in theirs. */
final class LayeredMarks {
    private final Map<String, List<Mark>> byLayer = new LinkedHashMap<>();

    void add(String layer, Mark mark) {
        byLayer.computeIfAbsent(layer, name -> new ArrayList<>()).add(mark);
    }

    LayeredMarks copy() {
        LayeredMarks copy = new LayeredMarks();
        byLayer.forEach((layer, marks) -> copy.byLayer.put(layer, new ArrayList<>(marks)));
        return copy;
    }

    /** Appends the marks, and for each named layer where they lie among all. */
    void writeTo(List<Mark> all, List<Drawing.Layer> layers, String ending) {
        byLayer.forEach((layer, marks) -> {
            if (!layer.isEmpty()) {
                layers.add(new Drawing.Layer(layer + ending, all.size(), all.size() + marks.size()));
            }
            all.addAll(marks);
        });
    }
}
