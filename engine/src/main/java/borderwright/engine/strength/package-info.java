/**
 * Whether the walls hold.
 *
 * <p><b>Settles</b> how far each side of a box ends up bowing, how much of its boards, uprights, ties, screws and bed is
 * used in each load case, and so whether it holds, does not hold, or is not shown to.
 *
 * <p><b>Demands</b> a {@link borderwright.engine.buildup.parts.Box} and {@link borderwright.engine.strength.StrengthTerms}.
 * <b>Promises</b> a {@link borderwright.engine.strength.StrengthReport} whose every figure comes from the same methods that
 * say its steps.
 *
 * <p><b>Units.</b> N and mm; use is load effect over what is borne, 1 being all of it.
 *
 * <p><b>Method.</b>
 *
 * <ol>
 *   <li>The box becomes one frame ({@link borderwright.engine.strength.box}) with its load cases ({@link
 *       borderwright.engine.strength.loads}).
 *   <li>Final bow: the fill for good, on stiffnesses after creep. What passing loads add stands beside it and is not held
 *       against the limit, because it goes again.
 *   <li>Strength: every case with the rule set's factors, after creep where the box has crept by then; every bar and screw
 *       is checked, the worst of each kind is kept and its steps written out.
 *   <li>A floor carries soaked fill down its slats, bearers and legs; a side against higher ground is checked as a block that
 *       may slide, tip or sink ({@link borderwright.engine.strength.soil.RetainingStrip}).
 *   <li>A verdict from these figures; what no figure covers makes it "not shown to hold".
 * </ol>
 *
 * <p><b>Sources.</b> As those of {@link borderwright.engine.strength.timber} and {@link
 * borderwright.engine.strength.soil}; docs/strength.md says what is left out.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.strength.BoxStrength}.
 */
@NullMarked
package borderwright.engine.strength;

import org.jspecify.annotations.NullMarked;
