package borderwright.engine.survey.fieldbook;

import borderwright.engine.garden.SurveySpec;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.garden.vocabulary.RingDirection;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The edges of a border's ring, in anticlockwise order, by the names of their corners.
 *
 * @param ring names of all corners of the outline, anticlockwise; for a strip the corners along the wall come first
 * @param measured how many of them were measured: all, or for a strip those along the wall
 */
public record EdgeRing(List<String> ring, int measured) {
    /** Ends the name of a corner that the program made. */
    private static final String FRONT = "'";

    public EdgeRing {
        ring = List.copyOf(ring);
    }

    static EdgeRing of(SurveySpec notes) {
        List<String> measured = anticlockwise(notes);
        List<String> ring = new ArrayList<>(measured);
        if (notes.isStrip()) {
            for (int i = measured.size() - 1; i >= 0; i--) {
                ring.add(front(measured.get(i)));
            }
        }
        return new EdgeRing(ring, measured.size());
    }

    /** Name of the front corner of a strip that lies square off a corner along the wall. */
    static String front(String corner) {
        return corner + FRONT;
    }

    /** Whether a corner was made by the program, so that nothing marks it on the ground. */
    public static boolean isFront(String name, List<String> corners) {
        return name.endsWith(FRONT) && corners.contains(name.substring(0, name.length() - FRONT.length()));
    }

    /**
     * The named corners turned to go round anticlockwise. A ring named clockwise is turned so that its first named edge
     * stays its first edge.
     */
    private static List<String> anticlockwise(SurveySpec notes) {
        List<String> corners = new ArrayList<>(notes.corners().list());
        if (notes.goingRound() == RingDirection.CLOCKWISE) {
            Collections.reverse(corners);
            if (!notes.isStrip() && corners.size() > 2) {
                Collections.rotate(corners, 2);
            }
        }
        return List.copyOf(corners);
    }

    public int size() {
        return ring.size();
    }

    public String from(int edge) {
        return ring.get(edge);
    }

    public String to(int edge) {
        return ring.get((edge + 1) % ring.size());
    }

    /** Number of the edge between two corners, named in either order; -1 when there is none. */
    public int number(Names corners) {
        for (int i = 0; i < size() && corners.size() == 2; i++) {
            boolean along = from(i).equals(corners.first()) && to(i).equals(corners.last());
            boolean back = from(i).equals(corners.last()) && to(i).equals(corners.first());
            if (along || back) {
                return i;
            }
        }
        return -1;
    }

    /** Each edge by its corners, such as {@code A B}. */
    List<String> names() {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < size(); i++) {
            names.add(from(i) + " " + to(i));
        }
        return names;
    }
}
