package borderwright.bench.solid;

/**
 * What one screw carries.
 *
 * @param joint its joint: what kind, and which two pieces
 * @param shearN across it
 * @param pullN along it; below 0 where it is pressed
 */
record ScrewForce(String joint, double shearN, double pullN) {}
