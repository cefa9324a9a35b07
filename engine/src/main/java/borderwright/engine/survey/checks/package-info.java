/**
 * Whether the readings agree, and which to take next.
 *
 * <p><b>Settles</b> closing errors, suspects, likely slips, refusals and the next measure.
 *
 * <p><b>Takes</b> an adjusted network and its field book; <b>gives</b> a survey report.
 *
 * <p><b>Units.</b> Millimetres; angles in degrees in reports.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.survey.checks.SurveyReport}.
 */
@NullMarked
package borderwright.engine.survey.checks;

import org.jspecify.annotations.NullMarked;
