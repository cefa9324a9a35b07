/**
 * The cheapest way to brace a box so that it holds.
 *
 * <p><b>Settles</b> how many ties and braces each box gets and where, and which other ways to build it are offered.
 *
 * <p><b>Demands</b> footprints, build rules, {@link borderwright.engine.strength.StrengthTerms} and the cost of a built-up
 * box. <b>Promises</b> the cheapest of all bracings tried, each checked with the same figures as the strength sheet; what a
 * person requested is not changed, only offered otherwise.
 *
 * <p><b>Units.</b> N and mm; cost in whatever unit the caller's function has.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.strength.bracing.BracedBoxes}, then {@link
 * borderwright.engine.strength.bracing.BracingSearch}.
 */
@NullMarked
package borderwright.engine.strength.bracing;

import org.jspecify.annotations.NullMarked;
