/**
 * Why a basket is the cheapest.
 *
 * <p><b>Settles</b> what each board and supplier would have to cost to be chosen, what is paid besides wood, and how
 * likely boards run short.
 *
 * <p><b>Takes</b> a list with its answer; <b>gives</b> an explanation in figures and the basket in a currency.
 *
 * <p><b>Units.</b> Money in minor units; chances as fractions.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.buying.why.Explainer}.
 */
@NullMarked
package borderwright.engine.buying.why;

import org.jspecify.annotations.NullMarked;
