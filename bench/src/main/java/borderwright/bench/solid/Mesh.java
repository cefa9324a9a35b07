package borderwright.bench.solid;

/**
 * How finely pieces are divided.
 *
 * @param alongMm most length of a brick along a piece
 * @param through bricks through a piece's thickness, an even number
 * @param upwards bricks up a board's width, an even number
 */
record Mesh(double alongMm, int through, int upwards) {
    static final Mesh USUAL = new Mesh(50, 2, 4);
    static final Mesh FINE = new Mesh(25, 2, 8);
}
