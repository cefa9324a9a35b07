package borderwright.engine.garden.checks;

import borderwright.engine.garden.given.GivenSurvey;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.problem.Problem;
import borderwright.engine.spelling.NearestName;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The border's edges: pairs of corners that follow each other, round the ring or along the strip. */
final class BorderEdges {
    private final List<String> corners;
    private final boolean isRing;
    private final Map<String, Integer> position = new HashMap<>();

    BorderEdges(GivenSurvey survey) {
        this.corners = survey.corners().list();
        this.isRing = survey.stripWidth() == null;
        for (int i = 0; i < corners.size(); i++) {
            position.putIfAbsent(corners.get(i), i);
        }
    }

    /** Whether every name is a corner; what is not is reported, with the nearest that is. Without corners all may be. */
    boolean areCorners(List<String> names, String where, List<Problem> found) {
        boolean all = true;
        for (String name : names) {
            if (!corners.isEmpty() && !position.containsKey(name)) {
                all = false;
                found.add(new Problem(
                        where,
                        NameMessage.CORNER_UNKNOWN.of(
                                name,
                                NearestName.perhaps(name, corners)
                                        .orElseGet(() -> NameMessage.CORNERS_ARE.of(shortList())))));
            }
        }
        return all && !corners.isEmpty();
    }

    /** Reports unless {@code edge} names the two corners of one edge, in either order. */
    void requireEdge(Names edge, String where, List<Problem> found) {
        if (edge.size() == 0) {
            return;
        }
        if (edge.size() != 2) {
            found.add(new Problem(where, NameMessage.EDGE_OF_CORNERS.of(edge.size())));
        } else if (areCorners(edge.list(), where, found) && !isEdge(edge.first(), edge.last())) {
            found.add(notAnEdge(edge.first(), edge.last(), where));
        }
    }

    boolean isEdge(String a, String b) {
        Integer at = position.get(a);
        Integer to = position.get(b);
        if (at == null || to == null) {
            return false;
        }
        int apart = Math.abs(at - to);
        return apart == 1 || (isRing && corners.size() > 2 && apart == corners.size() - 1);
    }

    Problem notAnEdge(String a, String b, String where) {
        return new Problem(where, NameMessage.EDGE_UNKNOWN.of(a, b, shortList(), isRing ? "ring" : "strip"));
    }

    /** The same for both orders of writing an edge. */
    String sameEitherWay(Names edge) {
        List<String> ends = new ArrayList<>(edge.list());
        ends.sort(null);
        return String.join(" ", ends);
    }

    private String shortList() {
        return String.join(" ", corners.subList(0, Math.min(12, corners.size()))) + (corners.size() > 12 ? " ..." : "");
    }
}
