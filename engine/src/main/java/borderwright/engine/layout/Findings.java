package borderwright.engine.layout;

import borderwright.engine.problem.Problem;
import java.util.ArrayList;
import java.util.List;

/** What is found while one run is laid out: a notebook that the steps write in. */
final class Findings {
    private final List<Opening> openings = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private final List<Problem> unmet = new ArrayList<>();

    void opening(Opening opening) {
        openings.add(opening);
    }

    void note(String sentence) {
        notes.add(sentence);
    }

    void unmet(Problem problem) {
        unmet.add(problem);
    }

    List<Opening> openings() {
        return openings;
    }

    List<String> notes() {
        return notes;
    }

    List<Problem> unmet() {
        return unmet;
    }
}
