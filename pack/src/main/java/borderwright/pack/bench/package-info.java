/**
 * What is worked from at the bench: each distinct wall, divider and floor with every position as figure and drawing, and the
 * steps by which each box is put together.
 *
 * <p><b>Settles</b> what reads the same and is printed once, how positions are written, and what each picture shows.
 *
 * <p><b>Takes</b> a plan; <b>gives</b> views for the sheets "At the bench".
 *
 * <p><b>Units.</b> Figures in the garden's units; paper in mm.
 *
 * <p><b>Start reading</b> at {@link borderwright.pack.bench.BenchViews}.
 */
@NullMarked
package borderwright.pack.bench;

import org.jspecify.annotations.NullMarked;
