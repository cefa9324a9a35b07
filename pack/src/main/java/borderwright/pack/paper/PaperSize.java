package borderwright.pack.paper;

/** Paper that the pack is printed on. */
public enum PaperSize {
    A4(210, 297, 12.5),
    /** 8 1/2 x 11 in. */
    LETTER(215.9, 279.4, 13);

    /** Room for the head of each page, mm. */
    public static final double TOP_MM = 15;

    /** Room for the foot of each page, mm. */
    public static final double BOTTOM_MM = 12.5;

    private final double shortMm;
    private final double longMm;
    private final double sideMm;

    PaperSize(double shortMm, double longMm, double sideMm) {
        this.shortMm = shortMm;
        this.longMm = longMm;
        this.sideMm = sideMm;
    }

    /** Width of a page, mm. */
    public double widthMm(Orientation way) {
        return way == Orientation.LANDSCAPE ? longMm : shortMm;
    }

    public double heightMm(Orientation way) {
        return way == Orientation.LANDSCAPE ? shortMm : longMm;
    }

    /** Margin left and right, mm. */
    public double sideMm() {
        return sideMm;
    }

    /** Room between the margins, mm. */
    public double roomWidthMm(Orientation way) {
        return widthMm(way) - 2 * sideMm;
    }

    /** Room between head and foot, mm. */
    public double roomHeightMm(Orientation way) {
        return heightMm(way) - TOP_MM - BOTTOM_MM;
    }
}
