/**
 * What a person holds in hand: drawings, pages, tables and the 3D model, from engine results. It computes no quantity.
 */
@NullMarked
package borderwright.pack;

import org.jspecify.annotations.NullMarked;
