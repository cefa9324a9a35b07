/**
 * The two rule sets for timber: EN 1995-1-1 and the NDS.
 *
 * <p><b>Settles</b> which factors stand on loads, which strengths timber has, and what a joint bears.
 *
 * <p><b>Takes</b> grades, fasteners and load effects; <b>gives</b> the timbers and joints of {@link
 * borderwright.engine.strength.timber} under one {@link borderwright.engine.strength.rules.RuleSet}.
 *
 * <p><b>Units.</b> N and mm; the NDS formulas run in lb, in and psi inside their own classes.
 *
 * <p><b>Sources.</b> EN 1990 table A1.2(B); EN 1995-1-1:2004+A1:2008; NDS 2018.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.strength.rules.RuleSet}.
 */
@NullMarked
package borderwright.engine.strength.rules;

import org.jspecify.annotations.NullMarked;
