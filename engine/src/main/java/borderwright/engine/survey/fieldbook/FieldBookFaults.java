package borderwright.engine.survey.fieldbook;

import borderwright.engine.garden.Measure;
import borderwright.engine.garden.SurveySpec;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.measure.Instrument;
import borderwright.engine.measure.Length;
import borderwright.engine.message.Message;
import borderwright.engine.problem.Problem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Faults of the notes that show without any calculation: names that do not fit, counts, instruments. */
public final class FieldBookFaults {
    private final SurveySpec notes;
    private final List<String> corners;
    private final List<Problem> problems = new ArrayList<>();

    private FieldBookFaults(SurveySpec notes) {
        this.notes = notes;
        this.corners = notes.corners().list();
    }

    /** All such faults, in document order. */
    public static List<Problem> of(SurveySpec notes) {
        FieldBookFaults faults = new FieldBookFaults(notes);
        faults.corners();
        faults.edges();
        for (int i = 0; i < notes.measures().size(); i++) {
            faults.measure(notes.measures().get(i), "survey.measures[" + i + "]");
        }
        return List.copyOf(faults.problems);
    }

    private void add(String where, Message message) {
        problems.add(new Problem(where, message));
    }

    private void corners() {
        boolean strip = notes.isStrip();
        if (corners.size() < (strip ? 2 : 3)) {
            FieldBookMessage tooFew =
                    strip ? FieldBookMessage.TOO_FEW_CORNERS_OF_A_STRIP : FieldBookMessage.TOO_FEW_CORNERS;
            add("survey.corners", tooFew.of(corners.size()));
        }
        HashSet<String> seen = new HashSet<>();
        for (String corner : corners) {
            if (!seen.add(corner)) {
                add("survey.corners", FieldBookMessage.CORNER_NAMED_TWICE.of(corner));
            }
        }
    }

    private void edges() {
        for (int i = 0; i < notes.edges().size(); i++) {
            edge(notes.edges().get(i).edge(), "survey.edges[" + i + "].edge");
        }
    }

    private void edge(Names edge, String where) {
        if (EdgeRing.of(notes).number(edge) < 0) {
            List<String> edges = EdgeRing.of(notes).names();
            add(where, FieldBookMessage.NO_SUCH_EDGE.of(edge.toString(), edges));
        }
    }

    private void measure(Measure measure, String where) {
        if (measure instanceof Measure.TapeLength tape) {
            points(tape.tape(), 2, where + ".tape", FieldBookMessage.POINTS_OF_TAPE_DO_NOT_FIT);
            lengthBy(measure.with(), where);
        } else if (measure instanceof Measure.GaugeAngle gauge) {
            points(gauge.angle(), 3, where + ".angle", FieldBookMessage.POINTS_OF_ANGLE_DO_NOT_FIT);
            if (gauge.sdRad() == 0) {
                gauge.with().ifPresent(with -> instrument(with, FieldBookMessage.WRONG_INSTRUMENT_FOR_AN_ANGLE, where));
            }
            reflex(gauge, where);
        } else if (measure instanceof Measure.BaselineOffset offset) {
            if (points(offset.baseline(), 2, where + ".baseline", FieldBookMessage.POINTS_OF_BASELINE_DO_NOT_FIT)
                    && offset.baseline().list().contains(offset.offset())) {
                add(where + ".offset", FieldBookMessage.POINT_ON_ITS_OWN_BASELINE.of(offset.offset()));
            }
            lengthBy(measure.with(), where);
        } else if (measure instanceof Measure.TapeChain chain) {
            chain(chain, where);
            lengthBy(measure.with(), where);
        } else if (measure instanceof Measure.LevelReading) {
            lengthBy(measure.with(), where);
        } else if (measure instanceof Measure.Rise rise) {
            points(rise.rise(), 2, where + ".rise", FieldBookMessage.POINTS_OF_RISE_DO_NOT_FIT);
            lengthBy(measure.with(), where);
        } else if (measure instanceof Measure.WallLean lean) {
            edge(lean.lean(), where + ".lean");
            lengthBy(measure.with(), where);
        } else if (measure instanceof Measure.ArcReading arc) {
            edge(arc.arc(), where + ".arc");
            lengthBy(measure.with(), where);
        }
    }

    private void chain(Measure.TapeChain chain, String where) {
        Names names = chain.chain();
        int points = names.size();
        int lengths = chain.lengths().size();
        if (points < 2 || new HashSet<>(names.list()).size() != points) {
            add(where + ".chain", FieldBookMessage.POINTS_OF_CHAIN_DO_NOT_FIT.of(names.toString()));
        } else if (lengths != points - 1) {
            String ends = names.first() + "-" + names.last();
            add(where + ".lengths", FieldBookMessage.LENGTHS_DO_NOT_FIT.of(ends, points, lengths, points - 1));
        }
        for (int j = 0; j < lengths; j++) {
            Length length = chain.lengths().get(j).length();
            if (length.ticks() <= 0) {
                add(where + ".lengths[" + j + "]", FieldBookMessage.LENGTH_NOT_POSITIVE.of(length.mm()));
            }
        }
    }

    private void reflex(Measure.GaugeAngle gauge, String where) {
        double degrees = gauge.reads().degrees();
        boolean threeCorners =
                gauge.angle().size() == 3 && corners.containsAll(gauge.angle().list());
        if (degrees > 180 && !threeCorners) {
            add(where + ".reads", FieldBookMessage.REFLEX_ANGLE_NOT_AT_CORNERS.of(degrees, 360 - degrees));
        }
    }

    private boolean points(Names names, int count, String where, FieldBookMessage fault) {
        boolean fits = names.size() == count && new HashSet<>(names.list()).size() == count;
        if (!fits) {
            add(where, fault.of(names.toString()));
        }
        return fits;
    }

    private void lengthBy(Optional<Instrument> with, String where) {
        with.filter(instrument -> instrument.lengthSdMm(1000) == 0)
                .ifPresent(wrong -> instrument(wrong, FieldBookMessage.WRONG_INSTRUMENT_FOR_A_LENGTH, where));
    }

    private void instrument(Instrument by, FieldBookMessage fault, String where) {
        String asInTheDocument = by.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        add(where + ".with", fault.of(asInTheDocument));
    }
}
