/**
 * The plan as files for other programs: comma-separated tables and one JSON document.
 *
 * <p><b>Settles</b> the columns, the units in their names, and what makes a table safe to open in a spreadsheet.
 *
 * <p><b>Takes</b> a plan. <b>Gives</b> bytes in UTF-8, the same for the same plan.
 *
 * <p><b>Sources.</b> RFC 4180 (comma-separated values: CRLF, quotes doubled); RFC 8259 (JSON). A cell that a spreadsheet could
 * take for a formula gets a leading apostrophe (common practice, no source).
 *
 * <p><b>Start reading</b> at {@link borderwright.pack.tables.CsvWriter}.
 */
@NullMarked
package borderwright.pack.tables;

import org.jspecify.annotations.NullMarked;
