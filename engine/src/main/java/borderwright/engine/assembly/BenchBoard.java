package borderwright.engine.assembly;

import borderwright.engine.measure.Length;

/**
 * A board of a wall or divider on the bench.
 *
 * @param label its mark
 * @param course from the bottom, 1 first
 * @param face its ends on the face that is worked on
 * @param back its ends on the face below
 * @param height of its edges above the bottom edge
 * @param length from long point to long point
 */
public record BenchBoard(String label, int course, Span face, Span back, Span height, Length length) {
    /** The same board of which only a part is shown. */
    public BenchBoard withFace(Span shown) {
        return new BenchBoard(label, course, shown, back, height, length);
    }
}
