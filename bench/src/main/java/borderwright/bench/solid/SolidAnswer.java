package borderwright.bench.solid;

import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What the package found for a box: where the middle lines of its boards went and what each spring carries. */
final class SolidAnswer {
    private final SolidBox solid;
    private final Map<Integer, Point> moved;
    private final double[] forceN;

    SolidAnswer(SolidBox solid, double[] forceN, Map<Integer, Point> moved) {
        this.solid = solid;
        this.moved = moved;
        this.forceN = forceN;
    }

    /** The furthest that each side's boards come out, mm; what the box has moved and turned as one is taken off. */
    List<Double> bowsMm() {
        double[] common = common();
        List<SideFrame> sides = SideFrame.of(solid.box.plan().outline());
        List<Double> most = new ArrayList<>();
        for (SideFrame side : sides) {
            double bow = 0;
            for (SolidBox.Reading at : solid.readings) {
                if (at.side() == side.side()) {
                    Point rest = new Point(
                            common[0] - common[2] * at.place().yMm(),
                            common[1] + common[2] * at.place().xMm());
                    bow = Math.max(bow, -movement(at).minus(rest).dot(side.inwards()));
                }
            }
            most.add(bow);
        }
        return most;
    }

    private Point movement(SolidBox.Reading at) {
        return moved.getOrDefault(at.node(), new Point(0, 0));
    }

    /** Least squares of shift and small turn about the origin, each place counting by its length of board. */
    private double[] common() {
        double[][] a = new double[3][4];
        for (SolidBox.Reading at : solid.readings) {
            double x = at.place().xMm();
            double y = at.place().yMm();
            Point u = movement(at);
            double[][] rows = {{1, 0, -y, u.xMm()}, {0, 1, x, u.yMm()}};
            for (double[] row : rows) {
                for (int i = 0; i < 3; i++) {
                    for (int j = 0; j < 4; j++) {
                        a[i][j] += at.lengthMm() * row[i] * row[j];
                    }
                }
            }
        }
        return solve(a);
    }

    private static double[] solve(double[][] a) {
        for (int i = 0; i < 3; i++) {
            for (int r = 0; r < 3; r++) {
                double factor = r == i ? 0 : a[r][i] / a[i][i];
                for (int c = i; c < 4; c++) {
                    a[r][c] -= factor * a[i][c];
                }
            }
        }
        return new double[] {a[0][3] / a[0][0], a[1][3] / a[1][1], a[2][3] / a[2][2]};
    }

    /** Every screw of the joints with uprights: its links stand one after the other. */
    List<ScrewForce> screws() {
        List<ScrewForce> screws = new ArrayList<>();
        for (int i = 0; i + 2 < solid.links.size(); i++) {
            Link link = solid.links.get(i);
            if (link.kind() == Link.Kind.SCREW_ALONG_WALL) {
                boolean isPulled = solid.links.get(i + 2).kind() == Link.Kind.SCREW_PULLED;
                screws.add(new ScrewForce(
                        link.joint(), Math.hypot(forceN[i], forceN[i + 1]), isPulled ? forceN[i + 2] : 0));
            }
        }
        return screws;
    }
}
