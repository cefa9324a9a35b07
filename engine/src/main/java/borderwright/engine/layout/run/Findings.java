package borderwright.engine.layout.run;

import borderwright.engine.message.Message;
import borderwright.engine.problem.Problem;
import borderwright.engine.survey.Outline;
import java.util.ArrayList;
import java.util.List;

/** What is found while runs are laid out; each step adds to it. */
public final class Findings {
    private final LayoutProblems problemMaker;
    private final LayoutNotes noteMaker;
    private final List<OpenPlace> openings = new ArrayList<>();
    private final List<Message> notes = new ArrayList<>();
    private final List<Problem> unmet = new ArrayList<>();

    public Findings(Outline outline) {
        this.problemMaker = new LayoutProblems(outline);
        this.noteMaker = new LayoutNotes(outline);
    }

    public LayoutProblems problemMaker() {
        return problemMaker;
    }

    public LayoutNotes noteMaker() {
        return noteMaker;
    }

    public void opening(OpenPlace place) {
        openings.add(place);
    }

    public void note(Message note) {
        notes.add(note);
    }

    /** Of facets of one curve the same may be found several times: it is reported once. */
    public void unmet(Problem problem) {
        if (!unmet.contains(problem)) {
            unmet.add(problem);
        }
    }

    public List<OpenPlace> openings() {
        return openings;
    }

    public List<Message> notes() {
        return notes;
    }

    public List<Problem> unmet() {
        return unmet;
    }
}
