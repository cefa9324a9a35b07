package borderwright.engine.survey.network;

import borderwright.engine.geometry.Point;
import org.ejml.data.DMatrixRMaj;

/**
 * The plan movements that no length or angle can know: a shift along x, along y, and a turn about the middle of the
 * datum points. One column each, one row per unknown; the columns are orthogonal over the datum points.
 *
 * <p>See docs/decisions/0010.
 */
final class DatumMovements {
    private DatumMovements() {}

    /** The movements of the datum points alone, scaled to length 1. */
    static DMatrixRMaj ofDatumPoints(Network network, Positions at) {
        DMatrixRMaj columns = new DMatrixRMaj(network.unknowns(), 3);
        Scale scale = Scale.of(network, at);
        for (int point : network.datumPoints()) {
            scale.put(columns, network.placeUnknown(point), at.at(point));
        }
        return columns;
    }

    /** The same movements of all points. */
    static DMatrixRMaj ofAllPoints(Network network, Positions at) {
        DMatrixRMaj columns = new DMatrixRMaj(network.unknowns(), 3);
        Scale scale = Scale.of(network, at);
        for (int point = 0; point < network.points(); point++) {
            int place = network.placeUnknown(point);
            if (place >= 0) {
                scale.put(columns, place, at.at(point));
            }
        }
        return columns;
    }

    private record Scale(Point middle, double shift, double turn) {
        static Scale of(Network network, Positions at) {
            int count = network.datumPoints().size();
            Point sum = new Point(0, 0);
            for (int point : network.datumPoints()) {
                sum = sum.plus(at.at(point));
            }
            Point middle = sum.times(1.0 / count);
            double squares = 0;
            for (int point : network.datumPoints()) {
                Point arm = at.at(point).minus(middle);
                squares += arm.dot(arm);
            }
            double spread = Math.max(Math.sqrt(squares), Double.MIN_NORMAL);
            return new Scale(middle, 1 / Math.sqrt(count), 1 / spread);
        }

        void put(DMatrixRMaj columns, int place, Point at) {
            Point turned = at.minus(middle).left().times(turn);
            columns.set(place, 0, shift);
            columns.set(place + 1, 1, shift);
            columns.set(place, 2, turned.xMm());
            columns.set(place + 1, 2, turned.yMm());
        }
    }
}
