/**
 * The given form of everything: all that a person said, and nothing that follows from it.
 *
 * <p><b>Settles</b> the shape of the garden document. The reader, the JSON Schema and the documentation of the document
 * are all made from these records: a component's name in lower-case words is its key ({@code freeOver} is written {@code
 * free over}), {@link borderwright.engine.garden.vocabulary.Described} is its documentation, a {@code @Nullable} component may be left out.
 *
 * <p><b>Takes</b> nothing; <b>gives</b> {@link borderwright.engine.garden.Garden}. Records check only what one record
 * can know; what spans records is checked by {@link borderwright.engine.garden.GardenChecks}, all faults together.
 *
 * <p><b>Units.</b> Lengths are {@link borderwright.engine.measure.Length}, angles {@link
 * borderwright.engine.measure.Angle}, money is a decimal in the garden's currency until {@link
 * borderwright.engine.garden.Garden#money} makes it exact minor units.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.garden.Garden}.
 */
@NullMarked
package borderwright.engine.garden;

import org.jspecify.annotations.NullMarked;
