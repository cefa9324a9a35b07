package borderwright.engine.planting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.TestBoxes;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.garden.given.GivenGround;
import borderwright.engine.garden.given.GivenSurvey;
import borderwright.engine.garden.resolve.GroundResolver;
import borderwright.engine.garden.resolve.SoilResolver;
import borderwright.engine.garden.resolve.SurveyResolver;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.garden.vocabulary.ground.GroundSurface;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.ground.GroundPlan;
import borderwright.engine.ground.GroundWork;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.English;
import borderwright.engine.survey.GroundHeights;
import borderwright.engine.survey.Outline;
import borderwright.engine.survey.OutlineEdge;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Larch boards 150 mm wide; the front of each box runs along x. */
class RimHeightTest {
    private static final double BELOW_RIM_MM = 30;

    private static Box box(String name, double bedMm, double heightMm) {
        return TestBoxes.box(name, Ring.rectangle(1000, 500, 3000, 1500), bedMm, heightMm, 0);
    }

    /** Ground at the datum at x = 0, that lower at x = 5 m. */
    private static RimHeight rim(Box box, GroundSurface surface, double fallMm) {
        GroundHeights ground = new GroundHeights(List.of(
                new GroundHeights.Spot("A", new Point(0, 0), 0, 3),
                new GroundHeights.Spot("B", new Point(5000, 0), -fallMm, 3),
                new GroundHeights.Spot("C", new Point(5000, 2000), -fallMm, 3),
                new GroundHeights.Spot("D", new Point(0, 2000), 0, 3)));
        Outline outline = new Outline(
                Ring.rectangle(0, 0, 5000, 2000),
                List.of("A", "B", "C", "D"),
                Collections.nCopies(4, new OutlineEdge(EdgeKind.OPEN, 0, 0, 0)),
                ground);
        GroundPlan plan = GroundWork.plan(
                List.of(box),
                outline,
                SurveyResolver.survey(
                        GivenSurvey.builder(Names.of("A", "B", "C", "D")).build()),
                GroundResolver.resolve(GivenGround.builder().surface(surface).build()),
                SoilResolver.usual(),
                10,
                new LengthFormat(UnitSystem.METRIC));
        return RimHeight.of(box, plan.boxes().get(0), box.soilDepthMm() - BELOW_RIM_MM, 610, 865);
    }

    @Test
    void onLevelGroundTheRimIsTheWallAsBuilt() {
        RimHeight rim = rim(box("F1", 0, 450), GroundSurface.LAWN, 0);

        assertThat(rim.wallMm()).isCloseTo(450, within(1e-9));
        assertThat(rim.soilMm()).isCloseTo(420, within(1e-9));
        assertThat(English.METRIC.text(rim.rim().inWords())).isEqualTo("450 mm");
        assertThat(rim.isOffRequest()).isFalse();
        assertThat(rim.suits()).as("450 mm for a seated gardener").isFalse();
    }

    @Test
    void onASlopeTheRimFallsShortOfTheWallWhereItIsDugIn() {
        // Ground from 20 to 60 mm below the datum along the front; bed at 60 below.
        RimHeight rim = rim(box("F1", -60, 450), GroundSurface.LAWN, 100);

        assertThat(rim.rim().leastMm()).isCloseTo(410, within(1e-6));
        assertThat(rim.rim().mostMm()).isCloseTo(450, within(1e-6));
        assertThat(English.METRIC.text(rim.rim().inWords())).isEqualTo("410 mm to 450 mm");
        assertThat(rim.isOffRequest()).as("40 mm of courses of 150 mm").isTrue();
    }

    @Test
    void feetAndWholeCoursesBothRaiseTheRim() {
        // Five courses make 750 mm for 700; feet from 30 to 70 mm carry them.
        RimHeight rim = rim(box("F1", 10, 700), GroundSurface.PAVING, 100);

        assertThat(rim.requestedMm()).isEqualTo(700);
        assertThat(rim.wallMm()).isCloseTo(750, within(1e-9));
        assertThat(rim.rim().leastMm()).isCloseTo(780, within(1e-6));
        assertThat(rim.rim().mostMm()).isCloseTo(820, within(1e-6));
        assertThat(rim.isOffRequest()).isTrue();
        assertThat(rim.suits()).as("780 to 820 mm for a seated gardener").isTrue();
    }

    @Test
    void boxesOfOneWallAreGivenTogether() {
        RimHeight high = rim(box("F1", 10, 700), GroundSurface.PAVING, 100);
        RimHeight low = rim(box("F2", 0, 700), GroundSurface.PAVING, 100);
        RimHeight other = rim(box("F3", 0, 450), GroundSurface.PAVING, 100);

        List<RimHeight> together = RimHeight.together(List.of(high, other, low));

        assertThat(together).hasSize(2);
        assertThat(together.get(0).boxes()).containsExactly("F1", "F2");
        assertThat(together.get(0).rim().leastMm()).isCloseTo(770, within(1e-6));
        assertThat(together.get(0).rim().mostMm()).isCloseTo(820, within(1e-6));
        assertThat(together.get(1)).isEqualTo(other);
    }
}
