package borderwright.engine.garden.checks;

import borderwright.engine.garden.given.GivenMeasure;
import borderwright.engine.garden.given.GivenSurvey;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.problem.Problem;
import borderwright.engine.spelling.NearestName;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Corners, edges and measures of a survey: do their names and counts fit together? */
final class SurveyChecks {
    private final GivenSurvey survey;
    private final BorderEdges edges;
    private final Map<String, Integer> mentions = new HashMap<>();
    private final Set<String> known = new LinkedHashSet<>();
    private final List<Problem> found = new ArrayList<>();
    private boolean allNamed = true;

    private SurveyChecks(GivenSurvey survey) {
        this.survey = survey;
        this.edges = new BorderEdges(survey);
    }

    static List<Problem> check(GivenSurvey survey) {
        SurveyChecks checks = new SurveyChecks(survey);
        checks.checkCorners();
        checks.checkEdges();
        checks.gatherPoints();
        List<GivenMeasure> measures = survey.measures();
        for (int i = 0; i < measures.size() && checks.found.size() < GardenChecks.MOST_FAULTS; i++) {
            checks.checkMeasure(measures.get(i), "survey.measures[" + i + "]");
        }
        return checks.found;
    }

    private void checkCorners() {
        List<String> corners = survey.corners().list();
        int least = survey.stripWidth() == null ? 3 : 2;
        if (!corners.isEmpty() && corners.size() < least) {
            report(
                    "names-count",
                    "survey.corners",
                    "A border that is a " + (least == 3 ? "closed ring" : "strip") + " has at least " + least
                            + " corners; here " + BorderEdges.count(corners.size(), "is", "are") + ".",
                    least == 3
                            ? "Name them all, or give `strip width` when the border lies along one line."
                            : "Name both ends of the line.");
        }
        reportRepeated(survey.corners(), "survey.corners", "A corner");
    }

    private void checkEdges() {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < survey.edges().size() && found.size() < GardenChecks.MOST_FAULTS; i++) {
            Names edge = survey.edges().get(i).edge();
            String where = "survey.edges[" + i + "].edge";
            edges.requireEdge(edge, where, found);
            if (edge.size() == 2 && !seen.add(edges.sameEitherWay(edge))) {
                report("name-twice", where, "The edge `" + edge + "` is described twice.", "Keep one of them.");
            }
        }
    }

    /**
     * A point is known when it is a corner, is fixed by one measure alone, or takes part in two that can fix it. A measure whose
     * names are blank may be about any point, so then nothing is said of points.
     */
    private void gatherPoints() {
        known.addAll(survey.corners().list());
        for (GivenMeasure measure : survey.measures()) {
            if (measure instanceof GivenMeasure.GivenTapeLength tape) {
                mention(tape.tape().list());
            } else if (measure instanceof GivenMeasure.GivenGaugeAngle angle) {
                mention(angle.angle().list());
            } else if (measure instanceof GivenMeasure.GivenBaselineOffset offset) {
                known.add(offset.offset());
                mention(offset.baseline().list());
            } else if (measure instanceof GivenMeasure.GivenLevelReading level) {
                allNamed &= !level.level().isBlank();
            } else if (measure instanceof GivenMeasure.GivenTapeChain chain) {
                List<String> points = chain.chain().list();
                known.addAll(points.size() > 2 ? points.subList(1, points.size() - 1) : List.of());
                mention(points);
            }
        }
        mentions.forEach((name, times) -> {
            if (times >= 2) {
                known.add(name);
            }
        });
    }

    private void mention(List<String> names) {
        allNamed &= !names.isEmpty();
        new HashSet<>(names).forEach(name -> mentions.merge(name, 1, Integer::sum));
    }

    private void checkMeasure(GivenMeasure measure, String where) {
        if (measure instanceof GivenMeasure.GivenTapeLength tape) {
            points(tape.tape(), 2, where + ".tape", "A tape length has two points");
        } else if (measure instanceof GivenMeasure.GivenGaugeAngle angle) {
            points(angle.angle(), 3, where + ".angle", "An angle has three points");
        } else if (measure instanceof GivenMeasure.GivenBaselineOffset offset) {
            checkOffset(offset, where);
        } else if (measure instanceof GivenMeasure.GivenTapeChain chain) {
            checkChain(chain, where);
        } else if (measure instanceof GivenMeasure.GivenLevelReading level) {
            requirePoints(List.of(level.level()), where + ".level");
        } else if (measure instanceof GivenMeasure.GivenRise rise) {
            points(rise.rise(), 2, where + ".rise", "A rise has two points");
        } else if (measure instanceof GivenMeasure.GivenWallLean lean) {
            edges.requireEdge(lean.lean(), where + ".lean", found);
        } else if (measure instanceof GivenMeasure.GivenArcRise arc) {
            edges.requireEdge(arc.arc(), where + ".arc", found);
        } else {
            throw new IllegalArgumentException("unknown kind of measure: " + measure);
        }
    }

    private void checkOffset(GivenMeasure.GivenBaselineOffset offset, String where) {
        points(offset.baseline(), 2, where + ".baseline", "A baseline has two ends");
        if (offset.baseline().list().contains(offset.offset())) {
            report(
                    "name-twice",
                    where + ".offset",
                    "`" + offset.offset() + "` is an end of its own baseline.",
                    "Measure it from a baseline between two other points.");
        }
    }

    private void checkChain(GivenMeasure.GivenTapeChain chain, String where) {
        int points = chain.chain().size();
        if (points == 1) {
            report("names-count", where + ".chain", "A chain has two points or more; here is 1.", "Name them all.");
        } else if (points > 1 && chain.lengths().size() != points - 1) {
            report(
                    "chain-count",
                    where + ".lengths",
                    "A chain of " + points + " points has " + BorderEdges.count(points - 1, "length", "lengths")
                            + "; here " + BorderEdges.count(chain.lengths().size(), "is", "are") + ".",
                    "Write one length between each two neighbours.");
        }
        for (int i = 0; i < chain.lengths().size(); i++) {
            if (chain.lengths().get(i).ticks() <= 0) {
                report(
                        "out-of-range",
                        where + ".lengths[" + i + "]",
                        "A length of a chain is not more than 0.",
                        "Leave the point out, or write its true length.");
            }
        }
        reportRepeated(chain.chain(), where + ".chain", "A point of a chain");
        requirePoints(chain.chain().list(), where + ".chain");
    }

    private void points(Names names, int needed, String where, String sentence) {
        if (names.size() != 0 && names.size() != needed) {
            report(
                    "names-count",
                    where,
                    sentence + "; here " + BorderEdges.count(names.size(), "name stands", "names stand") + ".",
                    "Write " + needed + " names with a space between them.");
        } else {
            reportRepeated(names, where, "A point of one measure");
        }
        requirePoints(names.list(), where);
    }

    private void requirePoints(List<String> names, String where) {
        if (!allNamed) {
            return;
        }
        for (String name : names) {
            if (!survey.corners().list().isEmpty() && !name.isBlank() && !known.contains(name)) {
                report(
                        "name-unknown",
                        where,
                        "The point `" + name + "` is named only here, so nothing fixes its place.",
                        NearestName.of(name, known)
                                .map(near -> "Perhaps you meant `" + near + "`.")
                                .orElse("Measure it from two other points, or by an offset."));
            }
        }
    }

    private void reportRepeated(Names names, String where, String subject) {
        Set<String> seen = new HashSet<>();
        for (String name : names.list()) {
            if (!seen.add(name)) {
                report("name-twice", where, subject + " is named twice: `" + name + "`.", "Name each once.");
                return;
            }
        }
    }

    private void report(String code, String where, String what, String right) {
        if (found.size() < GardenChecks.MOST_FAULTS) {
            found.add(new Problem(code, where, what, right));
        }
    }
}
