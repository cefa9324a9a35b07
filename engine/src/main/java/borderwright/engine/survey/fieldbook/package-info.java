/**
 * The notes of a survey as a network.
 *
 * <p><b>Settles</b> how each measure becomes observations, with which accuracy, and which faults of form it has.
 *
 * <p><b>Takes</b> survey notes; <b>gives</b> a network and the way back from each observation to its place in the
 * document.
 *
 * <p><b>Units.</b> Millimetres and radians.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.survey.fieldbook.FieldBook}.
 */
@NullMarked
package borderwright.engine.survey.fieldbook;

import org.jspecify.annotations.NullMarked;
