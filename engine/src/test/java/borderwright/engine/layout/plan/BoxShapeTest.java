package borderwright.engine.layout.plan;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.buildup.Footprints;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class BoxShapeTest {
    private static final Ring RING = Ring.rectangle(0, 0, 2400, 600);

    private static BoxShape of(Ring ring, double heightMm) {
        return BoxShape.of(Footprints.plan(ring, heightMm));
    }

    private static Ring turned(Ring ring, double rad, double xMm, double yMm) {
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            Point p = ring.corner(i);
            corners.add(new Point(
                    xMm + p.xMm() * Math.cos(rad) - p.yMm() * Math.sin(rad),
                    yMm + p.xMm() * Math.sin(rad) + p.yMm() * Math.cos(rad)));
        }
        return new Ring(corners);
    }

    @Test
    void aBoxTurnedAndShiftedHasTheSameShape() {
        assertThat(of(turned(RING, 0.7, 5000, -300), 450)).isEqualTo(of(RING, 450));
    }

    @Test
    void lessThanATenthOfAMillimetreMakesNoOtherShape() {
        assertThat(of(Ring.rectangle(0, 0, 2400.04, 600), 450)).isEqualTo(of(RING, 450));
        assertThat(of(Ring.rectangle(0, 0, 2400.2, 600), 450)).isNotEqualTo(of(RING, 450));
    }

    @Test
    void heightFloorAndCappingBelongToTheShape() {
        BoxShape plain = of(RING, 450);
        assertThat(of(RING, 451)).isNotEqualTo(plain);
        assertThat(BoxShape.of(Footprints.plan(RING, List.of(), 450, 150, false)))
                .isNotEqualTo(plain);
        assertThat(BoxShape.of(Footprints.plan(RING, List.of(), 450, 0, true))).isNotEqualTo(plain);
    }

    @Test
    void aDividerElsewhereMakesAnotherShape() {
        BoxShape middle = BoxShape.of(Footprints.run(2400, 600, 450, 1200));
        assertThat(BoxShape.of(Footprints.run(2400, 600, 450, 1200.04))).isEqualTo(middle);
        assertThat(BoxShape.of(Footprints.run(2400, 600, 450, 1210))).isNotEqualTo(middle);
        assertThat(of(RING, 450)).isNotEqualTo(middle);
    }
}
