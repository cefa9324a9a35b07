package borderwright.app.cut;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class CutCommandTest extends CutRuns {
    @Nested
    class Contract {
        @Test
        void jsonHoldsCostBoundProofAndPiecesInOrder() throws IOException {
            Run run = cut("section,length_mm,quantity,label\nlarch,1500,2,side\nlarch,800,1,end\n", BOARDS, "--json");
            assertThat(run.code()).isZero();
            JsonNode json = run.json();
            assertThat(json.get("cost").decimalValue()).isEqualByComparingTo("15");
            assertThat(json.get("bound").decimalValue()).isEqualByComparingTo("15");
            assertThat(json.get("open_by").asDouble()).isZero();
            assertThat(json.get("proven").asBoolean()).isTrue();
            assertThat(json.get("seconds").asDouble()).isNotNegative();
            JsonNode board = json.get("boards").get(0);
            assertThat(board.get("supplier").asText()).isEqualTo("A");
            assertThat(board.get("section").asText()).isEqualTo("larch");
            assertThat(board.get("length_mm").asInt()).isEqualTo(2400);
            assertThat(board.get("price").decimalValue()).isEqualByComparingTo("7.5");
            assertThat(board.get("pieces").get(0).get("label").asText()).isEqualTo("side");
            assertThat(board.get("pieces").get(0).get("length_mm").asInt()).isEqualTo(1500);
        }

        @Test
        void withoutJsonThereIsATable() throws IOException {
            Run run = cut("section,length_mm,quantity,label\nlarch,1000,2,side\n", BOARDS);
            assertThat(run.code()).isZero();
            assertThat(run.out())
                    .contains("Cost 7.50. No basket costs less.")
                    .contains("1 x 2400 mm larch from A: side 1000, side 1000");
        }

        @Test
        void termsAreCharged() throws IOException {
            Path terms = file("T.csv", "supplier,tax_percent,delivery,free_over,minimum_order\nA,20,10,,\n");
            Run run = cut(
                    "section,length_mm,quantity,label\nlarch,1000,2,side\n",
                    BOARDS,
                    "--terms",
                    terms.toString(),
                    "--json");
            assertThat(run.json().get("cost").decimalValue()).isEqualByComparingTo("21");
        }

        @Test
        void deliveryComesInBandsAndShortBoardsMayBeFetched() throws IOException {
            String pieces = "section,length_mm,quantity,label\nlarch,1000,2,side\n";
            String head =
                    "supplier,tax_percent,delivery,free_over,minimum_order,from_value,collection,collect_up_to_mm\n";
            Path near = file("T.csv", head + "A,,35,,,,4.50,2400\nA,,2,,,14,,\n");
            assertThat(cut(pieces, BOARDS, "--terms", near.toString()).out())
                    .contains("Cost 12.00. No basket costs less.")
                    .contains("fetching it 4.50")
                    .contains("Fetch the order from A yourself, which costs 4.50.")
                    .contains("Boards over 2400 mm cannot be fetched from A.");
            JsonNode fetched = cut(pieces, BOARDS, "--terms", near.toString(), "--json")
                    .json()
                    .at("/why/delivery/0");
            assertThat(fetched.get("fetched").booleanValue()).isTrue();
            assertThat(fetched.at("/other_way/fetched").booleanValue()).isFalse();
            assertThat(fetched.at("/other_way/charge").decimalValue()).isEqualByComparingTo("35");
            // Too long to fetch: a second board costs less than the charge for one.
            Path far = file("U.csv", head + "A,,35,,,,4.50,2399\nA,,2,,,14,,\n");
            assertThat(cut(pieces, BOARDS, "--terms", far.toString()).out())
                    .contains("Cost 17.00. No basket costs less.")
                    .contains("delivery 2.00");
            // Without a charge for delivery it is only fetched, and nothing is short enough.
            Path none = file("V.csv", head + "A,,,,,,0,2399\n");
            assertThat(cut(pieces, BOARDS, "--terms", none.toString()).code()).isEqualTo(1);
        }

        @Test
        void bandsThatCannotBeAreNamed() throws IOException {
            String pieces = "section,length_mm,quantity,label\nlarch,1000,2,side\n";
            String head =
                    "supplier,tax_percent,delivery,free_over,minimum_order,from_value,collection,collect_up_to_mm\n";
            Path terms = file(
                    "T.csv",
                    head + "A,,35,,,,,\nA,,40,,,100,,\nA,,20,,,0,,\nA,20,20,,,50,,\nA,,20,,,,,\nB,,5,,,,,2400\n");
            Run run = cut(pieces, BOARDS, "--terms", terms.toString());
            assertThat(run.code()).isEqualTo(2);
            assertThat(run.err())
                    .contains("T.csv:3: Delivery costs 40 from 100, but 35 below that.")
                    .contains("T.csv:4: The band of delivery from 0 comes after the one from 0.")
                    .contains(
                            "T.csv:5: The tax percent of 'A' stands in a later row. Write it in the supplier's first row, and"
                                    + " leave it empty here.")
                    .contains("T.csv:6: Supplier 'A' has terms already.")
                    .contains("T.csv:7: The longest board to collect is given, but not what collection costs.");
        }

        @Test
        void theBasketIsExplained() throws IOException {
            String pieces = "section,length_mm,quantity,label\nlarch,1000,2,side\n";
            String boards = BOARDS + "B,larch,2400,7.60,,\n";
            Run run = cut(pieces, boards, "--json");
            JsonNode wins = run.json().get("why").get("wins_a_place");
            assertThat(wins.get(0).get("supplier").asText()).isEqualTo("B");
            assertThat(wins.get(0).get("all_prices_lower_percent").decimalValue())
                    .isEqualByComparingTo("1.5");
            assertThat(wins.get(1).get("at_pack_price").decimalValue()).isEqualByComparingTo("7.49");
            assertThat(wins.get(1).get("least").asBoolean()).isTrue();
            assertThat(cut(pieces, boards).out())
                    .contains("Why this basket:")
                    .contains("The 2400 mm larch from B would be bought at 7.49 or less. It costs 7.60.");
        }

        @Test
        void namesThatTheListsLeaveOutAreLeftOutOfTheTable() throws IOException {
            String boards = "length_mm,price,pack\n2400,7.9,2\n";
            assertThat(cut("length_mm,quantity\n1000,2\n", boards).out())
                    .contains("From the supplier: 15.80 in all (goods 15.80, delivery 0.00, tax 0.00)")
                    .contains("  1 pack of 2 x 2400 mm at 15.80 a pack")
                    .contains("  1 x 2400 mm: 1000, 1000")
                    .contains("1 of the 2400 mm board in packs of 2 is bought but not cut");
            assertThat(cut("length_mm,quantity\n2500,1\n", boards).err())
                    .startsWith(
                            "A piece is 2500 mm long. The longest board on offer gives 2400 mm, 100 mm too little.");
        }

        @Test
        void aPieceTooLongEndsWithOneAndTheReason() throws IOException {
            Run run = cut("section,length_mm,quantity,label\nlarch,2500,1,long\n", BOARDS, "--json");
            assertThat(run.code()).isEqualTo(1);
            assertThat(run.err()).startsWith("Piece 'long' of section 'larch' is 2500 mm long.");
            assertThat(run.json().get("proven").asBoolean()).isFalse();
        }

        @Test
        void noRowsCostNothing() throws IOException {
            Run run = cut("section,length_mm,quantity,label\n", BOARDS, "--json");
            assertThat(run.code()).isZero();
            assertThat(run.json().get("cost").asInt()).isZero();
        }

        @Test
        void workInPlaceOfSecondsGivesTheSameBytes() throws IOException {
            String pieces = "section,length_mm,quantity,label\nlarch,700,5,a\nlarch,650,5,b\nlarch,990,3,c\n";
            Run one = cut(pieces, BOARDS, "--effort", "1000");
            Run two = cut(pieces, BOARDS, "--effort", "1000");
            assertThat(one.out().replaceAll("Solved in .*", ""))
                    .isEqualTo(two.out().replaceAll("Solved in .*", ""));
        }
    }

    @Nested
    class Offcuts {
        @Test
        void aWorthNeedsALengthAndNeitherMayBeBelowZero() throws IOException {
            String none = "section,length_mm,quantity,label\n";
            assertThat(cut(none, BOARDS, "--keep-from", "600").err())
                    .contains("--keep-from: Give --keep-from and --keep-worth together");
            assertThat(cut(none, BOARDS, "--keep-from", "0", "--keep-worth", "1")
                            .err())
                    .contains("The shortest offcut is 0 mm. It must be above 0 mm.");
            Run below = cut(none, BOARDS, "--keep-from", "600", "--keep-worth", "-1");
            assertThat(below.code()).isEqualTo(2);
            assertThat(below.err()).contains("A metre of offcut is worth -1. It must be worth 0 or more.");
        }
    }
}
