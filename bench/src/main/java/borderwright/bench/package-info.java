/**
 * Speed runs and side-by-side comparisons; never shipped, never part of the unit tests.
 */
@NullMarked
package borderwright.bench;

import org.jspecify.annotations.NullMarked;
