package borderwright.app.plan;

import borderwright.pack.sheets.saw.CardText;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A board and a saw, in space: does what the words of a printed card say, and no more.
 *
 * <p>For a person at the saw {@code x} runs to the right, {@code y} away, {@code z} up. The board is a bar about the axis
 * {@code x}; only its left and right ends change. An end is a plane, kept as its {@code x} at the four long edges of
 * the bar: (near, down), (near, up), (far, down), (far, up).
 */
final class PaperSaw {
    private static final Pattern SLANT = Pattern.compile("(tilted|turned|bevel|mitre) ([\\d.]+)°.*?\\b(left|right)\\b");

    private final double[] left;
    private final double[] right;
    private final double halfWidthMm;
    private final double halfThicknessMm;

    private PaperSaw(double[] left, double[] right, double halfWidthMm, double halfThicknessMm) {
        this.left = left;
        this.right = right;
        this.halfWidthMm = halfWidthMm;
        this.halfThicknessMm = halfThicknessMm;
    }

    /** A board that is square at both ends. */
    static PaperSaw board(double lengthMm, double widthMm, double thicknessMm) {
        return new PaperSaw(
                new double[4], new double[] {lengthMm, lengthMm, lengthMm, lengthMm}, widthMm / 2, thicknessMm / 2);
    }

    /** The board with a new left end, as little taken off as makes it whole; the card must keep what lies right. */
    PaperSaw newEnd(CardText card, boolean outerFaceUp) {
        require(card.how().keep().contains("what lies RIGHT of the blade"), card);
        PaperSaw lies = laidFor(card, outerFaceUp);
        double[] plane = lies.plane(card);
        longPointIsNamed(card, plane, -1);
        return lies.with(shifted(plane, greatest(lies.left) - least(plane)), lies.right)
                .laidFor(card, outerFaceUp);
    }

    /** The piece left of the blade, and what is left of the board; the card must keep what lies left. */
    PaperSaw[] toLength(CardText card, boolean outerFaceUp, double lengthMm) {
        require(card.how().keep().contains("the piece LEFT of the blade"), card);
        PaperSaw lies = laidFor(card, outerFaceUp);
        double[] plane = lies.plane(card);
        longPointIsNamed(card, plane, 1);
        double[] cut = shifted(plane, least(lies.left) + lengthMm - greatest(plane));
        return new PaperSaw[] {
            lies.with(lies.left, cut).laidFor(card, outerFaceUp),
            lies.with(cut, lies.right).laidFor(card, outerFaceUp)
        };
    }

    /** Turned over where the card wants the other face up; turned over again it lies as before. */
    private PaperSaw laidFor(CardText card, boolean outerFaceUp) {
        return switch (card.how().face()) {
            case "" -> this;
            case "Outer face up." -> outerFaceUp ? this : turnedOver();
            case "Outer face DOWN." -> outerFaceUp ? turnedOver() : this;
            default -> throw new AssertionError("which face is up? " + card);
        };
    }

    /** x of the cut at the four long edges, through the middle at 0. */
    private double[] plane(CardText card) {
        String words =
                card.how().setting().startsWith("Square cut") ? "" : card.how().setting() + " " + card.title();
        Matcher slant = SLANT.matcher(words);
        double perMmUp = 0;
        double perMmAway = 0;
        if (slant.find()) {
            double per = (slant.group(3).equals("right") ? 1 : -1)
                    * Math.tan(Math.toRadians(Double.parseDouble(slant.group(2))));
            boolean tilts = slant.group(1).equals("tilted") || slant.group(1).equals("bevel");
            perMmUp = tilts ? per : 0;
            perMmAway = tilts ? 0 : per;
            require(!card.how().face().isEmpty(), card);
        } else {
            require(
                    card.how().setting().startsWith("Square cut")
                            || card.title().endsWith("hand cut, square"),
                    card);
        }
        double[] plane = new double[4];
        for (int c = 0; c < 4; c++) {
            plane[c] = (c < 2 ? -1 : 1) * halfWidthMm * perMmAway + (c % 2 == 0 ? -1 : 1) * halfThicknessMm * perMmUp;
        }
        return plane;
    }

    /** The card names the face or edge of the long point: of what is kept left of the blade, or right of it. */
    private static void longPointIsNamed(CardText card, double[] plane, int side) {
        double most = side > 0 ? greatest(plane) : least(plane);
        require(named(card.how().to(), "top face") == (only(plane, most, 1, 3)), card);
        require(named(card.how().to(), "underside") == (only(plane, most, 0, 2)), card);
        require(named(card.how().to(), "far edge") == (only(plane, most, 2, 3)), card);
        require(named(card.how().to(), "near edge") == (only(plane, most, 0, 1)), card);
    }

    private static boolean named(String words, String place) {
        return words.contains(place);
    }

    private static boolean only(double[] plane, double at, int one, int other) {
        for (int c = 0; c < 4; c++) {
            if ((plane[c] == at) != (c == one || c == other)) {
                return false;
            }
        }
        return true;
    }

    private static void require(boolean holds, CardText card) {
        if (!holds) {
            throw new AssertionError("the card does not say it: " + card);
        }
    }

    private PaperSaw with(double[] newLeft, double[] newRight) {
        return new PaperSaw(newLeft, newRight, halfWidthMm, halfThicknessMm);
    }

    /** About its length: far and near change, and up and down; the left end stays on the left. */
    PaperSaw turnedOver() {
        return with(across(left), across(right));
    }

    /** About the upright axis: the right end comes to the left, near and far change. */
    PaperSaw endForEnd() {
        return with(negated(swapped(right)), negated(swapped(left)));
    }

    /** Its left end and then its right one, from its left long point. */
    double[] ends() {
        double[] all = new double[8];
        double first = least(left);
        for (int c = 0; c < 4; c++) {
            all[c] = left[c] - first;
            all[4 + c] = right[c] - first;
        }
        return all;
    }

    private static double[] across(double[] end) {
        return new double[] {end[3], end[2], end[1], end[0]};
    }

    private static double[] swapped(double[] end) {
        return new double[] {end[2], end[3], end[0], end[1]};
    }

    private static double[] negated(double[] end) {
        return new double[] {-end[0], -end[1], -end[2], -end[3]};
    }

    private static double[] shifted(double[] end, double by) {
        return new double[] {end[0] + by, end[1] + by, end[2] + by, end[3] + by};
    }

    private static double least(double[] end) {
        return Math.min(Math.min(end[0], end[1]), Math.min(end[2], end[3]));
    }

    private static double greatest(double[] end) {
        return Math.max(Math.max(end[0], end[1]), Math.max(end[2], end[3]));
    }
}
