package borderwright.engine.strength.frame;

import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;

/** EJML's sparse Cholesky behind one door: factor, refactor with new numbers, solve. */
final class StiffnessFactor {
    private final LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver =
            LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);
    private final DMatrixSparseCSC matrix;
    private final DMatrixRMaj right;
    private final DMatrixRMaj left;
    private boolean known;

    StiffnessFactor(DMatrixSparseCSC pattern) {
        matrix = pattern.copy();
        right = new DMatrixRMaj(pattern.numCols, 1);
        left = new DMatrixRMaj(pattern.numCols, 1);
    }

    double[] clearedValues() {
        java.util.Arrays.fill(matrix.nz_values, 0, matrix.nz_length, 0);
        return matrix.nz_values;
    }

    void addToDiagonal(double[] values, double factor) {
        for (int j = 0; j < values.length; j++) {
            // Sorted columns of an upper triangle end on the diagonal.
            matrix.nz_values[matrix.col_idx[j + 1] - 1] += factor * values[j];
        }
    }

    /** False where the matrix is not positive definite: some part is held by nothing. */
    boolean decompose() {
        boolean done = solver.setA(matrix);
        if (done && !known) {
            solver.setStructureLocked(true);
            known = true;
        }
        return done;
    }

    double[] solve(double[] load) {
        System.arraycopy(load, 0, right.data, 0, load.length);
        solver.solve(right, left);
        return left.data.clone();
    }
}
