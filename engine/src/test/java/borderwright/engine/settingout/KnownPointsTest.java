package borderwright.engine.settingout;

import static borderwright.engine.settingout.PegListTest.OUTLINE;
import static borderwright.engine.settingout.PegListTest.REACH_MM;
import static borderwright.engine.settingout.PegListTest.box;
import static borderwright.engine.settingout.PegListTest.point;
import static borderwright.engine.settingout.PegListTest.survey;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.geometry.Ring;
import borderwright.engine.survey.checks.SurveyReport;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The points that the tapes are hooked at can be found again from what is printed of them. */
class KnownPointsTest {
    @Test
    void aStationIsGivenAlongAndOffTheEdgeThatItStandsAt() {
        SurveyReport survey = survey(point("A", 0, 0), point("B", 9605, 0), point("P", 4000, 250));

        KnownPoints known = PegList.of(survey, OUTLINE, List.of(box(Ring.rectangle(2500, 900, 4000, 1900))), REACH_MM)
                .known();

        assertThat(known.stations())
                .containsExactly(new KnownPoints.Station("P", new PegList.Offset("A", "B", 4000, 250, TapeSide.LEFT)));
        assertThat(known.lengths()).containsExactly(new KnownPoints.Length("A", "B", 9605));
    }

    @Test
    void lengthsFixTheShapeOfFourCorners() {
        SurveyReport survey =
                survey(point("A", 0, 0), point("B", 9605, 0), point("C", 9605, 3000), point("D", 0, 3000));
        // Each corner of the border is the nearest to a corner of this box.
        KnownPoints known = PegList.of(survey, OUTLINE, List.of(box(Ring.rectangle(700, 900, 9000, 2300))), REACH_MM)
                .known();

        assertThat(known.lengths())
                .extracting(length -> length.from() + length.to())
                .containsExactly("AB", "BC", "CD", "AC", "AD");
        assertThat(known.lengths().get(3).lengthMm()).isCloseTo(StrictMath.hypot(9605, 3000), within(1e-9));
    }
}
