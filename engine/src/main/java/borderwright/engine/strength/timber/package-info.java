/**
 * What timber and its fixings can bear, by EN 1995-1-1 or by the NDS.
 *
 * <p><b>Settles</b> design strengths, joint resistances, joint stiffness, creep and where screws may go.
 *
 * <p><b>Takes</b> sections, classes, fasteners and load effects; <b>gives</b> utilisations and resistances, each able to
 * say its steps on a {@link borderwright.engine.strength.worked.Working}.
 *
 * <p><b>Units.</b> N, mm, N/mm2, kg/m3. The NDS formulas run in lb, in and psi inside their own classes and are converted
 * once at their edge.
 *
 * <p><b>Sources.</b> EN 338:2016 tables 1 and 3; EN 1995-1-1:2004+A1:2008; NDS 2018 and its Supplement. The text of the
 * standards was not at hand: values were checked against published copies and worked examples named in the tests, and
 * what comes from memory says so beside it.
 *
 * <p><b>Does not cover</b> glued products, fire, fatigue, toothed plates, bolts above 6 mm.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.strength.timber.Timber} and {@link
 * borderwright.engine.strength.timber.FastenerJoint}.
 */
@NullMarked
package borderwright.engine.strength.timber;

import org.jspecify.annotations.NullMarked;
