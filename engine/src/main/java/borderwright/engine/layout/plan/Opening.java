package borderwright.engine.layout.plan;

import borderwright.engine.geometry.Ring;
import borderwright.engine.message.Message;

/**
 * Ground inside the border that stays open.
 *
 * @param ring its outline, mm
 * @param why what it is and why
 */
public record Opening(Ring ring, Message why) {}
