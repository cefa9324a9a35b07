package borderwright.engine.garden.checks;

import borderwright.engine.garden.given.GivenArc;
import borderwright.engine.garden.given.GivenMeasure;
import borderwright.engine.garden.given.GivenSurvey;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.message.Message;
import borderwright.engine.problem.Problem;
import borderwright.engine.spelling.NearestName;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
                    "survey.corners",
                    (least == 3 ? SurveyMessage.RING_CORNERS_TOO_FEW : SurveyMessage.STRIP_CORNERS_TOO_FEW)
                            .of(corners.size()));
        }
        repeated(survey.corners()).ifPresent(corner -> report("survey.corners", SurveyMessage.CORNER_TWICE.of(corner)));
    }

    private void checkEdges() {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < survey.edges().size() && found.size() < GardenChecks.MOST_FAULTS; i++) {
            Names edge = survey.edges().get(i).edge();
            String where = "survey.edges[" + i + "].edge";
            edges.requireEdge(edge, where, found);
            if (edge.size() == 2 && !seen.add(edges.sameEitherWay(edge))) {
                report(where, SurveyMessage.EDGE_TWICE.of(edge.toString()));
            }
        }
    }

    /**
     * A point is known when it is a corner, is fixed by one measure alone, or takes part in two that can fix it. A measure whose
     * names are blank may be about any point, so then not given of points.
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
            points(tape.tape(), 2, where + ".tape", "tape");
        } else if (measure instanceof GivenMeasure.GivenGaugeAngle angle) {
            points(angle.angle(), 3, where + ".angle", "angle");
        } else if (measure instanceof GivenMeasure.GivenBaselineOffset offset) {
            checkOffset(offset, where);
        } else if (measure instanceof GivenMeasure.GivenTapeChain chain) {
            checkChain(chain, where);
        } else if (measure instanceof GivenMeasure.GivenLevelReading level) {
            requirePoints(List.of(level.level()), where + ".level");
        } else if (measure instanceof GivenMeasure.GivenRise rise) {
            points(rise.rise(), 2, where + ".rise", "rise");
        } else if (measure instanceof GivenMeasure.GivenWallLean lean) {
            edges.requireEdge(lean.lean(), where + ".lean", found);
        } else if (measure instanceof GivenArc arc) {
            edges.requireEdge(arc.arc(), where + ".arc", found);
        } else {
            throw new IllegalArgumentException("unknown kind of measure: " + measure);
        }
    }

    private void checkOffset(GivenMeasure.GivenBaselineOffset offset, String where) {
        points(offset.baseline(), 2, where + ".baseline", "offset");
        if (offset.baseline().list().contains(offset.offset())) {
            report(where + ".offset", SurveyMessage.OFFSET_FROM_ITSELF.of(offset.offset()));
        }
    }

    private void checkChain(GivenMeasure.GivenTapeChain chain, String where) {
        int points = chain.chain().size();
        if (points == 1) {
            report(where + ".chain", SurveyMessage.CHAIN_OF_ONE_POINT.of());
        } else if (points > 1 && chain.lengths().size() != points - 1) {
            report(
                    where + ".lengths",
                    SurveyMessage.CHAIN_COUNT.of(
                            points, points - 1, chain.lengths().size()));
        }
        for (int i = 0; i < chain.lengths().size(); i++) {
            if (chain.lengths().get(i).ticks() <= 0) {
                report(where + ".lengths[" + i + "]", SurveyMessage.CHAIN_LENGTH_NOT_POSITIVE.of());
            }
        }
        reportPointTwice(chain.chain(), where + ".chain", "chain");
        requirePoints(chain.chain().list(), where + ".chain");
    }

    private void points(Names names, int needed, String where, String measure) {
        if (names.size() != 0 && names.size() != needed) {
            report(where, SurveyMessage.POINTS_COUNT.of(measure, needed, names.size()));
        } else {
            reportPointTwice(names, where, measure);
        }
        requirePoints(names.list(), where);
    }

    private void requirePoints(List<String> names, String where) {
        if (!allNamed) {
            return;
        }
        for (String name : names) {
            if (!survey.corners().list().isEmpty() && !name.isBlank() && !known.contains(name)) {
                Message cure = NearestName.perhaps(name, known).orElseGet(SurveyMessage.POINT_NEEDS_TWO_MEASURES::of);
                report(where, SurveyMessage.POINT_NOT_FIXED.of(name, cure));
            }
        }
    }

    private void reportPointTwice(Names names, String where, String measure) {
        repeated(names).ifPresent(point -> report(where, SurveyMessage.POINT_TWICE.of(measure, point)));
    }

    /** The first name that stands there a second time. */
    private static Optional<String> repeated(Names names) {
        Set<String> seen = new HashSet<>();
        return names.list().stream().filter(name -> !seen.add(name)).findFirst();
    }

    private void report(String where, Message message) {
        if (found.size() < GardenChecks.MOST_FAULTS) {
            found.add(new Problem(where, message));
        }
    }
}
