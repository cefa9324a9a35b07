/**
 * Seeded instances of cutting problems after published generators, readers of the usual text files, and side-by-side runs.
 */
@NullMarked
package borderwright.bench.cutting;

import org.jspecify.annotations.NullMarked;
