package borderwright.engine.layout.plan;

import borderwright.engine.geometry.Ring;

/**
 * Ground inside the border that stays open.
 *
 * @param ring its outline, mm
 * @param why in words: what it is and why
 */
public record Opening(Ring ring, String why) {}
