package borderwright.engine.measure;

/**
 * What one imperial or US unit is in metric ones: the only place of these numbers.
 *
 * <p>Exact by the international yard and pound agreement of 1959, but for the quart, which is rounded to nine figures (the US
 * liquid gallon is 231 cubic inches), and for the weight by volume, to six.
 */
public final class UnitFactors {
    /** Millimetres in an inch. */
    public static final double MM_PER_INCH = 25.4;

    /** Millimetres in a foot. */
    public static final double MM_PER_FOOT = 304.8;

    /** Metres in a foot. */
    public static final double M_PER_FOOT = 0.3048;

    /** Square metres in a square foot. */
    public static final double M2_PER_SQUARE_FOOT = 0.09290304;

    /** Cubic metres in a cubic foot. */
    public static final double M3_PER_CUBIC_FOOT = 0.028316846592;

    /** Cubic metres in a cubic yard. */
    public static final double M3_PER_CUBIC_YARD = 0.764554857984;

    /** Litres in a US liquid quart. */
    public static final double LITRES_PER_QUART = 0.946352946;

    /** Kilograms in a pound. */
    public static final double KG_PER_POUND = 0.45359237;

    /** Newtons in a pound-force. */
    public static final double N_PER_POUND_FORCE = 4.4482216152605;

    /** Kilonewtons per cubic metre in a pound-force per cubic foot, rounded to six figures. */
    public static final double KN_PER_M3_PER_PCF = 0.157087;

    private UnitFactors() {}
}
