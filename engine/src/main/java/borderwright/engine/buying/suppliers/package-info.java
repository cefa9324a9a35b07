/**
 * Which suppliers to buy from, and on which terms.
 *
 * <p><b>Settles</b> which suppliers are used, how each order gets home, and which whole case is the cheapest.
 *
 * <p><b>Takes</b> a shopping problem in whole numbers; <b>gives</b> the cheapest purchase and a bound over all cases.
 *
 * <p><b>Units.</b> Money in grains: minor units times the least factor that makes every tax whole.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.buying.suppliers.CaseSearch}.
 */
@NullMarked
package borderwright.engine.buying.suppliers;

import org.jspecify.annotations.NullMarked;
