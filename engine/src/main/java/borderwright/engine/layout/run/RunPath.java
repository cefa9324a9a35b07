package borderwright.engine.layout.run;

import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.survey.Outline;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * The edges that a run follows, in the border's own order (anticlockwise).
 *
 * @param edges their indices, each following the one before round the border
 * @param reversed whether the person named the corners the other way round
 */
public record RunPath(List<Integer> edges, boolean reversed) {

    /** Follows neighbouring corners either way round; empty when two of them are not neighbours. */
    public static Optional<RunPath> along(Names corners, Outline outline) {
        Optional<RunPath> forward = follow(corners.list(), outline, false);
        if (forward.isPresent()) {
            return forward;
        }
        List<String> backward = new ArrayList<>(corners.list());
        Collections.reverse(backward);
        return follow(backward, outline, true);
    }

    private static Optional<RunPath> follow(List<String> names, Outline outline, boolean reversed) {
        int size = outline.ring().size();
        int first = names.isEmpty() ? -1 : outline.cornerNames().indexOf(names.get(0));
        if (first < 0 || names.size() < 2 || names.size() > size + 1) {
            return Optional.empty();
        }
        List<Integer> edges = new ArrayList<>();
        for (int i = 1; i < names.size(); i++) {
            int corner = (first + i) % size;
            if (!outline.cornerNames().get(corner).equals(names.get(i))) {
                return Optional.empty();
            }
            edges.add((first + i - 1) % size);
        }
        return Optional.of(new RunPath(edges, reversed));
    }

    /** Index of the edge before the first; the last one of the run itself where it goes all the way round. */
    int edgeBefore(Outline outline) {
        return Math.floorMod(edges.get(0) - 1, outline.ring().size());
    }

    int edgeAfter(Outline outline) {
        return (edges.get(edges.size() - 1) + 1) % outline.ring().size();
    }
}
