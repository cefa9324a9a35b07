package borderwright.pack.paper;

/**
 * The room that a text takes: a rectangle, turned as the text is.
 *
 * @param middle its middle
 * @param halfWidthMm half its width along the text, mm
 * @param halfHeightMm half its height across the text, mm
 * @param along direction of the text, 1 mm long
 */
public record TextBox(Spot middle, double halfWidthMm, double halfHeightMm, Spot along) {
    /** Share of the em above and below the baseline that letters, figures and signs take in the shipped font. */
    private static final double ABOVE = 0.78;

    private static final double BELOW = 0.24;

    static TextBox of(Mark.Text text) {
        double em = text.size().emMm();
        double width = text.face().widthEm(text.text()) * em;
        Spot along = along(text.turnDeg());
        Spot up = along.left();
        Spot middle = text.start().plus(along.times(width / 2)).plus(up.times((ABOVE - BELOW) / 2 * em));
        return new TextBox(middle, width / 2, (ABOVE + BELOW) / 2 * em, along);
    }

    static Spot along(double turnDeg) {
        if (turnDeg == 0) {
            return new Spot(1, 0);
        }
        double turn = StrictMath.toRadians(turnDeg);
        return new Spot(StrictMath.cos(turn), -StrictMath.sin(turn));
    }

    /** The same room with a margin all round. */
    public TextBox grown(double marginMm) {
        return new TextBox(middle, halfWidthMm + marginMm, halfHeightMm + marginMm, along);
    }

    /** Whether the two share any room: separating axis test on both rectangles' directions. */
    public boolean overlaps(TextBox other) {
        return !separated(this, other) && !separated(other, this);
    }

    private static boolean separated(TextBox a, TextBox b) {
        Spot between = b.middle.minus(a.middle);
        double reach = a.halfWidthMm + a.halfHeightMm + b.halfWidthMm + b.halfHeightMm;
        if (StrictMath.abs(between.x()) >= reach || StrictMath.abs(between.y()) >= reach) {
            return true;
        }
        Spot along = a.along;
        Spot up = along.left();
        return StrictMath.abs(between.dot(along)) >= a.halfWidthMm + b.reach(along)
                || StrictMath.abs(between.dot(up)) >= a.halfHeightMm + b.reach(up);
    }

    /** How far it reaches from its middle in a direction, mm. */
    private double reach(Spot direction) {
        return halfWidthMm * StrictMath.abs(along.dot(direction))
                + halfHeightMm * StrictMath.abs(along.left().dot(direction));
    }

    /** Whether it lies inside a sheet of that size. */
    public boolean inside(double widthMm, double heightMm) {
        double rx = reach(new Spot(1, 0));
        double ry = reach(new Spot(0, 1));
        return middle.x() - rx >= -1e-6
                && middle.x() + rx <= widthMm + 1e-6
                && middle.y() - ry >= -1e-6
                && middle.y() + ry <= heightMm + 1e-6;
    }

    /** Whether a straight stroke passes through it: the stroke is clipped to the rectangle. */
    public boolean crosses(Spot from, Spot to) {
        double reach = halfWidthMm + halfHeightMm;
        if (StrictMath.min(from.x(), to.x()) > middle.x() + reach
                || StrictMath.max(from.x(), to.x()) < middle.x() - reach
                || StrictMath.min(from.y(), to.y()) > middle.y() + reach
                || StrictMath.max(from.y(), to.y()) < middle.y() - reach) {
            return false;
        }
        Spot up = along.left();
        Spot a = from.minus(middle);
        Spot b = to.minus(middle);
        double[] span = {0, 1};
        return clip(a.dot(along), b.dot(along), halfWidthMm, span) && clip(a.dot(up), b.dot(up), halfHeightMm, span);
    }

    private static boolean clip(double a, double b, double half, double[] span) {
        double run = b - a;
        if (StrictMath.abs(run) < 1e-12) {
            return StrictMath.abs(a) < half;
        }
        double first = (-half - a) / run;
        double second = (half - a) / run;
        span[0] = StrictMath.max(span[0], StrictMath.min(first, second));
        span[1] = StrictMath.min(span[1], StrictMath.max(first, second));
        return span[0] < span[1];
    }

    /** A corner: 0 to 3, going round. */
    public Spot corner(int i) {
        Spot aside = along.times(i == 1 || i == 2 ? halfWidthMm : -halfWidthMm);
        Spot up = along.left().times(i >= 2 ? halfHeightMm : -halfHeightMm);
        return middle.plus(aside).plus(up);
    }
}
