package borderwright.engine.survey;

import borderwright.engine.garden.SurveyNotes;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** From what was measured to the border as it lies: the one question that this stage answers. */
public final class BorderSurvey {
    /** A corner whose ellipse is longer than this share of the border is called not held. */
    private static final double HELD_SHARE = 0.1;

    private final FieldBook book;
    private final SurveyWords words;

    private BorderSurvey(FieldBook book, SurveyWords words) {
        this.book = book;
        this.words = words;
    }

    /** As {@link #adjust(SurveyNotes, UnitSystem)}, with sentences in metric units. */
    public static SurveyAnswer adjust(SurveyNotes notes) {
        return adjust(notes, UnitSystem.METRIC);
    }

    /**
     * The border that fits the measures best, or why they do not fix one.
     *
     * @param units how lengths inside sentences are written; all figures are mm and degrees either way
     */
    public static SurveyAnswer adjust(SurveyNotes notes, UnitSystem units) {
        List<Problem> faults = SurveyFaults.of(notes);
        if (!faults.isEmpty()) {
            return new SurveyAnswer.NotFixed(faults);
        }
        FieldBook book = FieldBook.of(notes);
        List<Problem> problems = new ArrayList<>(book.problems());
        SurveyWords words = SurveyWords.in(units);
        problems.addAll(new Refusals(book, words).notHeld());
        if (!problems.isEmpty()) {
            return new SurveyAnswer.NotFixed(problems);
        }
        return new BorderSurvey(book, words).adjust();
    }

    private SurveyAnswer adjust() {
        ShapeFinder finder = new ShapeFinder(book.network(), book.order());
        List<ShapeFinder.Shape> shapes = finder.find();
        Refusals refusals = new Refusals(book, words);
        if (shapes.isEmpty()) {
            return new SurveyAnswer.NotFixed(List.of(refusals.noShape(finder.wrongWayRound())));
        }
        Optional<Problem> mirror = refusals.twoShapes(finder, shapes);
        if (mirror.isPresent()) {
            return new SurveyAnswer.NotFixed(List.of(mirror.get()));
        }
        Adjustment laid = Frame.laid(shapes.get(0).adjustment(), book);
        List<Problem> weak = refusals.weak(laid, HELD_SHARE);
        if (!weak.isEmpty()) {
            return new SurveyAnswer.NotFixed(weak);
        }
        OutlineMaker maker = new OutlineMaker(book, laid, words);
        Optional<Outline> outline = maker.make();
        if (outline.isEmpty()) {
            return new SurveyAnswer.NotFixed(maker.problems());
        }
        return new SurveyAnswer.Adjusted(outline.get(), new ReportMaker(book, laid, words).make(outline.get()));
    }
}
