package borderwright.pack.paper;

import borderwright.engine.measure.UnitSystem;
import java.util.List;

/**
 * How much smaller a drawing is than the thing; those that a scale rule of the trade carries (common practice, no source).
 *
 * @param ratio millimetres of garden to one millimetre of paper
 * @param words as printed beside the drawing
 */
public record Scale(double ratio, String words) {
    /** As large as life. */
    public static final Scale FULL_SIZE = new Scale(1, "full size, 1:1");

    private static final List<Scale> METRIC = List.of(
            ratio(2),
            ratio(5),
            ratio(10),
            ratio(20),
            ratio(25),
            ratio(50),
            ratio(75),
            ratio(100),
            ratio(125),
            ratio(200),
            ratio(250),
            ratio(500),
            ratio(1000),
            ratio(2000));

    private static final List<Scale> IMPERIAL = List.of(
            new Scale(4, "3\" to 1' (1:4)"),
            new Scale(8, "1-1/2\" to 1' (1:8)"),
            new Scale(12, "1\" to 1' (1:12)"),
            new Scale(16, "3/4\" to 1' (1:16)"),
            new Scale(24, "1/2\" to 1' (1:24)"),
            new Scale(32, "3/8\" to 1' (1:32)"),
            new Scale(48, "1/4\" to 1' (1:48)"),
            new Scale(64, "3/16\" to 1' (1:64)"),
            new Scale(96, "1/8\" to 1' (1:96)"),
            new Scale(128, "3/32\" to 1' (1:128)"),
            new Scale(192, "1/16\" to 1' (1:192)"),
            new Scale(384, "1/32\" to 1' (1:384)"),
            new Scale(1200, "1\" to 100' (1:1200)"),
            new Scale(2400, "1\" to 200' (1:2400)"));

    private static Scale ratio(int ratio) {
        return new Scale(ratio, "1:" + ratio);
    }

    /** The largest scale at which something fits; the smallest there is when none does. */
    public static Scale fitting(
            UnitSystem units, double widthMm, double heightMm, double paperWidth, double paperHeight) {
        List<Scale> all = units == UnitSystem.METRIC ? METRIC : IMPERIAL;
        return all.stream()
                .filter(s -> widthMm / s.ratio <= paperWidth && heightMm / s.ratio <= paperHeight)
                .findFirst()
                .orElse(all.get(all.size() - 1));
    }

    /** Millimetres of paper for that many millimetres of garden. */
    public double paper(double mm) {
        return mm / ratio;
    }
}
