/**
 * The boxes as a 3D model: every piece a node of its own, named by its label.
 *
 * <p><b>Settles</b> the shape of {@code model.glb}: metres, y up (as glTF 2.0 asks), x to the right and z towards the reader of
 * the plan; one colour for each role of piece.
 *
 * <p><b>Takes</b> a plan, whose pieces are upright prisms. <b>Gives</b> the bytes of a binary glTF file, the same for the same
 * plan.
 *
 * <p><b>Parts.</b> A node for each box; {@code soil}, {@code ground} and {@code edges} stand beside them, so that each can be hidden.
 *
 * <p><b>Method.</b> The plan polygon of a piece is cut into triangles (JTS), which make its underside and top; each side of the
 * polygon makes two more. Pieces of one box are children of a node with the box's name.
 *
 * <p><b>Sources.</b> glTF 2.0 specification (ISO/IEC 12113:2022).
 *
 * <p><b>Start reading</b> at {@link borderwright.pack.solid.BoxModel}.
 */
@NullMarked
package borderwright.pack.solid;

import org.jspecify.annotations.NullMarked;
