/**
 * Reads the garden document, in YAML or JSON, and says what it may hold.
 *
 * <p><b>Settles</b> the way from a file's bytes to a {@link borderwright.engine.garden.given.GardenDocument}: either all of it
 * is sound, or every fault is reported together, each with its line, column and field. The JSON Schema and the table of
 * fields are made by the same walk over the records of {@code borderwright.engine.garden}.
 *
 * <p><b>Takes</b> bytes from anyone, hostile ones too; <b>gives</b> {@link borderwright.app.document.DocumentAnswer}.
 *
 * <p><b>Method.</b> (1) Bytes to text: size, encoding, control characters. (2) Text to a tree of places and texts: depth,
 * number of items, aliases, tags, keys written twice; a fault of YAML itself ends the reading here. (3) Tree to records:
 * each key by the component's name, each value by its type and its limits. A faulty value is replaced by a blank one, so
 * that (4) the checks across records can run in the same reading; what they say about blank values is dropped. (5) Each
 * variant's changes are laid over the tree and bound again.
 *
 * <p><b>Units.</b> Lengths and angles are read in any unit; a limit is shown in millimetres or degrees.
 *
 * <p><b>Sources.</b> YAML 1.2.2, section 10.3 (core schema); JSON Schema draft 2020-12; ISO 4217 for currencies.
 *
 * <p><b>Does not cover</b> whether the measures agree or the requests can be met: later stages answer that.
 *
 * <p><b>Start reading</b> at {@link borderwright.app.document.GardenReader}.
 */
@NullMarked
package borderwright.app.document;

import org.jspecify.annotations.NullMarked;
