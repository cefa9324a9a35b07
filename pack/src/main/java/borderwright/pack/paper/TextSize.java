package borderwright.pack.paper;

/** The one scale of text sizes on drawings. */
public enum TextSize {
    /** Piece labels where room is short. */
    FINE(2.1),
    /** Dimensions and labels. */
    NORMAL(2.6),
    /** Names of things. */
    NAME(3.4),
    /** Headings inside a drawing. */
    HEAD(4.4);

    private final double emMm;

    TextSize(double emMm) {
        this.emMm = emMm;
    }

    /** The font's em, mm. */
    public double emMm() {
        return emMm;
    }
}
