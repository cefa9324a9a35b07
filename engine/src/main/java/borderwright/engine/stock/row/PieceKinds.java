package borderwright.engine.stock.row;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Pieces that are alike, which come in the order given. A choice of how many of each is one number. */
final class PieceKinds {
    /** Choices of which pieces lie already up to which every order is looked at: 12 pieces, or more where some are alike. */
    static final int MOST_CHOICES = 4096;

    /** Indices of the pieces of each kind. */
    final List<List<Integer>> members = new ArrayList<>();
    /** What one more of each kind adds to a choice. */
    final List<Integer> step = new ArrayList<>();

    /** Different choices, {@link #MOST_CHOICES} + 1 where there are more. */
    int choices = 1;

    static PieceKinds of(List<BoardNest.Shape> shapes) {
        PieceKinds kinds = new PieceKinds();
        Map<BoardNest.Shape, List<Integer>> byShape = new LinkedHashMap<>();
        for (int i = 0; i < shapes.size(); i++) {
            byShape.computeIfAbsent(shapes.get(i), s -> new ArrayList<>()).add(i);
        }
        for (List<Integer> alike : byShape.values()) {
            kinds.members.add(alike);
            kinds.step.add(kinds.choices);
            kinds.choices = (int) Math.min((long) kinds.choices * (alike.size() + 1), MOST_CHOICES + 1);
        }
        return kinds;
    }

    /** How many of a kind are in a choice. */
    int count(int kind, int choice) {
        return choice / step.get(kind) % (members.get(kind).size() + 1);
    }

    /** How many pieces are in a choice. */
    int size(int choice) {
        int size = 0;
        for (int kind = 0; kind < members.size(); kind++) {
            size += count(kind, choice);
        }
        return size;
    }
}
