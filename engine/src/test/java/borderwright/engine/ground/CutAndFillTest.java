package borderwright.engine.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.geometry.Point;
import borderwright.engine.ground.SurfaceMesh.Facet;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class CutAndFillTest {
    private static Facet facet(Point a, double za, Point b, double zb, Point c, double zc) {
        return new Facet(a, b, c, za, zb, zc);
    }

    /** A flat-topped or pointed roof: a rectangle at nought, a smaller one above it, planes between. */
    private static SurfaceMesh frustum(double l, double w, double topL, double topW, double h) {
        Point[] low = corners(l, w);
        Point[] high = corners(topL, topW);
        List<Facet> facets = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            int j = (i + 1) % 4;
            facets.add(facet(low[i], 0, low[j], 0, high[j], h));
            facets.add(facet(low[i], 0, high[j], h, high[i], h));
        }
        facets.add(facet(high[0], h, high[1], h, high[2], h));
        facets.add(facet(high[0], h, high[2], h, high[3], h));
        return new SurfaceMesh(facets);
    }

    private static Point[] corners(double l, double w) {
        return new Point[] {
            new Point(-l / 2, -w / 2), new Point(l / 2, -w / 2), new Point(l / 2, w / 2), new Point(-l / 2, w / 2)
        };
    }

    @Nested
    class Published {
        @Test
        @DisplayName(
                "pyramid 8 x 6, 10 high: 160, end areas would say 240 (prismoidal worked examples, forum thread 13022)")
        void pyramid() {
            assertThat(frustum(8, 6, 0, 0, 10).against(0, 0).cutMm3()).isCloseTo(160, within(1e-9));
        }

        @Test
        @DisplayName("rectangular prism 12 x 4 x 6: 288.000 (the same examples)")
        void prism() {
            assertThat(frustum(12, 4, 12, 4, 6).against(0, 0).cutMm3()).isCloseTo(288, within(0.0005));
        }

        @Test
        @DisplayName(
                "frustum 4 x 4 to 2 x 2 over 3: prismoidal 28, which is exact; average end area 30 (prismoidal rule"
                        + " L (A1 + 4 Am + A2) / 6, average end area L (A1 + A2) / 2)")
        void frustumIsPrismoidal() {
            double cut = frustum(4, 4, 2, 2, 3).against(0, 0).cutMm3();
            assertThat(cut).isCloseTo(3 * (16 + 4 * 9 + 4) / 6.0, within(1e-9));
            assertThat(cut).isNotCloseTo(3 * (16 + 4) / 2.0, within(1.0));
        }

        @Test
        @DisplayName("spot heights over triangles: V = (A / 3) sum N h (plane-survey pages, volumes from spot heights)")
        void spotHeights() {
            double[][] h = {{1.2, 1.4, 1.5}, {1.0, 1.3, 1.6}, {0.8, 0.9, 1.1}};
            // N: how many triangles meet at each spot when every square is cut from low left to high right.
            int[][] n = {{2, 3, 1}, {3, 6, 3}, {1, 3, 2}};
            double sum = 0;
            List<Facet> facets = new ArrayList<>();
            for (int r = 0; r < 3; r++) {
                for (int c = 0; c < 3; c++) {
                    sum += n[r][c] * h[r][c];
                    if (r < 2 && c < 2) {
                        Point low = new Point(2 * c, 2 * r);
                        Point high = new Point(2 * c + 2, 2 * r + 2);
                        facets.add(
                                facet(low, h[r][c], new Point(2 * c + 2, 2 * r), h[r][c + 1], high, h[r + 1][c + 1]));
                        facets.add(
                                facet(low, h[r][c], high, h[r + 1][c + 1], new Point(2 * c, 2 * r + 2), h[r + 1][c]));
                    }
                }
            }
            assertThat(new SurfaceMesh(facets).against(0, 0).cutMm3()).isCloseTo(2.0 / 3 * sum, within(1e-12));
        }
    }

    @Nested
    class Limits {
        @Test
        void aRampFromCutToFillSplitsWhereItCrosses() {
            // Exact: cut area h1^2 L / 2 (h1 + h2), fill h2^2 L / 2 (h1 + h2), times the width.
            Point a = new Point(0, 0);
            Point b = new Point(10, 0);
            Point c = new Point(10, 4);
            Point d = new Point(0, 4);
            CutAndFill ramp =
                    new SurfaceMesh(List.of(facet(a, 3, b, -2, c, -2), facet(a, 3, c, -2, d, 3))).against(0, 0);
            assertThat(ramp.cutMm3()).isCloseTo(4 * 9 * 10 / 10.0, within(1e-12));
            assertThat(ramp.fillMm3()).isCloseTo(4 * 4 * 10 / 10.0, within(1e-12));
        }

        @Test
        void groundJustAtTheLevelIsNeitherCutNorFilled() {
            assertThat(CutAndFill.under(6, 0, 0, 0)).isEqualTo(CutAndFill.NONE);
            assertThat(CutAndFill.under(6, 1, 0, 0)).isEqualTo(new CutAndFill(2, 0));
            assertThat(CutAndFill.under(6, -1, 0, 0)).isEqualTo(new CutAndFill(0, 2));
            assertThat(CutAndFill.under(6, 1, 1, 0)).isEqualTo(new CutAndFill(4, 0));
            assertThat(CutAndFill.under(6, 1, -1, 0).cutMm3()).isCloseTo(1, within(1e-15));
            assertThat(CutAndFill.under(6, 1, -1, 0).fillMm3()).isCloseTo(1, within(1e-15));
        }

        @Test
        void strippingALayerLowersTheGround() {
            assertThat(frustum(12, 4, 12, 4, 6).against(0, 2).cutMm3()).isCloseTo(192, within(1e-9));
        }
    }
}
