package borderwright.app.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.cutting.CuttingPlanner;
import borderwright.engine.cutting.PlaneVerifier;
import borderwright.engine.effort.Budget;
import borderwright.engine.garden.SawSpec;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.given.GivenSaw;
import borderwright.engine.garden.resolve.WoodResolver;
import borderwright.engine.garden.vocabulary.SawKind;
import borderwright.engine.measure.Length;
import borderwright.engine.plan.Plan;
import borderwright.engine.stock.row.BoardInHand;
import borderwright.engine.stock.row.CuttingJob;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.sheets.CutText;
import borderwright.pack.sheets.saw.CardText;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The set-up cards and cutting sheets of the examples, read as a person would: whoever does what the printed words say, and no
 * more, gets every piece as it stands in its box, its outer face out and its left end left, and never its mirror image.
 */
class CardsOnPaperTest {
    private static final double MM_PER_INCH = 25.4;
    /** Rounding to ticks, and lengths that print to 0.1 mm or 1/16 in. */
    private static final double SAME_MM = 0.12;

    /** Angles go up to the next step of a saw: 200 mm by the tangent of 0.1 degrees. */
    private static final double SHAPE_MM = 0.4;

    private static final Pattern CARDS = Pattern.compile("(?:cards (\\d+), |card )(\\d+)");

    @ParameterizedTest
    @MethodSource("borderwright.app.plan.ExamplePlans#names")
    void thePiecesOfAnExampleComeOutOfItsCards(String example) {
        Plan plan = ExamplePlans.of(example);
        assertThat(cut(plan, plan.cutting())).isGreaterThan(20);
    }

    @ParameterizedTest
    @CsvSource({
        "terrace-corner, TABLE_SAW", "terrace-corner, MITRE_SAW", "terrace-corner, CIRCULAR_SAW",
                "terrace-corner, HANDSAW",
        "garden-bend, TABLE_SAW", "garden-bend, MITRE_SAW", "garden-bend, CIRCULAR_SAW", "garden-bend, HANDSAW",
        "sloping-border, TABLE_SAW", "sloping-border, MITRE_SAW", "sloping-border, CIRCULAR_SAW",
                "sloping-border, HANDSAW"
    })
    void andWithEachKindOfSaw(String example, SawKind kind) {
        Plan plan = ExamplePlans.of(example);
        SawSpec saw = WoodResolver.saw(GivenSaw.builder("saw", kind).build());
        assertThat(cut(plan, cutting(plan, saw))).isGreaterThan(20);
    }

    /** A card that is wrong in one word gives a wrong piece: the reader above would notice. */
    @ParameterizedTest
    @EnumSource(CardSlip.class)
    void aWrongWordOnACardIsNoticed(CardSlip slip) {
        Plan plan = ExamplePlans.of("terrace-corner");
        int noticed = 0;
        int wrong = 0;
        for (CuttingPlan.SetUp setUp : plan.cutting().setUps()) {
            CardText card = CardText.of(setUp, plan.cutting(), figures(plan));
            CardText other = slip.in(card);
            if (other.equals(card)) {
                continue;
            }
            wrong++;
            try {
                cut(plan, plan.cutting(), Map.of(card.number(), other));
            } catch (AssertionError found) {
                noticed++;
            }
        }
        assertThat(wrong).isPositive();
        assertThat(noticed).isEqualTo(wrong);
    }

    @Test
    void noTwoCardsOfAnExamplePrintAlike() throws IOException {
        for (String example : ExamplePlans.names()) {
            Plan plan = ExamplePlans.of(example);
            assertThat(plan.cutting().setUps().stream()
                            .map(setUp -> settings(CardText.of(setUp, plan.cutting(), figures(plan)))))
                    .as(example)
                    .doesNotHaveDuplicates();
        }
    }

    /** All that a card prints but its number and its pieces. */
    static String settings(CardText card) {
        return card.title().replaceAll("Set-up \\d+", "")
                + card.stop()
                + card.how().to()
                + card.how().setting()
                + card.how().face()
                + card.how().keep();
    }

    private static PrintedFigures figures(Plan plan) {
        return PrintedFigures.in(plan.garden().units());
    }

    /** The same pieces from boards bought for them, three from each, with one saw. */
    private static CuttingPlan cutting(Plan plan, SawSpec saw) {
        List<Piece> pieces = plan.boxes().stream()
                .flatMap(box -> box.pieces().stream())
                .filter(piece -> piece.rip() == null)
                .toList();
        Map<String, List<Piece>> bySection = new LinkedHashMap<>();
        pieces.forEach(piece -> bySection
                .computeIfAbsent(piece.section(), k -> new ArrayList<>())
                .add(piece));
        List<BoardInHand> boards = new ArrayList<>();
        bySection.forEach((section, all) -> {
            for (int from = 0; from < all.size(); from += 3) {
                List<Piece> here = all.subList(from, Math.min(from + 3, all.size()));
                double mm = here.stream().mapToDouble(p -> p.length().mm() + 20).sum() + 40;
                boards.add(BoardInHand.bought(boards.size() + 1, section, Length.ofMm(mm), "A", Length.ofMm(10))
                        .meantFor(here.stream().map(Piece::label).toList()));
            }
        });
        CuttingJob job =
                new CuttingJob(boards, pieces, plan.garden().sections(), List.of(saw), WoodResolver.usualCutting());
        return PlaneVerifier.verified(job, CuttingPlanner.plan(job, Budget.ofSteps(1000)));
    }

    private static int cut(Plan plan, CuttingPlan cutting) {
        return cut(plan, cutting, Map.of());
    }

    /** Cuts every board as the sheets say; how many pieces came out right. */
    private static int cut(Plan plan, CuttingPlan cutting, Map<Integer, CardText> instead) {
        PrintedFigures f = figures(plan);
        Map<Integer, CardText> cards = new HashMap<>();
        cutting.setUps().forEach(setUp -> cards.put(setUp.number(), CardText.of(setUp, cutting, f)));
        cards.putAll(instead);
        Map<String, Piece> pieces = new HashMap<>();
        for (Box box : plan.boxes()) {
            box.pieces().forEach(piece -> pieces.put(piece.label(), piece));
        }
        int right = 0;
        for (CuttingPlan.BoardCuts board : cutting.boards()) {
            SectionSpec section = plan.garden().sections().stream()
                    .filter(s -> s.name().equals(board.section()))
                    .findFirst()
                    .orElseThrow();
            PaperSaw rest = PaperSaw.board(
                    board.length().mm(),
                    section.width().mm(),
                    section.thickness().mm());
            for (int i = 0; i < board.cuts().size(); i++) {
                String label = board.cuts().get(i).label();
                CutText row = CutText.of(i, board.cuts().get(i), cutting, f);
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
                if (piece.rip() == null) {
                    isThePiece(both[0], row, piece, section);
                    right++;
                }
            }
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

    private static void isThePiece(PaperSaw wood, CutText row, Piece piece, SectionSpec section) {
        PaperSaw laid = row.how().contains("outer face down") ? wood.turnedOver() : wood;
        laid = row.how().contains("end for end") ? laid.endForEnd() : laid;
        double[] stands = StandingPiece.ends(piece, section);
        double step = piece.length().ticks() % Length.ofMm(1).ticks() == 0 ? 1 : MM_PER_INCH / 16;
        assertThat(greatest(stands) - greatest(laid.ends()))
                .as("how much shorter than its place is " + piece.label() + " " + row)
                .isBetween(-SAME_MM, 2 * step);
        assertThat(shape(laid.ends())).as(piece.label() + " " + row).containsExactly(shape(stands), within(SHAPE_MM));
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
