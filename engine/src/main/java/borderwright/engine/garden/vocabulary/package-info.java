/**
 * The words that the garden document and the resolved garden share: the choices of the document, names and ranges.
 *
 * <p><b>Settles</b> which choices there are and what each means. <b>Takes</b> nothing; <b>gives</b> enums and small values.
 * A choice is written in the document as the constant's name in lower-case words; {@link
 * borderwright.engine.garden.vocabulary.Described} is its documentation.
 */
@NullMarked
package borderwright.engine.garden.vocabulary;

import org.jspecify.annotations.NullMarked;
