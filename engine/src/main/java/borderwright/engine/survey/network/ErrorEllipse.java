package borderwright.engine.survey.network;

/**
 * A standard error ellipse (39 % region).
 *
 * @param majorMm half the long axis, mm
 * @param minorMm half the short axis, mm
 * @param bearingRad direction of the long axis, anticlockwise from x, radians
 */
public record ErrorEllipse(double majorMm, double minorMm, double bearingRad) {}
