package borderwright.pack.paper;

import java.util.List;

/**
 * What a stroke is drawn with.
 *
 * @param widthMm width of the stroke, mm
 * @param tone its tone
 * @param dashes lengths of dash and gap in turn, mm; empty for an unbroken stroke
 */
public record Pen(double widthMm, Tone tone, List<Double> dashes) {
    /** Hatches and grids. */
    public static final Pen HAIR = new Pen(0.1, Tone.GREY, List.of());
    /** Dimension and leader lines. */
    public static final Pen FINE = new Pen(0.15, Tone.BLACK, List.of());
    /** Edges of pieces. */
    public static final Pen EDGE = new Pen(0.25, Tone.BLACK, List.of());
    /** Outlines of whole things. */
    public static final Pen BOLD = new Pen(0.5, Tone.BLACK, List.of());
    /** The one thing a sheet is about; ground and walls. */
    public static final Pen HEAVY = new Pen(0.8, Tone.BLACK, List.of());
    /** What lies behind or inside. */
    public static final Pen HIDDEN = new Pen(0.2, Tone.BLACK, List.of(1.2, 0.8));
    /** Middle lines and bisectors. */
    public static final Pen CENTRE = new Pen(0.18, Tone.BLACK, List.of(4.0, 1.0, 0.8, 1.0));
    /** What lies in the ground. */
    public static final Pen BURIED = new Pen(0.4, Tone.BLACK, List.of(2.4, 0.9, 0.4, 0.9));
    /** What needs a second look. */
    public static final Pen ALERT = new Pen(0.45, Tone.ACCENT, List.of());

    public Pen {
        dashes = List.copyOf(dashes);
    }
}
