package borderwright.engine.planting;

/**
 * Where the sun stands: geometric, without refraction.
 *
 * <p>Low-accuracy formulas of Meeus, Astronomical Algorithms, chapter 25, good to a hundredth of a degree: mean longitude and
 * anomaly, equation of the centre, apparent longitude, obliquity; then the hour angle from the equation of time.
 *
 * @param elevation above the horizon, radians; negative below it
 * @param azimuth clockwise from true north, radians, 0 to a full turn
 * @param declination of the sun, radians
 */
record SolarPosition(double elevation, double azimuth, double declination) {
    private static final double J2000 = 2451545.0;
    private static final double DAYS_IN_CENTURY = 36525;
    private static final double MINUTES_IN_DAY = 1440;

    /**
     * At a moment and place.
     *
     * @param julianDay Julian day, UTC
     * @param latitudeDeg degrees, north positive
     * @param longitudeDeg degrees, east positive
     */
    static SolarPosition at(double julianDay, double latitudeDeg, double longitudeDeg) {
        double t = (julianDay - J2000) / DAYS_IN_CENTURY;
        double longitude = rad(mod(280.46646 + t * (36000.76983 + t * 0.0003032), 360));
        double anomaly = rad(357.52911 + t * (35999.05029 - 0.0001537 * t));
        double eccentricity = 0.016708634 - t * (0.000042037 + 0.0000001267 * t);
        double centre = StrictMath.sin(anomaly) * (1.914602 - t * (0.004817 + 0.000014 * t))
                + StrictMath.sin(2 * anomaly) * (0.019993 - 0.000101 * t)
                + StrictMath.sin(3 * anomaly) * 0.000289;
        double node = rad(125.04 - 1934.136 * t);
        double apparent = longitude + rad(centre - 0.00569 - 0.00478 * StrictMath.sin(node));
        double meanObliquity = 23 + (26 + (21.448 - t * (46.815 + t * (0.00059 - t * 0.001813))) / 60) / 60;
        double obliquity = rad(meanObliquity + 0.00256 * StrictMath.cos(node));
        double declination = StrictMath.asin(StrictMath.sin(obliquity) * StrictMath.sin(apparent));

        double y = StrictMath.pow(StrictMath.tan(obliquity / 2), 2);
        double equationMinutes = 4
                * StrictMath.toDegrees(y * StrictMath.sin(2 * longitude)
                        - 2 * eccentricity * StrictMath.sin(anomaly)
                        + 4 * eccentricity * y * StrictMath.sin(anomaly) * StrictMath.cos(2 * longitude)
                        - 0.5 * y * y * StrictMath.sin(4 * longitude)
                        - 1.25 * eccentricity * eccentricity * StrictMath.sin(2 * anomaly));
        double minutes = mod((julianDay + 0.5) * MINUTES_IN_DAY, MINUTES_IN_DAY);
        double solarMinutes = mod(minutes + equationMinutes + 4 * longitudeDeg, MINUTES_IN_DAY);
        return of(declination, rad(solarMinutes / 4 - 180), rad(latitudeDeg));
    }

    /** From declination, hour angle (negative before noon) and latitude, radians. */
    static SolarPosition of(double declination, double hourAngle, double latitude) {
        double sinElevation = StrictMath.sin(latitude) * StrictMath.sin(declination)
                + StrictMath.cos(latitude) * StrictMath.cos(declination) * StrictMath.cos(hourAngle);
        double east = -StrictMath.cos(declination) * StrictMath.sin(hourAngle);
        double north = StrictMath.cos(latitude) * StrictMath.sin(declination)
                - StrictMath.sin(latitude) * StrictMath.cos(declination) * StrictMath.cos(hourAngle);
        return new SolarPosition(
                StrictMath.asin(Math.max(-1, Math.min(1, sinElevation))),
                mod(StrictMath.atan2(east, north), 2 * StrictMath.PI),
                declination);
    }

    private static double rad(double degrees) {
        return StrictMath.toRadians(degrees);
    }

    private static double mod(double value, double by) {
        return value - by * Math.floor(value / by);
    }
}
