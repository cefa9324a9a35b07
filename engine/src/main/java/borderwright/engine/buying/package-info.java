/**
 * From pieces, quantities, price lists and terms to the cheapest basket, with a proven lower bound.
 *
 * <p><b>Settles</b> what is bought from whom, and how every bought or owned board is cut up.
 *
 * <p><b>Takes</b> demands, offers, terms and owned boards. <b>Gives</b> orders, laid boards, the cost and a bound that no
 * basket can undercut; proven when the two are equal.
 *
 * <p><b>Units.</b> Lengths in ticks; money in whole minor units, inside in grains (minor units times the least factor
 * that makes every tax whole), so that nothing is rounded before an order is summed. Tax is rounded once for each order,
 * to the nearest minor unit, halves up.
 *
 * <p><b>Method.</b> {@code ShoppingCase} counts in whole numbers; supplier cases are searched in
 * turn ({@code CaseSearch}), each section alone ({@code StockSearch}) or a case as one model ({@code Model},
 * {@code ModelRows}). {@code Master} generates patterns, {@code Pricing} takes whole prices and true bounds,
 * {@code Dive} rounds, {@code CountTree} branches on counts, {@code PatternTree} on listed patterns. See docs/theory-cutting.md.
 *
 * <p><b>Does not cover</b> discounts for quantity on goods other than boards, and delivery in bands of distance.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.buying.Shopper}.
 */
@NullMarked
package borderwright.engine.buying;

import org.jspecify.annotations.NullMarked;
