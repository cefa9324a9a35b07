package borderwright.engine.survey;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.survey.checks.SurveyReport;
import borderwright.engine.survey.checks.SurveyReport.SurveyedPoint;
import borderwright.engine.survey.checks.SurveyReport.Verdict;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What is claimed of seeded surveys with no slip, one and two, beside the border as it is. */
class ClaimsOfSeededSurveysTest {
    /** Room at an edge that keeps no gap, mm; and three standard deviations of what chance does. */
    private static final double ROOM_MM = 50;

    private static final double DEVIATIONS = 3;

    /** How planted slips fare. */
    private enum Fate {
        /** One reading is named, and it has a slip. */
        NAMED,
        /** Those with slips are among several that may be wrong. */
        LISTED,
        /** None is suspected, and the border is not claimed to hold. */
        NOT_CLAIMED,
        /** None is suspected, the border is claimed to hold, and it does within its bound. */
        HARMLESS,
        /** None is suspected, the border is claimed to hold, and it does not. */
        FALSELY_CLAIMED,
        WRONGLY_ACCUSED,
        LISTED_WITHOUT,
        REFUSED
    }

    @Test
    void aThousandWithOneTapeOff() {
        Map<Fate, Integer> fates = fates(10_000, 1000, 1);
        // the border is claimed to hold where a slip shows with a chance of 80 %: of 1,000 slips few are just too small
        assertThat(fates.get(Fate.FALSELY_CLAIMED)).as("%s", fates).isLessThanOrEqualTo(5);
        assertThat(fates.get(Fate.WRONGLY_ACCUSED)).as("%s", fates).isLessThanOrEqualTo(10);
        assertThat(fates.get(Fate.NAMED) + fates.get(Fate.LISTED))
                .as("%s", fates)
                .isGreaterThanOrEqualTo(850);
    }

    @Test
    void fiveHundredWithTwoTapesOff() {
        Map<Fate, Integer> fates = fates(20_000, 500, 2);
        assertThat(fates.get(Fate.FALSELY_CLAIMED)).as("%s", fates).isLessThanOrEqualTo(5);
        // sought one at a time a sound reading was accused in 47 and only sound ones listed in 48
        assertThat(fates.get(Fate.WRONGLY_ACCUSED)).as("%s", fates).isLessThanOrEqualTo(30);
        assertThat(fates.get(Fate.LISTED_WITHOUT)).as("%s", fates).isLessThanOrEqualTo(15);
    }

    @Test
    void aThousandWithoutASlip() {
        Map<Fate, Integer> fates = fates(30_000, 1000, 0);
        assertThat(fates.get(Fate.FALSELY_CLAIMED)).as("%s", fates).isZero();
        assertThat(fates.get(Fate.WRONGLY_ACCUSED)).as("%s", fates).isLessThanOrEqualTo(15);
    }

    private static Map<Fate, Integer> fates(long firstSeed, int surveys, int slips) {
        Map<Fate, Integer> fates = new EnumMap<>(Fate.class);
        for (Fate fate : Fate.values()) {
            fates.put(fate, 0);
        }
        for (long seed = firstSeed; seed < firstSeed + surveys; seed++) {
            SeededSurvey survey = new SeededSurvey(seed, 1);
            for (int i = 0; i < slips; i++) {
                survey.withTapeOff();
            }
            fates.merge(fate(survey), 1, Integer::sum);
        }
        System.out.println(surveys + " surveys, seeds from " + firstSeed + ", with " + slips + " slips each: " + fates);
        return fates;
    }

    private static Fate fate(SeededSurvey survey) {
        if (!(BorderSurvey.adjust(survey.notes()) instanceof SurveyAnswer.Adjusted adjusted)) {
            return Fate.REFUSED;
        }
        SurveyReport report = adjusted.report();
        List<String> accused = report.suspects().candidates().stream()
                .map(c -> report.readings().get(c.reading()).where())
                .toList();
        if (accused.isEmpty()) {
            if (report.verdict() != Verdict.SHOWN) {
                return Fate.NOT_CLAIMED;
            }
            return isWithinItsBound(report, survey.truth()) ? Fate.HARMLESS : Fate.FALSELY_CLAIMED;
        }
        boolean among = accused.stream().anyMatch(survey.slipsWhere()::contains);
        if (report.suspects().named()) {
            return among ? Fate.NAMED : Fate.WRONGLY_ACCUSED;
        }
        return among ? Fate.LISTED : Fate.LISTED_WITHOUT;
    }

    /** Whether each corner lies, square to both its edges, within the room there and what chance does. */
    private static boolean isWithinItsBound(SurveyReport report, List<Point> truth) {
        List<SurveyedPoint> corners = report.points().subList(0, truth.size());
        List<Point> found = laidOver(corners.stream().map(SurveyedPoint::at).toList(), truth);
        Ring ring = new Ring(truth);
        for (int i = 0; i < truth.size(); i++) {
            Point off = found.get(i).minus(truth.get(i));
            double chance = DEVIATIONS * corners.get(i).ellipse().majorMm();
            for (int edge : new int[] {i, i + truth.size() - 1}) {
                if (Math.abs(off.cross(ring.direction(edge % truth.size()))) > ROOM_MM + chance) {
                    return false;
                }
            }
        }
        return true;
    }

    /** A figure moved and turned so that the squares of what remains to another are least. */
    private static List<Point> laidOver(List<Point> figure, List<Point> other) {
        Point middle = mean(figure);
        Point middleThere = mean(other);
        double cross = 0;
        double dot = 0;
        for (int i = 0; i < figure.size(); i++) {
            Point a = figure.get(i).minus(middle);
            Point b = other.get(i).minus(middleThere);
            cross += a.cross(b);
            dot += a.dot(b);
        }
        Point turn = new Point(dot, cross).unit();
        List<Point> laid = new ArrayList<>();
        for (Point p : figure) {
            Point a = p.minus(middle);
            laid.add(middleThere.plus(turn.times(a.xMm())).plus(turn.left().times(a.yMm())));
        }
        return laid;
    }

    private static Point mean(List<Point> points) {
        Point sum = new Point(0, 0);
        for (Point p : points) {
            sum = sum.plus(p);
        }
        return sum.times(1.0 / points.size());
    }
}
