package borderwright.pack.sheets.saw;

import borderwright.pack.paper.TypeFace;
import java.util.ArrayList;
import java.util.List;

/**
 * Sets cards into two columns on each page, in the order of work: down the left column, then down the right one. The last page is
 * filled evenly, so that the next sheet follows on it.
 *
 * <p>The layout of pages knows no columns whose boxes stay whole, so that heights are worked out here from the widths of the
 * shipped font.
 *
 * @param columnMm width of a column
 * @param pageMm height of a page between its margins
 */
record CardColumns(double columnMm, double pageMm) {
    private static final double MM_PER_PT = 25.4 / 72;
    private static final double TEXT_PT = 10;
    private static final double NAME_PT = 11;
    private static final double STOP_PT = 21;

    /** As the style of cards has it: frame and its padding at both sides, then above and below, and the gap to the next card. */
    private static final double FRAME_WIDE_MM = 7;

    private static final double FRAME_HIGH_MM = 2.6;
    private static final double GAP_MM = 2.4;
    private static final double AFTER_TEXT_MM = 0.4;
    private static final double AFTER_LABEL_MM = 2;
    private static final double LINE = 1.2;
    private static final double TICK_LINE = 1.28;

    /** Widths are rounded as lines are set. */
    private static final double SPARE_MM = 2;

    /** Title and the space below it. */
    private static final double TITLE_MM = 9;

    /** The two columns of a page. */
    record Page(List<CardText> left, List<CardText> right) {}

    /** Pages of cards, the first with a title and an introduction above. */
    List<Page> pages(List<CardText> cards, String intro, List<Double> drawingsMm) {
        List<Double> heights = cards.stream()
                .map(card -> heightMm(card, drawingsMm.get(card.number() - 1)))
                .toList();
        List<Page> pages = new ArrayList<>();
        double room = pageMm - TITLE_MM - text(intro, TypeFace.REGULAR, TEXT_PT, 2 * columnMm) - SPARE_MM;
        int from = 0;
        while (from < cards.size()) {
            int middle = fill(heights, from, room);
            int to = fill(heights, middle, room);
            if (to == cards.size()) {
                middle = even(heights, from);
            }
            pages.add(new Page(cards.subList(from, middle), cards.subList(middle, to)));
            from = to;
            room = pageMm - SPARE_MM;
        }
        return pages;
    }

    /** The first card that no longer fits; one always does. */
    private static int fill(List<Double> heights, int from, double room) {
        double used = 0;
        int to = from;
        while (to < heights.size() && (to == from || used + heights.get(to) <= room)) {
            used += heights.get(to);
            to++;
        }
        return to;
    }

    /** Where the rest is parted so that its longer column is the shortest. */
    private static int even(List<Double> heights, int from) {
        int best = heights.size();
        double least = Double.POSITIVE_INFINITY;
        for (int middle = from + 1; middle <= heights.size(); middle++) {
            double longer =
                    StrictMath.max(sum(heights.subList(from, middle)), sum(heights.subList(middle, heights.size())));
            if (longer < least) {
                least = longer;
                best = middle;
            }
        }
        return best;
    }

    private static double sum(List<Double> heights) {
        return heights.stream().mapToDouble(Double::doubleValue).sum();
    }

    private double heightMm(CardText card, double drawingMm) {
        double wide = columnMm - FRAME_WIDE_MM;
        double high = FRAME_HIGH_MM + GAP_MM + drawingMm;
        high += text(card.title(), TypeFace.BOLD, NAME_PT, wide);
        if (card.stop().isEmpty()) {
            high += text(card.how().to(), TypeFace.REGULAR, TEXT_PT, wide);
        } else {
            double stop = TypeFace.BOLD.widthEm(card.stop() + " ") * STOP_PT * MM_PER_PT;
            int lines = lines(words(card.how().to(), TypeFace.REGULAR, TEXT_PT), wide, stop);
            high += (STOP_PT + (lines - 1) * TEXT_PT) * MM_PER_PT * LINE + AFTER_TEXT_MM;
        }
        high += text(
                card.how().setting() + " " + card.how().keep() + " "
                        + card.how().face(),
                TypeFace.BOLD,
                TEXT_PT,
                wide);
        List<Double> words = new ArrayList<>();
        if (card.tally().numbers().isEmpty()) {
            words.addAll(words(card.countWords(), TypeFace.REGULAR, TEXT_PT));
            for (CardText.Pieces pieces : card.pieces()) {
                double first = pieces.planter().isEmpty()
                        ? 0
                        : TypeFace.BOLD.widthEm(pieces.planter() + ": ") * TEXT_PT * MM_PER_PT;
                for (String part : pieces.parts()) {
                    words.add(first + tickMm(part));
                    first = 0;
                }
            }
        } else {
            high += text(card.countWords(), TypeFace.BOLD, TEXT_PT, wide);
            for (String part : card.pieces().get(0).parts()) {
                high += text(part, TypeFace.REGULAR, TEXT_PT, wide);
            }
            words.addAll(words(card.tally().words(), TypeFace.REGULAR, TEXT_PT));
            card.tally().numbers().forEach(number -> words.add(tickMm(String.valueOf(number))));
        }
        return high + lines(words, wide, 0) * TEXT_PT * MM_PER_PT * TICK_LINE + AFTER_TEXT_MM;
    }

    private static double tickMm(String label) {
        return TypeFace.REGULAR.widthEm("\u2610\u00a0" + label + " ") * TEXT_PT * MM_PER_PT + AFTER_LABEL_MM;
    }

    private static double text(String text, TypeFace face, double pt, double wide) {
        return text.isEmpty() ? 0 : lines(words(text, face, pt), wide, 0) * pt * MM_PER_PT * LINE + AFTER_TEXT_MM;
    }

    private static List<Double> words(String text, TypeFace face, double pt) {
        List<Double> widths = new ArrayList<>();
        for (String word : text.split(" ", -1)) {
            widths.add(face.widthEm(word + " ") * pt * MM_PER_PT);
        }
        return widths;
    }

    /** How many lines those words take, the first of them begun already. */
    private static int lines(List<Double> words, double wide, double begun) {
        int lines = 1;
        double used = begun;
        for (double word : words) {
            if (used > 0 && used + word > wide) {
                lines++;
                used = 0;
            }
            used += word;
        }
        return lines;
    }
}
