/**
 * Lengths and angles as people write them.
 *
 * <p><b>Settles</b> what a text such as {@code 1.85 m}, {@code 6' 4 1/2"} or {@code 126° 30'} states, and what is wrong with one
 * that states nothing.
 *
 * <p><b>Takes</b> a text of any length and content; <b>gives</b> its value or a message with what would be right. Text that can
 * be read two ways is refused, never guessed.
 *
 * <p><b>Units.</b> Lengths come out in ticks of 1/320 mm, angles in radians.
 *
 * <p><b>Sources.</b> 1 in = 25.4 mm exactly (international yard and pound agreement, 1959); 1 gon = 0.9 degrees, 60 minutes to
 * the degree, 60 seconds to the minute (ISO 80000-3:2019).
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.reading.LengthText}.
 */
@NullMarked
package borderwright.engine.reading;

import org.jspecify.annotations.NullMarked;
