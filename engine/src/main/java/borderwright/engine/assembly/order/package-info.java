/**
 * The steps by which a box is put together, from its walls on the bench to the lining.
 *
 * <p><b>Settles</b> which wall is laid, stood and joined when, which fixings each step takes, where two people are needed,
 * and the diagonals that square the box.
 *
 * <p><b>Takes</b> a {@link borderwright.engine.assembly.BoxBench} and the sections; <b>gives</b> an {@link
 * borderwright.engine.assembly.order.AssemblyOrder}.
 *
 * <p><b>Units.</b> Millimetres; kilograms.
 *
 * <p><b>Sources.</b> Order of assembly: common practice, no source.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.assembly.order.AssemblyOrder}.
 */
@NullMarked
package borderwright.engine.assembly.order;

import org.jspecify.annotations.NullMarked;
