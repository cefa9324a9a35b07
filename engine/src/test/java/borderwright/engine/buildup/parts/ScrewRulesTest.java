package borderwright.engine.buildup.parts;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.measure.UnitSystem;
import org.junit.jupiter.api.Test;

class ScrewRulesTest {
    private static final double INCH = 25.4;

    private final ScrewRules imperial = new ScrewRules(UnitSystem.IMPERIAL);

    /** NDS 2018, 12.1.5.6: a point less than 6 diameters deep bears nothing sideways; 1 in is 5.3 of a no. 10, 6.1 of a no. 8. */
    @Test
    void aScrewThatCannotReachSixDiametersIsAThinnerOne() {
        ScrewRules.Screw screw = imperial.screw(1.5 * INCH, 1.25 * INCH);

        assertThat(screw.item()).isEqualTo("screw #8 x 2-1/2 in");
        assertThat(screw.lengthMm() - 1.5 * INCH).isGreaterThanOrEqualTo(6 * screw.diameterMm());
    }

    /** The same clause: 1-1/4 in is 6.6 of a no. 10; of a no. 14 through 2 in only no. 8 reaches deep enough into 1-1/2 in. */
    @Test
    void aScrewStaysInTheWoodAndReachesSixDiameters() {
        assertThat(imperial.screw(1.5 * INCH, 1.5 * INCH).item()).isEqualTo("screw #10 x 2-3/4 in");
        assertThat(imperial.screw(2 * INCH, 1.5 * INCH).item()).isEqualTo("screw #8 x 3 in");
    }

    @Test
    void aScrewWithRoomBehindItKeepsTheDiameterOfItsBoard() {
        assertThat(imperial.screw(1.5 * INCH, 3.5 * INCH).item()).isEqualTo("screw #10 x 3-1/2 in");
    }
}
