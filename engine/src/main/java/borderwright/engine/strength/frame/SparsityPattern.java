package borderwright.engine.strength.frame;

import java.util.Arrays;
import java.util.List;
import org.ejml.data.DMatrixSparseCSC;

/** Where the stiffness matrix can have values: the union of all parts and the diagonal, upper triangle, by columns. */
final class SparsityPattern {
    private SparsityPattern() {}

    static DMatrixSparseCSC of(int size, List<Part> parts) {
        long[] keys = new long[size + parts.stream().mapToInt(Part::size).sum()];
        int n = 0;
        for (int i = 0; i < size; i++) {
            keys[n++] = key(i, i);
        }
        for (Part part : parts) {
            for (int k = 0; k < part.size(); k++) {
                keys[n++] = key(part.row(k), part.column(k));
            }
        }
        Arrays.sort(keys);
        DMatrixSparseCSC matrix = new DMatrixSparseCSC(size, size, n);
        int filled = 0;
        for (int k = 0; k < n; k++) {
            if (k == 0 || keys[k] != keys[k - 1]) {
                matrix.nz_rows[filled++] = (int) keys[k];
                matrix.col_idx[(int) (keys[k] >>> 32) + 1] = filled;
            }
        }
        matrix.nz_length = filled;
        matrix.indicesSorted = true;
        for (Part part : parts) {
            part.locate(matrix);
        }
        return matrix;
    }

    private static long key(int row, int column) {
        return (long) column << 32 | row;
    }
}
