/**
 * From measures to positions, with their uncertainty.
 *
 * <p><b>Settles</b> where the border's corners lie, how far they may be out, whether the measures agree, which of them may be
 * wrong, and which one to take next.
 *
 * <p><b>Takes</b> {@link borderwright.engine.garden.SurveySpec}: tapes, gauge angles, offsets from a baseline, chains of
 * short lengths, levels and rises, wall lean, chord and rise; no coordinates. <b>Gives</b> a {@link
 * borderwright.engine.survey.SurveyAnswer}: an {@link borderwright.engine.survey.Outline} with its {@link
 * borderwright.engine.survey.checks.SurveyReport}, or what is not fixed and the measure that would fix it. Later stages know only
 * the outline.
 *
 * <p><b>Units.</b> Millimetres; readings of angles in degrees, bearings in radians. Standard deviations are a priori: those
 * stated, or by instrument, carried through.
 *
 * <p><b>Method.</b>
 *
 * <ol>
 *   <li>Faults of form are gathered ({@code FieldBookFaults}); the notes become a network of points and observations
 *       ({@code FieldBook}), heights included.
 *   <li>Whether the observations hold every point follows from the rank at random places, and the missing lengths from the
 *       null space ({@code NetworkRigidity}).
 *   <li>Starting positions: points are placed one by one where two clues meet, the best few sketches side by side, judged
 *       by how many clues they break and by whether the going-round order crosses itself ({@code StartPositions}).
 *   <li>Each sketch is refined by weighted least squares, damped where a step does not help ({@code LeastSquares}); gauge
 *       angles are turned to their side ({@code GaugeTurning}). The best shape that goes round as given is kept; two that fit
 *       equally well are refused with the tape that tells them apart ({@code ShapeFinder}, {@code SurveyRefusals}).
 *   <li>The plan datum is inner: uncertainty is that of the shape, spread over the corners, and does not depend on which
 *       corner is named first (decision record 0010).
 *   <li>When the readings disagree, the network is adjusted without each leading reading in turn; one that explains nearly
 *       all is named and set aside, otherwise all candidates are listed with the measure that separates them
 *       ({@code SuspectFinder}, {@code SeparatingMeasure}, {@code LikelySlips}; decision record 0011).
 *   <li>Closing errors in millimetres ({@code ClosingErrors}), and the measure that helps most ({@code NextMeasureFinder}).
 *   <li>A strip gets its mitred front; edges get gap, lean and rise; levelled points make the ground.
 * </ol>
 *
 * <p><b>Sources.</b> Ghilani, Adjustment Computations (5th ed. 2010); Baarda, A testing procedure for use in geodetic
 * networks (1968) and S-transformations and criterion matrices (1973); Mikhail and Ackermann, Observations and Least
 * Squares (1976); Krumm, Geodetic Network Adjustment Examples (rev. 3.5, 2020), whose networks are reproduced in {@code
 * PublishedNetworksTest}; Asimow and Roth, The rigidity of graphs (1978). See docs/sources.md.
 *
 * <p><b>Does not cover</b> corrections for sag, temperature or pull of a tape; two slips at once (they are found one after
 * the other); heights between levelled points other than by distance weighting; overhanging or stepped walls (a lean is one
 * figure per edge).
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.survey.BorderSurvey}.
 */
@NullMarked
package borderwright.engine.survey;

import org.jspecify.annotations.NullMarked;
