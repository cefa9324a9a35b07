/**
 * The message catalogue: every sentence that Borderwright speaks, in message files by language.
 *
 * <p>A message file holds one template for each key, in the pattern syntax of ICU's message format: named slots in braces,
 * {@code {count, plural, one {# roll} other {# rolls}}} where a number decides the form, {@code {lap, select, ...}} where a
 * word does. Slots arrive as text with their units, or as whole numbers; nothing is formatted here.
 *
 * <p>A language is a folder of files and a list of what it falls back on: US English holds only what differs from UK English.
 *
 * <p><b>Start reading</b> at {@link borderwright.words.Catalogue}.
 */
@NullMarked
package borderwright.words;

import org.jspecify.annotations.NullMarked;
