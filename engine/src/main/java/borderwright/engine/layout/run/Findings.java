package borderwright.engine.layout.run;

import borderwright.engine.problem.Problem;
import java.util.ArrayList;
import java.util.List;

/** What is found while one run is laid out: a notebook that the steps write in. */
public final class Findings {
    private final List<OpenPlace> openings = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private final List<Problem> unmet = new ArrayList<>();

    public void opening(OpenPlace place) {
        openings.add(place);
    }

    public void note(String sentence) {
        notes.add(sentence);
    }

    /** Of facets of one curve the same may be found several times: it is said once. */
    public void unmet(Problem problem) {
        if (!unmet.contains(problem)) {
            unmet.add(problem);
        }
    }

    public List<OpenPlace> openings() {
        return openings;
    }

    public List<String> notes() {
        return notes;
    }

    public List<Problem> unmet() {
        return unmet;
    }
}
