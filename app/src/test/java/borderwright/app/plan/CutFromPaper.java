package borderwright.app.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.plan.Plan;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.sheets.CutText;
import borderwright.pack.sheets.saw.CardText;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Cuts pieces from the printed words of cards and cutting sheets alone, and holds each beside its place in its box.
 *
 * @param pieces by label
 * @param sections of their boards
 * @param figures as printed
 * @param stepMm to which lengths are cut
 */
record CutFromPaper(Map<String, Piece> pieces, List<SectionSpec> sections, PrintedFigures figures, double stepMm) {
    private static final double MM_PER_INCH = 25.4;
    /** Rounding to ticks, and lengths that print to 0.1 mm or 1/16 in. */
    private static final double SAME_MM = 0.12;

    /** Angles go up to the next step of a saw, 0.1 degrees. */
    private static final double STEP = Math.toRadians(0.1);

    private static final double HAIR_MM = 0.06;

    private static final Pattern CARDS = Pattern.compile("(?:cards (\\d+), |card )(\\d+)");

    static CutFromPaper of(Plan plan) {
        List<Piece> all =
                plan.boxes().stream().flatMap(box -> box.pieces().stream()).toList();
        return of(all, plan.garden().sections(), plan.garden().units());
    }

    static CutFromPaper of(List<Piece> all, List<SectionSpec> sections, UnitSystem units) {
        Map<String, Piece> pieces = new HashMap<>();
        all.forEach(piece -> pieces.put(piece.label(), piece));
        return new CutFromPaper(
                pieces, sections, PrintedFigures.in(units), units == UnitSystem.METRIC ? 1 : MM_PER_INCH / 16);
    }

    CardText card(CuttingPlan.SetUp setUp, CuttingPlan cutting) {
        return CardText.of(setUp, cutting, figures);
    }

    /** Cuts every board as the sheets say; how many pieces came out right. */
    int cut(CuttingPlan cutting) {
        return cut(cutting, Map.of());
    }

    /** The same with other cards in place of those of these numbers. */
    int cut(CuttingPlan cutting, Map<Integer, CardText> instead) {
        Map<Integer, CardText> cards = new HashMap<>();
        cutting.setUps().forEach(setUp -> cards.put(setUp.number(), card(setUp, cutting)));
        cards.putAll(instead);
        return cutting.boards().stream()
                .mapToInt(board -> cut(board, cutting, cards))
                .sum();
    }

    private int cut(CuttingPlan.BoardCuts board, CuttingPlan cutting, Map<Integer, CardText> cards) {
        SectionSpec section = sections.stream()
                .filter(s -> s.name().equals(board.section()))
                .findFirst()
                .orElseThrow();
        PaperSaw rest = PaperSaw.board(
                board.length().mm(), section.width().mm(), section.thickness().mm());
        int right = 0;
        for (int i = 0; i < board.cuts().size(); i++) {
            String label = board.cuts().get(i).label();
            CutText row = CutText.of(i, board.cuts().get(i), cutting, figures);
            Matcher numbers = CARDS.matcher(row.cards());
            assertThat(numbers.matches()).as(row.cards()).isTrue();
            boolean outerUp = !row.how().contains("outer face down");
            if (numbers.group(1) != null) {
                rest = rest.newEnd(named(cards, numbers.group(1), label), outerUp);
            }
            CardText card = named(cards, numbers.group(2), label);
            double length = mm(card.stop().isEmpty() ? row.length() : card.stop());
            assertThat(length).as(label).isEqualTo(mm(row.length()));
            PaperSaw[] both = rest.toLength(card, outerUp, length);
            rest = both[1];
            Piece piece = pieces.get(label);
            isThePiece(both[0], row, piece, section);
            right++;
        }
        return right;
    }

    /** The card of that number, which must name the piece. */
    private static CardText named(Map<Integer, CardText> cards, String number, String label) {
        CardText card = cards.get(Integer.parseInt(number));
        String planter = label.substring(0, label.indexOf('-'));
        String part = label.substring(label.indexOf('-') + 1);
        boolean named = !card.tally().numbers().isEmpty()
                || card.pieces().stream()
                        .anyMatch(pieces -> pieces.planter().equals(planter)
                                        && pieces.parts().contains(part)
                                || pieces.parts().stream().anyMatch(one -> one.startsWith(label + " ")));
        assertThat(named).as(label + " on " + card).isTrue();
        return card;
    }

    private void isThePiece(PaperSaw wood, CutText row, Piece piece, SectionSpec section) {
        PaperSaw laid = row.how().contains("outer face down") ? wood.turnedOver() : wood;
        laid = row.how().contains("end for end") ? laid.endForEnd() : laid;
        double[] stands = StandingPiece.ends(piece, section);
        assertThat(greatest(stands) - greatest(laid.ends()))
                .as("how much shorter than its place is " + piece.label() + " " + row)
                .isBetween(-SAME_MM, 2 * stepMm);
        double off = Math.max(
                offByAStep(stands, 0, section.width().mm(), section.thickness().mm()),
                offByAStep(stands, 4, section.width().mm(), section.thickness().mm()));
        assertThat(shape(laid.ends())).as(piece.label() + " " + row).containsExactly(shape(stands), within(off));
    }

    /** By how much the short point of an end is off where its angle is a step too great. */
    private static double offByAStep(double[] ends, int first, double widthMm, double thicknessMm) {
        double overWidth = (ends[first + 2] - ends[first]) / widthMm;
        double overThickness = (ends[first + 1] - ends[first]) / thicknessMm;
        return HAIR_MM
                + STEP * widthMm * (1 + overWidth * overWidth)
                + STEP * thicknessMm * (1 + overThickness * overThickness);
    }

    private static double greatest(double[] ends) {
        return Arrays.stream(ends).max().orElseThrow();
    }

    /** How far each corner lies back from the long point of its end. */
    private static double[] shape(double[] ends) {
        double[] shape = ends.clone();
        double most = greatest(ends);
        for (int c = 4; c < 8; c++) {
            shape[c] -= most;
        }
        return shape;
    }

    /** A printed length: {@code 1277.5 mm}, {@code 3.6 m}, {@code 73-7/16"} or {@code 12' 2-7/8"}. */
    static double mm(String printed) {
        Matcher metric = Pattern.compile("(-?[\\d.]+) (mm|m)").matcher(printed);
        if (metric.matches()) {
            return Double.parseDouble(metric.group(1)) * (metric.group(2).equals("m") ? 1000 : 1);
        }
        Matcher inches = Pattern.compile("(?:(\\d+)' )?(?:(\\d+)-)?(?:(\\d+)/(\\d+)|(\\d+))\"")
                .matcher(printed);
        assertThat(inches.matches()).as(printed).isTrue();
        double sum = 12 * number(inches.group(1)) + number(inches.group(2)) + number(inches.group(5));
        return MM_PER_INCH * (sum + (inches.group(3) == null ? 0 : number(inches.group(3)) / number(inches.group(4))));
    }

    private static double number(String digits) {
        return digits == null ? 0 : Double.parseDouble(digits);
    }
}
