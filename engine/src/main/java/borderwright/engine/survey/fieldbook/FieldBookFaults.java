package borderwright.engine.survey.fieldbook;

import borderwright.engine.garden.Measure;
import borderwright.engine.garden.SurveyNotes;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.measure.Instrument;
import borderwright.engine.problem.Problem;
import borderwright.engine.survey.network.SurveyWords;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Faults of the notes that can be told without any sum: names that do not fit, counts, instruments. */
public final class FieldBookFaults {
    private final SurveyNotes notes;
    private final List<String> corners;
    private final List<Problem> problems = new ArrayList<>();

    private FieldBookFaults(SurveyNotes notes) {
        this.notes = notes;
        this.corners = notes.corners().list();
    }

    /** All such faults, in document order. */
    public static List<Problem> of(SurveyNotes notes) {
        FieldBookFaults faults = new FieldBookFaults(notes);
        faults.corners();
        faults.edges();
        for (int i = 0; i < notes.measures().size(); i++) {
            faults.measure(notes.measures().get(i), "survey.measures[" + i + "]");
        }
        return List.copyOf(faults.problems);
    }

    private void add(String code, String where, String what, String right) {
        problems.add(new Problem(code, where, what, right));
    }

    private void corners() {
        int least = notes.strip() == null ? 3 : 2;
        if (corners.size() < least) {
            String kind = notes.strip() == null ? "A border" : "A strip";
            String right = notes.strip() == null
                    ? "Name at least 3 corners in going-round order, such as A B C D; for a strip along a wall give its"
                            + " depth as `strip`."
                    : "Name the two ends of the line along the wall, and the bends between them.";
            add(
                    "too-few-corners",
                    "survey.corners",
                    kind + " has at least " + least + " corners, and " + corners.size()
                            + (corners.size() == 1 ? " is named." : " are named."),
                    right);
        }
        HashSet<String> seen = new HashSet<>();
        for (String corner : corners) {
            if (!seen.add(corner)) {
                add(
                        "corner-named-twice",
                        "survey.corners",
                        "Corner " + corner + " is named twice.",
                        "Name each corner once, in going-round order.");
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
            add(
                    "no-such-edge",
                    where,
                    "`" + edge + "` is not an edge of the border.",
                    "The edges are " + String.join(", ", EdgeRing.of(notes).words()) + ".");
        }
    }

    private void measure(Measure measure, String where) {
        if (measure instanceof Measure.TapeLength tape) {
            points(tape.tape(), 2, where + ".tape", "A tape length runs between two different points");
            lengthBy(measure.by(), where);
        } else if (measure instanceof Measure.GaugeAngle gauge) {
            points(gauge.angle(), 3, where + ".angle", "An angle is taken at the middle one of three different points");
            if (gauge.sure() == null && gauge.by() != null && gauge.by().angleSdDeg() == 0) {
                instrument(gauge.by(), "an angle", where);
            }
            reflex(gauge, where);
        } else if (measure instanceof Measure.BaselineOffset offset) {
            if (points(offset.from(), 2, where + ".from", "A baseline has two different ends")
                    && offset.from().list().contains(offset.offset())) {
                add(
                        "point-on-its-own-baseline",
                        where + ".offset",
                        "Point " + offset.offset() + " is an end of the baseline that it is measured from.",
                        "Measure it from a baseline between two other points.");
            }
            lengthBy(measure.by(), where);
        } else if (measure instanceof Measure.TapeChain chain) {
            chain(chain, where);
            lengthBy(measure.by(), where);
        } else if (measure instanceof Measure.LevelReading) {
            lengthBy(measure.by(), where);
        } else if (measure instanceof Measure.Rise rise) {
            points(rise.rise(), 2, where + ".rise", "A rise is taken between two different points");
            lengthBy(measure.by(), where);
        } else if (measure instanceof Measure.WallLean lean) {
            edge(lean.lean(), where + ".lean");
            lengthBy(measure.by(), where);
        } else if (measure instanceof Measure.ArcRise arc) {
            edge(arc.arc(), where + ".arc");
            lengthBy(measure.by(), where);
        }
    }

    private void chain(Measure.TapeChain chain, String where) {
        int points = chain.chain().size();
        if (points < 2 || new HashSet<>(chain.chain().list()).size() != points) {
            add(
                    "points-do-not-fit",
                    where + ".chain",
                    "A chain runs through different points, and `" + chain.chain() + "` does not.",
                    "Name each point once, in order along the line.");
        } else if (chain.lengths().size() != points - 1) {
            add(
                    "lengths-do-not-fit",
                    where + ".lengths",
                    "The chain " + chain.chain().first() + "-" + chain.chain().last() + " has " + points
                            + " points and " + chain.lengths().size() + " lengths.",
                    points + " points have " + (points - 1) + " lengths between them.");
        }
        for (int j = 0; j < chain.lengths().size(); j++) {
            if (chain.lengths().get(j).ticks() <= 0) {
                add(
                        "length-not-positive",
                        where + ".lengths[" + j + "]",
                        "A length between two points of a chain is "
                                + chain.lengths().get(j) + ".",
                        "It is more than 0.");
            }
        }
    }

    private void reflex(Measure.GaugeAngle gauge, String where) {
        boolean threeCorners =
                gauge.angle().size() == 3 && corners.containsAll(gauge.angle().list());
        if (gauge.is().degrees() > 180 && !threeCorners) {
            add(
                    "reflex-angle-not-at-corners",
                    where + ".is",
                    "An angle of " + SurveyWords.degrees(gauge.is().degrees())
                            + " is one inside the border, but not all its points are corners.",
                    "Give the smaller angle between the two directions, "
                            + SurveyWords.degrees(360 - gauge.is().degrees()) + ".");
        }
    }

    private boolean points(Names names, int count, String where, String rule) {
        boolean fits = names.size() == count && new HashSet<>(names.list()).size() == count;
        if (!fits) {
            add(
                    "points-do-not-fit",
                    where,
                    rule + ", and `" + names + "` is not that.",
                    "Write it like `" + (count == 2 ? "A B" : "A B C") + "`.");
        }
        return fits;
    }

    private void lengthBy(@Nullable Instrument by, String where) {
        if (by != null && by.lengthSdMm(1000) == 0) {
            instrument(by, "a length", where);
        }
    }

    private void instrument(Instrument by, String what, String where) {
        String name = by.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
        add(
                "wrong-instrument",
                where + ".by",
                "A " + name + " does not take " + what + ".",
                "Say what it was taken with, or how sure it is.");
    }
}
