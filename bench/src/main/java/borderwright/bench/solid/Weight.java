package borderwright.bench.solid;

/**
 * A node's share in the movement of a place.
 *
 * @param node its number
 * @param share of 1
 */
record Weight(int node, double share) {}
