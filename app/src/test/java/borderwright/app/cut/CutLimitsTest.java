package borderwright.app.cut;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Lists at the edge of what can be cut. */
class CutLimitsTest extends CutRuns {
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
            assertThat(run.code()).isEqualTo(1);
            assertThat(run.err()).contains("needs section 'larch', and none is on offer");
            assertThat(cut(HEAD + "larch,800,3,a\n", "section,length_mm,price\n")
                            .code())
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
            assertThat(refused.code()).isEqualTo(2);
            assertThat(refused.err().lines().filter(l -> l.startsWith("B.csv:")))
                    .hasSize(3);
            Run skipped = cut(HEAD + "larch,3000,1,a\n", boards, "--skip-bad");
            assertThat(skipped.code()).isEqualTo(1);
            assertThat(skipped.err()).contains("Dropped: B.csv:3:").contains("Piece 'a' of section 'larch' is 3000 mm");
        }

        @Test
        void aSumThatNoNumberHoldsIsRefusedInWords() throws IOException {
            Run run = cut(
                    HEAD + "larch,2000,1000000000,a\n", "section,length_mm,price\nlarch,2400,999999999999.999999\n");
            assertThat(run.code()).isEqualTo(2);
            assertThat(run.err()).contains("too large");
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
