/**
 * The sheets of the pack: one class for each, with what its page template needs.
 *
 * <p><b>Settles</b> what each sheet shows; which sheets a plan has is settled in {@code pack.contents}.
 *
 * <p><b>Takes</b> a plan and the paper; <b>gives</b> {@link borderwright.pack.sheets.Sheet}s, whose names are those of their
 * templates in {@code src/main/jte}.
 *
 * <p><b>Units.</b> As in the plan; figures are written by {@link borderwright.pack.figures.PrintedFigures}.
 *
 * <p><b>Does not</b> compute a quantity: every figure is a result of the engine.
 *
 * <p><b>Start reading</b> at {@link borderwright.pack.sheets.Sheet}.
 */
@NullMarked
package borderwright.pack.sheets;

import org.jspecify.annotations.NullMarked;
