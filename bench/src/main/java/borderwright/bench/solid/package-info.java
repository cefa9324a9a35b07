/**
 * Whole boxes as solids in a general finite-element package, beside what the plan's frame says of them.
 *
 * <p>Boards, uprights, dividers and ties are meshed with bricks where the plan puts them, screws are springs where they are
 * driven, faces and fill press but never pull. The package assembles and solves; nothing of the plan's frame is used for that.
 */
@NullMarked
package borderwright.bench.solid;

import org.jspecify.annotations.NullMarked;
