package borderwright.app.cut;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class CutCommandTest {
    private static final String BOARDS = "supplier,section,length_mm,price,available,pack\nA,larch,2400,7.50,,\n";

    @TempDir
    Path folder = Path.of("");

    private record Run(int code, String out, String err) {
        JsonNode json() throws IOException {
            return new ObjectMapper().readTree(out);
        }
    }

    private Path file(String name, String text) throws IOException {
        return Files.write(folder.resolve(name), text.getBytes(StandardCharsets.UTF_8));
    }

    private Run cut(String pieces, String boards, String... more) throws IOException {
        List<String> args = new ArrayList<>(List.of(
                "--pieces", file("P.csv", pieces).toString(),
                "--boards", file("B.csv", boards).toString()));
        args.addAll(Arrays.asList(more));
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = new CommandLine(new CutCommand())
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(args.toArray(new String[0]));
        return new Run(code, out.toString(), err.toString());
    }

    @Nested
    class Contract {
        @Test
        void jsonHoldsCostBoundProofAndPiecesInOrder() throws IOException {
            Run run = cut("section,length_mm,quantity,label\nlarch,1500,2,side\nlarch,800,1,end\n", BOARDS, "--json");
            assertThat(run.code).isZero();
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
            assertThat(run.code).isZero();
            assertThat(run.out)
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
            assertThat(cut(pieces, BOARDS, "--terms", near.toString()).out)
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
            assertThat(cut(pieces, BOARDS, "--terms", far.toString()).out)
                    .contains("Cost 17.00. No basket costs less.")
                    .contains("delivery 2.00");
            // Without a charge for delivery it is only fetched, and nothing is short enough.
            Path none = file("V.csv", head + "A,,,,,,0,2399\n");
            assertThat(cut(pieces, BOARDS, "--terms", none.toString()).code).isEqualTo(1);
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
            assertThat(run.code).isEqualTo(2);
            assertThat(run.err)
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
            assertThat(cut(pieces, boards).out)
                    .contains("Why this basket:")
                    .contains("The 2400 mm larch from B would be bought at 7.49 or less. It costs 7.60.");
        }

        @Test
        void namesThatTheListsLeaveOutAreLeftOutOfTheTable() throws IOException {
            String boards = "length_mm,price,pack\n2400,7.9,2\n";
            assertThat(cut("length_mm,quantity\n1000,2\n", boards).out)
                    .contains("From the supplier: 15.80 in all (goods 15.80, delivery 0.00, tax 0.00)")
                    .contains("  1 pack of 2 x 2400 mm at 15.80 a pack")
                    .contains("  1 x 2400 mm: 1000, 1000")
                    .contains("1 of the 2400 mm board in packs of 2 is bought but not cut");
            assertThat(cut("length_mm,quantity\n2500,1\n", boards).err)
                    .startsWith(
                            "A piece is 2500 mm long. The longest board on offer gives 2400 mm, 100 mm too little.");
        }

        @Test
        void aPieceTooLongEndsWithOneAndTheReason() throws IOException {
            Run run = cut("section,length_mm,quantity,label\nlarch,2500,1,long\n", BOARDS, "--json");
            assertThat(run.code).isEqualTo(1);
            assertThat(run.err).startsWith("Piece 'long' of section 'larch' is 2500 mm long.");
            assertThat(run.json().get("proven").asBoolean()).isFalse();
        }

        @Test
        void noRowsCostNothing() throws IOException {
            Run run = cut("section,length_mm,quantity,label\n", BOARDS, "--json");
            assertThat(run.code).isZero();
            assertThat(run.json().get("cost").asInt()).isZero();
        }

        @Test
        void workInPlaceOfSecondsGivesTheSameBytes() throws IOException {
            String pieces = "section,length_mm,quantity,label\nlarch,700,5,a\nlarch,650,5,b\nlarch,990,3,c\n";
            Run one = cut(pieces, BOARDS, "--effort", "1000");
            Run two = cut(pieces, BOARDS, "--effort", "1000");
            assertThat(one.out.replaceAll("Solved in .*", "")).isEqualTo(two.out.replaceAll("Solved in .*", ""));
        }
    }

    @Nested
    class Cells {
        @Test
        void aMarkSemicolonsQuotesAndDecimalCommasAreUnderstood() throws IOException {
            Run run = cut(
                    "\uFEFFsection;length_mm;quantity;label\nlarch;\"1199,5\";2;\"side; left\"\n",
                    "supplier;section;length_mm;price;available;pack\nA;larch;2402;7,50;;\n",
                    "--json");
            assertThat(run.code).as(run.err).isZero();
            assertThat(run.json().get("cost").decimalValue()).isEqualByComparingTo("7.5");
            JsonNode piece = run.json().get("boards").get(0).get("pieces").get(0);
            assertThat(piece.get("label").asText()).isEqualTo("side; left");
            assertThat(piece.get("length_mm").decimalValue()).isEqualByComparingTo("1199.5");
            assertThat(run.err)
                    .contains("P.csv: Commas are read as decimal commas (first on line 2).")
                    .contains("B.csv: Commas are read as decimal commas (first on line 2).");
        }

        @Test
        void inchesMayBeFractions() throws IOException {
            Run run = cut(
                    "section,length_in,quantity,label\ncedar,47 15/16,2,side\n",
                    "supplier,section,length_in,price,available,pack\nA,cedar,96,11.20,,\n",
                    "--kerf",
                    "3.175",
                    "--json");
            assertThat(run.code).as(run.err).isZero();
            assertThat(run.json().get("boards")).hasSize(1);
        }

        @Test
        void aByteThatIsNoTextIsReported() throws IOException {
            Files.write(folder.resolve("bad.csv"), new byte[] {(byte) 0xff, (byte) 0xfe, 0, 1});
            Run run = cut(
                    "section,length_mm,quantity,label\n",
                    BOARDS,
                    "--terms",
                    folder.resolve("bad.csv").toString());
            assertThat(run.code).isEqualTo(2);
            assertThat(run.err).contains("bad.csv: The file is not UTF-8 text.");
        }
    }

    @Nested
    class Refusals {
        private static final String BAD =
                "section,length_mm,quantity,label\n" + "larch,abc,1,a\nlarch,500,1,b\nlarch,-3,1,c\nlarch,600,x,d\n";

        @Test
        void everyBadRowIsNamedAndNothingIsCut() throws IOException {
            Run run = cut(BAD, BOARDS, "--json");
            assertThat(run.code).isEqualTo(2);
            assertThat(run.out).isEmpty();
            assertThat(run.err.lines())
                    .containsExactly(
                            "P.csv:2: The length 'abc' is not a number above 0.",
                            "P.csv:4: The length '-3' is not a number above 0.",
                            "P.csv:5: The quantity 'x' is not a whole number from 0 to 1000000000.",
                            "Nothing was cut: the input has 3 faults. Use --skip-bad to drop bad rows.");
        }

        @Test
        void badRowsAreDroppedAndListedWhenAsked() throws IOException {
            Run run = cut(BAD, BOARDS, "--json", "--skip-bad");
            assertThat(run.code).isZero();
            assertThat(run.err).contains("Dropped: P.csv:2:");
            assertThat(run.json().get("boards").get(0).get("pieces")).hasSize(1);
        }

        @Test
        void aQuotedCellOverTwoLinesDoesNotShiftTheLineNumbers() throws IOException {
            Run run = cut("section,length_mm,quantity,label\nlarch,500,1,\"two\nlines\"\nlarch,abc,1,a\n", BOARDS);
            assertThat(run.err).startsWith("P.csv:4: ");
        }

        @Test
        void anEmptyFileIsReported() throws IOException {
            Run run = cut("", BOARDS);
            assertThat(run.code).isEqualTo(2);
            assertThat(run.err).contains("P.csv: The file is empty");
        }

        @Test
        void aMissingFileAndAMissingColumnAreReportedTogether() throws IOException {
            Run run = cut(
                    "section,length\n",
                    BOARDS,
                    "--terms",
                    folder.resolve("none.csv").toString());
            assertThat(run.code).isEqualTo(2);
            assertThat(run.err)
                    .contains("P.csv: A column of lengths is missing. Name it with its unit: length_mm,")
                    .contains("none.csv: There is no such file.");
        }

        @Test
        void pointsAndCommasInOneFileAreNotGuessedAt() throws IOException {
            Run run = cut("section,length_mm,quantity,label\nlarch,500.5,1,a\nlarch,\"600,5\",1,b\n", BOARDS);
            assertThat(run.code).isEqualTo(2);
            assertThat(run.err)
                    .startsWith(
                            "P.csv:3: The length '600,5' has a decimal comma, but line 2 of this file has a decimal point.");
        }

        @Test
        void secondsAndWorkTogetherAreRefused() throws IOException {
            Run run = cut("section,length_mm,quantity,label\n", BOARDS, "--effort", "5", "--seconds", "1");
            assertThat(run.code).isEqualTo(2);
            assertThat(run.err).contains("--effort: Give --seconds or --effort, not both.");
        }
    }

    @Nested
    class Offcuts {
        @Test
        void aWorthNeedsALengthAndNeitherMayBeBelowZero() throws IOException {
            String none = "section,length_mm,quantity,label\n";
            assertThat(cut(none, BOARDS, "--keep-from", "600").err)
                    .contains("--keep-from: Give --keep-from and --keep-worth together");
            assertThat(cut(none, BOARDS, "--keep-from", "0", "--keep-worth", "1").err)
                    .contains("The shortest offcut is 0 mm. It must be above 0 mm.");
            Run below = cut(none, BOARDS, "--keep-from", "600", "--keep-worth", "-1");
            assertThat(below.code).isEqualTo(2);
            assertThat(below.err).contains("A metre of offcut is worth -1. It must be worth 0 or more.");
        }
    }

    @Nested
    class Limits {
        private static final String HEAD = "section,length_mm,quantity,label\n";

        @Test
        void aPieceThatIsExactlyTheBoardNeedsNoCut() throws IOException {
            assertThat(cut(HEAD + "larch,2400,2,a\n", BOARDS, "--json")
                            .json()
                            .get("cost")
                            .decimalValue())
                    .isEqualByComparingTo("15");
        }

        @Test
        void twoPiecesAndTheirKerfMayFillTheBoardToTheTick() throws IOException {
            assertThat(cut(HEAD + "larch,1198.5,2,a\n", BOARDS, "--json").json().get("boards"))
                    .hasSize(1);
            assertThat(cut(HEAD + "larch,1198.51,2,a\n", BOARDS, "--json")
                            .json()
                            .get("cost")
                            .decimalValue())
                    .isEqualByComparingTo("15");
        }

        @Test
        void sixteenthsThatJustFitDoFit() throws IOException {
            String boards = "supplier,section,length_ft,price\nA,cedar,8,11.20\n";
            String pieces = "section,length_in,quantity,label\ncedar,31 11/12,3,side\n";
            // 3 x 31 11/12 + 2 x 1/8 = 96 in: elevenths and twelfths are no whole ticks, and are rounded up.
            assertThat(cut(pieces, boards, "--kerf", "3.175", "--json")
                            .json()
                            .get("cost")
                            .decimalValue())
                    .isEqualByComparingTo("22.4");
            String sixteenths = "section,length_in,quantity,label\ncedar,31 14/16,2,a\ncedar,32,1,b\n";
            assertThat(cut(sixteenths, boards, "--kerf", "3.175", "--json")
                            .json()
                            .get("cost")
                            .decimalValue())
                    .isEqualByComparingTo("11.2");
        }

        @Test
        void withoutAKerfPiecesLieEndToEnd() throws IOException {
            assertThat(cut(HEAD + "larch,800,3,a\n", BOARDS, "--kerf", "0", "--json")
                            .json()
                            .get("cost")
                            .decimalValue())
                    .isEqualByComparingTo("7.5");
        }

        @Test
        void noBoardOnOfferIsReported() throws IOException {
            Run run = cut(HEAD + "larch,800,3,a\n", "supplier,section,length_mm,price,available\nA,larch,2400,7.5,0\n");
            assertThat(run.code).isEqualTo(1);
            assertThat(run.err).contains("needs section 'larch', and none is on offer");
            assertThat(cut(HEAD + "larch,800,3,a\n", "section,length_mm,price\n").code)
                    .isEqualTo(1);
        }

        @Test
        void aBoardForNothingCostsNothing() throws IOException {
            Run run = cut(HEAD + "larch,800,3,a\n", "section,length_mm,price\nlarch,2400,0\n", "--json");
            assertThat(run.json().get("cost").decimalValue()).isZero();
            assertThat(run.json().get("proven").asBoolean()).isTrue();
        }

        @Test
        void lengthsOfTenDigitsAreCounted() throws IOException {
            Run run = cut(
                    HEAD + "rope,4999999998.5,2,a\n",
                    "section,length_mm,price\nrope,9999999999,3\nrope,5000000000,2\n",
                    "--json");
            assertThat(run.json().get("cost").decimalValue()).isEqualByComparingTo("4");
            assertThat(run.json().get("boards").get(0).get("length_mm").asLong())
                    .isEqualTo(5_000_000_000L);
        }

        @Test
        void rowsThatAreThereTwiceCountTwice() throws IOException {
            Run run = cut(HEAD + "larch,2000,1,a\nlarch,2000,1,a\n", BOARDS + "A,larch,2400,7.50,,\n", "--json");
            assertThat(run.json().get("cost").decimalValue()).isEqualByComparingTo("15");
        }

        @Test
        void metresCentimetresAndFeetAreUnderstood() throws IOException {
            for (String pieces : List.of(
                    "section,length_m,quantity\nlarch,1.1985,2\n",
                    "section,length_cm,quantity\nlarch,119.85,2\n",
                    "section;length_m;quantity\nlarch;1,1985;2\n",
                    "section\tlength_ft\tquantity\nlarch\t3.932\t2\n")) {
                assertThat(cut(pieces, BOARDS, "--json").json().get("cost").decimalValue())
                        .as(pieces)
                        .isEqualByComparingTo("7.5");
            }
        }

        @Test
        void aBadBoardIsNotBoughtAndNothingIsCutShortForIt() throws IOException {
            String boards = BOARDS + "A,larch,4800,-1,,\nA,larch,3600,GBP 9,,\nA,larch,3600,9,x,\n";
            Run refused = cut(HEAD + "larch,3000,1,a\n", boards);
            assertThat(refused.code).isEqualTo(2);
            assertThat(refused.err.lines().filter(l -> l.startsWith("B.csv:"))).hasSize(3);
            Run skipped = cut(HEAD + "larch,3000,1,a\n", boards, "--skip-bad");
            assertThat(skipped.code).isEqualTo(1);
            assertThat(skipped.err).contains("Dropped: B.csv:3:").contains("Piece 'a' of section 'larch' is 3000 mm");
        }

        @Test
        void aSumThatNoNumberHoldsIsRefusedInWords() throws IOException {
            Run run = cut(
                    HEAD + "larch,2000,1000000000,a\n", "section,length_mm,price\nlarch,2400,999999999999.999999\n");
            assertThat(run.code).isEqualTo(2);
            assertThat(run.err).contains("too large");
        }

        @Test
        void whatIsLeftOverMayBeWorthALongerBoard() throws IOException {
            String boards = "supplier,section,length_mm,price\nA,larch,2400,10\nA,larch,4800,19\n";
            Run plain = cut(HEAD + "larch,2000,1,a\n", boards, "--json");
            assertThat(plain.json().get("cost").decimalValue()).isEqualByComparingTo("10");
            assertThat(plain.json().has("offcuts_worth")).isFalse();
            // 2.797 m are left of the longer board, 0.397 m of the other: too little to keep.
            Run keeping =
                    cut(HEAD + "larch,2000,1,a\n", boards, "--json", "--keep-from", "600", "--keep-worth", "3.50");
            assertThat(keeping.json().get("cost").decimalValue()).isEqualByComparingTo("19");
            assertThat(keeping.json().get("offcuts_worth").decimalValue()).isEqualByComparingTo("9.78");
            assertThat(keeping.json().get("proven").asBoolean()).isTrue();
        }

        @Test
        void aPriceMayHoldFromANumberOfBoardsOn() throws IOException {
            String boards = "supplier,section,length_mm,price,from\nA,larch,2400,10,\nA,larch,2400,7,4\n";
            assertThat(cut(HEAD + "larch,2000,2,a\n", boards, "--json")
                            .json()
                            .get("cost")
                            .decimalValue())
                    .isEqualByComparingTo("20");
            // Four at 7 cost less than three at 10.
            assertThat(cut(HEAD + "larch,2000,3,a\n", boards, "--json")
                            .json()
                            .get("cost")
                            .decimalValue())
                    .isEqualByComparingTo("28");
            assertThat(cut(HEAD + "larch,2000,5,a\n", boards, "--json")
                            .json()
                            .get("cost")
                            .decimalValue())
                    .isEqualByComparingTo("35");
        }
    }
}
