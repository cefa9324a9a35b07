package borderwright.engine.survey;

import borderwright.engine.effort.WorkListener;
import borderwright.engine.garden.SurveySpec;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.problem.Problem;
import borderwright.engine.survey.checks.SurveyRefusals;
import borderwright.engine.survey.checks.SuspectFinder;
import borderwright.engine.survey.checks.SuspectFinder.Hypothesis;
import borderwright.engine.survey.fieldbook.FieldBook;
import borderwright.engine.survey.fieldbook.FieldBookFaults;
import borderwright.engine.survey.network.Adjustment;
import borderwright.engine.survey.shape.ShapeFinder;
import borderwright.engine.survey.shape.ShapeFinder.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** From what was measured to the border as it lies: the one question that this stage answers. */
public final class BorderSurvey {
    /** A corner whose ellipse is longer than this share of the border is called not held. */
    private static final double HELD_SHARE = 0.025;

    private final FieldBook book;
    private final UnitSystem units;
    private final WorkListener listener;

    private BorderSurvey(FieldBook book, UnitSystem units, WorkListener listener) {
        this.book = book;
        this.units = units;
        this.listener = listener;
    }

    /** As {@link #adjust(SurveySpec, UnitSystem, WorkListener)}, for a tape in millimetres. */
    public static SurveyAnswer adjust(SurveySpec notes) {
        return adjust(notes, UnitSystem.METRIC, WorkListener.NONE);
    }

    /**
     * The border that fits the measures best, or why they do not fix one.
     *
     * @param units of the tape where a length read fits both systems: they decide which slips of reading are likely
     * @param listener hears of each shape that is settled, and of each reading that is left out
     */
    public static SurveyAnswer adjust(SurveySpec notes, UnitSystem units, WorkListener listener) {
        List<Problem> faults = FieldBookFaults.of(notes);
        if (!faults.isEmpty()) {
            return new SurveyAnswer.NotFixed(faults);
        }
        FieldBook book = FieldBook.of(notes);
        List<Problem> problems = new ArrayList<>(book.problems());
        if (problems.isEmpty()) {
            problems.addAll(new SurveyRefusals(book).notHeld());
        }
        if (!problems.isEmpty()) {
            return new SurveyAnswer.NotFixed(problems);
        }
        return new BorderSurvey(book, units, listener).adjust();
    }

    private SurveyAnswer adjust() {
        ShapeFinder finder = new ShapeFinder(book.network(), book.order(), listener);
        List<Shape> shapes = finder.find();
        SurveyRefusals refusals = new SurveyRefusals(book);
        if (shapes.isEmpty() || (!shapes.get(0).agrees() && finder.agreesTheWrongWayRound())) {
            return new SurveyAnswer.NotFixed(List.of(refusals.noShape(finder.wrongWayRound())));
        }
        Optional<Problem> mirror = refusals.twoShapes(shapes);
        if (mirror.isPresent()) {
            return new SurveyAnswer.NotFixed(List.of(mirror.get()));
        }
        Shape shape = shapes.get(0);
        List<Hypothesis> suspects = new SuspectFinder(book, shape, book.risk(), listener).find();
        Adjustment laid = PlanFrame.laid(settled(shape, suspects), book);
        List<Problem> weak = refusals.weak(laid, HELD_SHARE);
        if (!weak.isEmpty()) {
            return new SurveyAnswer.NotFixed(weak);
        }
        OutlineMaker maker = new OutlineMaker(book, laid);
        Optional<Outline> outline = maker.make();
        if (outline.isEmpty()) {
            return new SurveyAnswer.NotFixed(maker.problems());
        }
        return new SurveyAnswer.Adjusted(
                outline.get(), new ReportMaker(book, laid, suspects, units).make(outline.get()));
    }

    /**
     * The border as adjusted to all readings; but a reading that is named as wrong, or that bends the border out of
     * shape, is set aside (decision record 0011).
     */
    private Adjustment settled(Shape shape, List<Hypothesis> suspects) {
        boolean setAside = SuspectFinder.isNamed(suspects) || (shape.all().isEmpty() && !suspects.isEmpty());
        return setAside ? suspects.get(0).setAside(book.network()) : shape.best();
    }
}
