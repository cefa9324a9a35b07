package borderwright.engine.survey.network;

import org.ejml.data.DMatrixRMaj;

/**
 * The normal equations of a network at given places, with the datum's movements added so that they can be solved.
 *
 * @param matrix {@code A'PA + wBB'}, square, one row per unknown
 * @param right {@code A'Pv}, one column
 * @param datumWeight the {@code w} of {@code wBB'}; 0 when the datum is given
 */
record NormalEquations(DMatrixRMaj matrix, DMatrixRMaj right, double datumWeight) {

    static NormalEquations of(Network network, Positions at) {
        int n = network.unknowns();
        DMatrixRMaj matrix = new DMatrixRMaj(n, n);
        DMatrixRMaj right = new DMatrixRMaj(n, 1);
        DesignRow row = new DesignRow(network);
        for (Observation observation : network.observations()) {
            double weight = 1 / (observation.sd() * observation.sd());
            addTo(matrix, right, row.of(observation, at), weight, observation.misclosure(at));
        }
        return new NormalEquations(matrix, right, holdDatum(network, at, matrix));
    }

    private static void addTo(DMatrixRMaj matrix, DMatrixRMaj right, DesignRow row, double weight, double misclosure) {
        for (int i = 0; i < row.count(); i++) {
            double weighted = weight * row.value(i);
            right.add(row.unknown(i), 0, weighted * misclosure);
            for (int j = 0; j < row.count(); j++) {
                matrix.add(row.unknown(i), row.unknown(j), weighted * row.value(j));
            }
        }
    }

    private static double holdDatum(Network network, Positions at, DMatrixRMaj matrix) {
        if (network.datumDefect() == 0) {
            return 0;
        }
        double trace = 0;
        for (int i = 0; i < matrix.numRows; i++) {
            trace += matrix.get(i, i);
        }
        // of the size of the other entries, so that the condition of the matrix stays that of the network
        double weight = Math.max(trace / matrix.numRows, Double.MIN_NORMAL);
        DMatrixRMaj held = DatumMovements.ofDatumPoints(network, at);
        for (int i = 0; i < matrix.numRows; i++) {
            for (int j = 0; j < matrix.numRows; j++) {
                double sum = 0;
                for (int k = 0; k < held.numCols; k++) {
                    sum += held.get(i, k) * held.get(j, k);
                }
                matrix.add(i, j, weight * sum);
            }
        }
        return weight;
    }
}
