/**
 * The choices of the garden document and how its fields are described.
 *
 * <p><b>Settles</b> which words may stand for a choice, and the description of every field.
 *
 * <p><b>Takes</b> nothing; <b>gives</b> enums and annotations that the document and the resolved garden share.
 *
 * <p><b>Units.</b> None.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.garden.vocabulary.Described}.
 */
@NullMarked
package borderwright.engine.garden.vocabulary;

import org.jspecify.annotations.NullMarked;
