package borderwright.bench.solid;

/**
 * A pressure on one face of a brick.
 *
 * @param brick its number
 * @param face the package's number of the face: 3 is near, 5 is far
 * @param nPerMm2 pressing
 */
record Push(int brick, int face, double nPerMm2) {}
