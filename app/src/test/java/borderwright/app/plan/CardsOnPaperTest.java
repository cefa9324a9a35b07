package borderwright.app.plan;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.cutting.CuttingPlanner;
import borderwright.engine.cutting.PlaneVerifier;
import borderwright.engine.effort.Budget;
import borderwright.engine.garden.SawSpec;
import borderwright.engine.garden.given.GivenSaw;
import borderwright.engine.garden.resolve.WoodResolver;
import borderwright.engine.garden.vocabulary.SawKind;
import borderwright.engine.plan.Plan;
import borderwright.engine.stock.row.CuttingJob;
import borderwright.pack.sheets.saw.CardText;
import java.io.IOException;
import java.util.List;
import java.util.Map;
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
    @ParameterizedTest
    @MethodSource("borderwright.app.plan.ExamplePlans#names")
    void thePiecesOfAnExampleComeOutOfItsCards(String example) {
        Plan plan = ExamplePlans.of(example);
        assertThat(CutFromPaper.of(plan).cut(plan.cutting())).isGreaterThan(20);
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
        assertThat(CutFromPaper.of(plan).cut(cutting(plan, saw))).isGreaterThan(20);
    }

    /** A card that is wrong in one word gives a wrong piece: the reader above would notice. */
    @ParameterizedTest
    @EnumSource(CardSlip.class)
    void aWrongWordOnACardIsNoticed(CardSlip slip) {
        Plan plan = ExamplePlans.of("terrace-corner");
        CutFromPaper reader = CutFromPaper.of(plan);
        int noticed = 0;
        int wrong = 0;
        for (CuttingPlan.SetUp setUp : plan.cutting().setUps()) {
            CardText card = reader.card(setUp, plan.cutting());
            CardText other = slip.in(card);
            if (other.equals(card)) {
                continue;
            }
            wrong++;
            try {
                reader.cut(plan.cutting(), Map.of(card.number(), other));
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
            CutFromPaper reader = CutFromPaper.of(plan);
            assertThat(plan.cutting().setUps().stream().map(setUp -> settings(reader.card(setUp, plan.cutting()))))
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

    /** The same pieces from boards bought for them, three from each, with one saw. */
    private static CuttingPlan cutting(Plan plan, SawSpec saw) {
        List<Piece> pieces =
                plan.boxes().stream().flatMap(box -> box.pieces().stream()).toList();
        CuttingJob job = BoughtForThree.job(pieces, plan.garden().sections(), saw);
        return PlaneVerifier.verified(job, CuttingPlanner.plan(job, Budget.ofSteps(1000)));
    }
}
