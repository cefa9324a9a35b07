/**
 * What a stage has to tell, without words: a code and typed values.
 *
 * <p><b>Settles</b> how every stage speaks: it names a {@link borderwright.engine.message.MessageCode} and gives the values of
 * its slots; no stage holds a sentence. {@link borderwright.engine.message.Sentences} makes the sentence in one place, from
 * templates that it is given.
 *
 * <p><b>Takes</b> codes declared by each room in an enum of its own; <b>gives</b> messages that are equal when they say the same.
 *
 * <p><b>Units.</b> Values are in the engine's units (millimetres, square and cubic metres, kilograms, degrees, newtons); the kind
 * of the slot says which, and the reader's units are chosen when the sentence is made.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.message.Message}.
 */
@NullMarked
package borderwright.engine.message;

import org.jspecify.annotations.NullMarked;
