package borderwright.app.cut;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What the lists may hold, and what is refused in them. */
class CutListsTest extends CutRuns {
    @Nested
    class Cells {
        @Test
        void aMarkSemicolonsQuotesAndDecimalCommasAreUnderstood() throws IOException {
            Run run = cut(
                    "\uFEFFsection;length_mm;quantity;label\nlarch;\"1199,5\";2;\"side; left\"\n",
                    "supplier;section;length_mm;price;available;pack\nA;larch;2402;7,50;;\n",
                    "--json");
            assertThat(run.code()).as(run.err()).isZero();
            assertThat(run.json().get("cost").decimalValue()).isEqualByComparingTo("7.5");
            JsonNode piece = run.json().get("boards").get(0).get("pieces").get(0);
            assertThat(piece.get("label").asText()).isEqualTo("side; left");
            assertThat(piece.get("length_mm").decimalValue()).isEqualByComparingTo("1199.5");
            assertThat(run.err())
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
            assertThat(run.code()).as(run.err()).isZero();
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
            assertThat(run.code()).isEqualTo(2);
            assertThat(run.err()).contains("bad.csv: The file is not UTF-8 text.");
        }
    }

    @Nested
    class Refusals {
        private static final String BAD =
                "section,length_mm,quantity,label\n" + "larch,abc,1,a\nlarch,500,1,b\nlarch,-3,1,c\nlarch,600,x,d\n";

        @Test
        void everyBadRowIsNamedAndNothingIsCut() throws IOException {
            Run run = cut(BAD, BOARDS, "--json");
            assertThat(run.code()).isEqualTo(2);
            assertThat(run.out()).isEmpty();
            assertThat(run.err().lines())
                    .containsExactly(
                            "P.csv:2: The length 'abc' is not a number above 0.",
                            "P.csv:4: The length '-3' is not a number above 0.",
                            "P.csv:5: The quantity 'x' is not a whole number from 0 to 1000000000.",
                            "Nothing was cut: the input has 3 faults. Use --skip-bad to drop bad rows.");
        }

        @Test
        void badRowsAreDroppedAndListedWhenAsked() throws IOException {
            Run run = cut(BAD, BOARDS, "--json", "--skip-bad");
            assertThat(run.code()).isZero();
            assertThat(run.err()).contains("Dropped: P.csv:2:");
            assertThat(run.json().get("boards").get(0).get("pieces")).hasSize(1);
        }

        @Test
        void aQuotedCellOverTwoLinesDoesNotShiftTheLineNumbers() throws IOException {
            Run run = cut("section,length_mm,quantity,label\nlarch,500,1,\"two\nlines\"\nlarch,abc,1,a\n", BOARDS);
            assertThat(run.err()).startsWith("P.csv:4: ");
        }

        @Test
        void anEmptyFileIsReported() throws IOException {
            Run run = cut("", BOARDS);
            assertThat(run.code()).isEqualTo(2);
            assertThat(run.err()).contains("P.csv: The file is empty");
        }

        @Test
        void aMissingFileAndAMissingColumnAreReportedTogether() throws IOException {
            Run run = cut(
                    "section,length\n",
                    BOARDS,
                    "--terms",
                    folder.resolve("none.csv").toString());
            assertThat(run.code()).isEqualTo(2);
            assertThat(run.err())
                    .contains("P.csv: A column of lengths is missing. Name it with its unit: length_mm,")
                    .contains("none.csv: There is no such file.");
        }

        @Test
        void pointsAndCommasInOneFileAreNotGuessedAt() throws IOException {
            Run run = cut("section,length_mm,quantity,label\nlarch,500.5,1,a\nlarch,\"600,5\",1,b\n", BOARDS);
            assertThat(run.code()).isEqualTo(2);
            assertThat(run.err())
                    .startsWith(
                            "P.csv:3: The length '600,5' has a decimal comma, but line 2 of this file has a decimal point.");
        }

        @Test
        void secondsAndWorkTogetherAreRefused() throws IOException {
            Run run = cut("section,length_mm,quantity,label\n", BOARDS, "--effort", "5", "--seconds", "1");
            assertThat(run.code()).isEqualTo(2);
            assertThat(run.err()).contains("--effort: Give --seconds or --effort, not both.");
        }
    }
}
