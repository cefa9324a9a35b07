/**
 * The list that a basket must serve, and the answer to it.
 *
 * <p><b>Settles</b> the question and the answer of buying, without any search.
 *
 * <p><b>Takes</b> demands, offers, terms, owned boards; <b>gives</b> orders, laid boards, cost and bound.
 *
 * <p><b>Units.</b> Lengths in ticks; money in whole minor units.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.buying.list.ShoppingProblem}.
 */
@NullMarked
package borderwright.engine.buying.list;

import org.jspecify.annotations.NullMarked;
