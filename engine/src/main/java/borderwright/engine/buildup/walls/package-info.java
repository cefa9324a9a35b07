/**
 * Wall boards, their joints and corners, and the capping.
 *
 * <p><b>Settles</b> where boards end, how corners are made, where long sides are joined.
 *
 * <p><b>Takes</b> a draft; <b>gives</b> wall boards and capping in the draft.
 *
 * <p><b>Units.</b> Millimetres; degrees in cuts.
 *
 * <p><b>Length of a mitred side board.</b> {@link borderwright.engine.buildup.draft.LapOrMitre} gives how far behind its corner
 * each end of a board lies; {@link borderwright.engine.buildup.walls.WallBoards#strip} takes both from the side's length.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.buildup.walls.WallBoards}.
 */
@NullMarked
package borderwright.engine.buildup.walls;

import org.jspecify.annotations.NullMarked;
