/**
 * Bars and springs in space: displacements and forces by the direct stiffness method.
 *
 * <p><b>Settles</b> how a structure of straight elastic bars, elastic springs, contacts and slipping supports moves under
 * a load.
 *
 * <p><b>Takes</b> nodes, members and springs through {@link borderwright.engine.strength.frame.FrameBuilder} and loads
 * through {@link borderwright.engine.strength.frame.Loads}; <b>gives</b> a
 * {@link borderwright.engine.strength.frame.FrameAnswer}.
 *
 * <p><b>Units.</b> Any consistent set; the planter uses N and mm. Angles in radians, right-handed axes.
 *
 * <p><b>Method.</b>
 *
 * <ol>
 *   <li>Each member gives the stiffness of a slender beam in space (axial, bending both ways, torsion); only the
 *       displacements that a node declares free are kept.
 *   <li>Nodes are numbered by least degree, so that the factor fills in little.
 *   <li>The stiffness is factored by the multifrontal Cholesky method ({@link borderwright.engine.strength.frame.Fronts});
 *       only fronts above a changed spring are worked out again.
 *   <li>Contacts and slipping supports each have a convex energy made of parabolas. Newton steps on the sum, with an exact
 *       line search once the states wander, reach the one consistent set of open, closed, sticking and slipping springs.
 *   <li>Between nodes, moments and deflections are exact for the loads given (Macaulay's method).
 * </ol>
 *
 * <p><b>Sources.</b> McGuire, Gallagher, Ziemian, Matrix Structural Analysis, 2nd ed.; the checks name theirs.
 *
 * <p><b>Does not cover</b> shear deformation, second-order effects, yielding members, dynamics.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.strength.frame.Frame}.
 */
@NullMarked
package borderwright.engine.strength.frame;

import org.jspecify.annotations.NullMarked;
