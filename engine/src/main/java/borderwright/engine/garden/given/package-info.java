/**
 * The garden document: all that a person gives, and nothing that follows from it.
 *
 * <p><b>Settles</b> the shape of the garden document. The reader, the JSON Schema and the documentation of the document
 * are all made from these records: a component's name in lower-case words is its key ({@code freeOver} is written {@code
 * free over}), {@link borderwright.engine.garden.vocabulary.Described} is its documentation, a {@code @Nullable} component
 * may be left out. No default stands here.
 *
 * <p><b>Takes</b> nothing; <b>gives</b> {@link borderwright.engine.garden.given.GivenGarden}, which {@link
 * borderwright.engine.garden.resolve.GardenResolver} makes into the garden that is planned. No later stage takes these
 * records.
 *
 * <p><b>Units.</b> Lengths are {@link borderwright.engine.measure.Length}, angles {@link
 * borderwright.engine.measure.Angle}, money is a decimal in the garden's currency.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.garden.given.GivenGarden}.
 */
@NullMarked
package borderwright.engine.garden.given;

import org.jspecify.annotations.NullMarked;
