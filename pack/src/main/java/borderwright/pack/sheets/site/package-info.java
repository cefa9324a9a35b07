/** Sheets used in the garden: setting out, the ground, soil, planting, and the days of work. */
@NullMarked
package borderwright.pack.sheets.site;

import org.jspecify.annotations.NullMarked;
