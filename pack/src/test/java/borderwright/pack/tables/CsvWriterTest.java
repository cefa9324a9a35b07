package borderwright.pack.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CsvWriterTest {

    /** RFC 4180 (Y. Shafranovich, 2005), section 2: rules 1 (line breaks), 6 (quotes needed) and 7 (quotes doubled). */
    @Nested
    class Published {
        @Test
        void linesEndInCarriageReturnAndLineFeed() {
            byte[] bytes = new CsvWriter("a", "b").row("1", "2").bytes();

            assertThat(new String(bytes, StandardCharsets.UTF_8)).isEqualTo("\ufeffa,b\r\n1,2\r\n");
        }

        @Test
        void commasQuotesAndLineBreaksAreQuotedAndQuotesDoubled() {
            byte[] bytes = new CsvWriter("a", "b").row("x, \"y\"", "one\ntwo").bytes();

            assertThat(new String(bytes, StandardCharsets.UTF_8))
                    .isEqualTo("\ufeffa,b\r\n\"x, \"\"y\"\"\",\"one\ntwo\"\r\n");
        }
    }

    @Nested
    class Limits {
        @ParameterizedTest
        @ValueSource(
                strings = {
                    "=1+1",
                    "+44",
                    "-cmd",
                    "@SUM(A1)",
                    "\t=1",
                    "\r=1",
                    "\n=1",
                    "-1-1",
                    "\uff1d1",
                    "=HYPERLINK(\"x\")"
                })
        void aCellThatBeginsLikeAFormulaGetsAnApostrophe(String cell) {
            assertThat(CsvWriter.safe(cell)).isEqualTo("'" + cell);
        }

        @ParameterizedTest
        @ValueSource(strings = {"", "-452", "-0.5", "12", "board B01", "a=b", "x-y", "25 x 150"})
        void anythingElseStaysAsItIs(String cell) {
            assertThat(CsvWriter.safe(cell)).isEqualTo(cell);
        }

        @Test
        void aNullCharacterCannotHideAFormula() {
            assertThat(CsvWriter.safe("\u0000=1")).isEqualTo("'=1");
        }
    }

    @Test
    void whatIsWrittenReadsBackAsItWas() throws IOException {
        List<String> row = List.of("plain", "with, comma", "with \"quotes\"", "two\r\nlines", "  spaces ", "ä € ½", "");
        byte[] bytes = new CsvWriter("a", "b", "c", "d", "e", "f", "g")
                .row(row.toArray(new String[0]))
                .bytes();

        MappingIterator<List<String>> read = CsvMapper.csvBuilder()
                .enable(CsvParser.Feature.WRAP_AS_ARRAY)
                .build()
                .readerForListOf(String.class)
                .readValues(bytes);

        assertThat(read.readAll().get(1)).isEqualTo(row);
    }

    @Test
    void aRowOfAnotherWidthIsRefused() {
        assertThatThrownBy(() -> new CsvWriter("a", "b").row("1"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a row needs 2 cells, got 1");
    }
}
