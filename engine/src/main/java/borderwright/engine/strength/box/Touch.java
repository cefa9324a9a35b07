package borderwright.engine.strength.box;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;

/** Which faces of two upright prisms lie on each other. */
final class Touch {
    /** Faces nearer than this bear once the screws are tight, as the builder has it. */
    static final double STAND_OFF_MM = 1.2;

    private static final double LEAST_MM = 5;

    private Touch() {}

    /** Where two outlines lie on each other. */
    static boolean faces(Ring a, Ring b) {
        return spread(a, b) > LEAST_MM;
    }

    private static double spread(Ring a, Ring b) {
        double[] box = {
            Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY
        };
        take(a, b, box);
        take(b, a, box);
        return box[0] > box[1] ? 0 : StrictMath.hypot(box[1] - box[0], box[3] - box[2]);
    }

    private static void take(Ring from, Ring onto, double[] box) {
        for (Point p : from.corners()) {
            for (int i = 0; i < onto.size(); i++) {
                if (onto.side(i).distanceMm(p) <= STAND_OFF_MM) {
                    box[0] = Math.min(box[0], p.xMm());
                    box[1] = Math.max(box[1], p.xMm());
                    box[2] = Math.min(box[2], p.yMm());
                    box[3] = Math.max(box[3], p.yMm());
                }
            }
        }
    }
}
