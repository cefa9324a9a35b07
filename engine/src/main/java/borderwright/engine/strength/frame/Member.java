package borderwright.engine.strength.frame;

/**
 * A straight bar between two nodes with its own axes: x along it, z nearest to {@code up}, y completing them.
 *
 * @param start index of its first node
 * @param end index of its second node
 * @param rigidity how stiff it is
 * @param x unit vector along it
 * @param y unit vector
 * @param z unit vector
 * @param length between its nodes
 */
record Member(int start, int end, JointRigidity rigidity, Vector x, Vector y, Vector z, double length) {

    static Member between(int start, Vector from, int end, Vector to, JointRigidity rigidity, Vector up) {
        Vector along = to.minus(from);
        if (!(along.length() > 0)) {
            throw new IllegalArgumentException("a member needs a length; nodes " + start + " and " + end + " coincide");
        }
        Vector x = along.unit();
        Vector y = up.cross(x).unit();
        return new Member(start, end, rigidity, x, y, x.cross(y), along.length());
    }

    /** The 12 x 12 stiffness in the member's own axes, row by row; six displacements of each node. */
    double[] localStiffness() {
        double[] k = new double[144];
        double l = length;
        pair(k, 0, rigidity.axial() / l);
        pair(k, 3, rigidity.torsion() / l);
        bending(k, 1, 5, rigidity.aboutZ(), 1);
        bending(k, 2, 4, rigidity.aboutY(), -1);
        return k;
    }

    private static void pair(double[] k, int i, double stiffness) {
        k[12 * i + i] += stiffness;
        k[12 * (i + 6) + i + 6] += stiffness;
        k[12 * i + i + 6] -= stiffness;
        k[12 * (i + 6) + i] -= stiffness;
    }

    private void bending(double[] k, int shift, int turn, double ei, int sign) {
        double l = length;
        double s = 12 * ei / (l * l * l);
        double c = sign * 6 * ei / (l * l);
        pair(k, shift, s);
        both(k, shift, turn, c);
        both(k, shift, turn + 6, c);
        both(k, shift + 6, turn, -c);
        both(k, shift + 6, turn + 6, -c);
        k[12 * turn + turn] += 4 * ei / l;
        k[12 * (turn + 6) + turn + 6] += 4 * ei / l;
        both(k, turn, turn + 6, 2 * ei / l);
    }

    private static void both(double[] k, int i, int j, double value) {
        k[12 * i + j] += value;
        k[12 * j + i] += value;
    }

    /** The 12 x 12 stiffness in the global axes. */
    double[] globalStiffness() {
        double[] local = localStiffness();
        double[] global = new double[144];
        double[] half = new double[9];
        for (int bi = 0; bi < 4; bi++) {
            for (int bj = 0; bj < 4; bj++) {
                for (int p = 0; p < 3; p++) {
                    for (int j = 0; j < 3; j++) {
                        half[3 * p + j] = local[12 * (3 * bi + p) + 3 * bj] * x.component(j)
                                + local[12 * (3 * bi + p) + 3 * bj + 1] * y.component(j)
                                + local[12 * (3 * bi + p) + 3 * bj + 2] * z.component(j);
                    }
                }
                for (int i = 0; i < 3; i++) {
                    for (int j = 0; j < 3; j++) {
                        global[12 * (3 * bi + i) + 3 * bj + j] =
                                x.component(i) * half[j] + y.component(i) * half[3 + j] + z.component(i) * half[6 + j];
                    }
                }
            }
        }
        return global;
    }

    /** Three numbers along the global axes as seen along the member's own axes. */
    Vector toLocal(Vector global) {
        return new Vector(global.dot(x), global.dot(y), global.dot(z));
    }

    Vector toGlobal(Vector local) {
        return x.times(local.x()).plus(y.times(local.y())).plus(z.times(local.z()));
    }
}
