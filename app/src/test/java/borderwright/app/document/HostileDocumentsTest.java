package borderwright.app.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Documents that are made to exhaust time or memory: each is refused in a sentence before it can. */
class HostileDocumentsTest {
    static final Set<String> KINDS_SHOWN_THERE = Set.of(
            "document-too-big",
            "document-too-deep",
            "document-too-long",
            "group-too-long",
            "text-too-long",
            "too-many-faults",
            "variants-too-many");

    private static final String SMALL = Documents.resource("small.yaml");

    private static String only(String text) {
        List<String> faults = Documents.faults(text);
        assertThat(faults).hasSize(1);
        return faults.get(0);
    }

    private static String last(String text) {
        List<String> faults = Documents.faults(text);
        return faults.get(faults.size() - 1);
    }

    @Test
    void aDocumentOfMoreThanAMebibyteIsNotParsed() {
        assertThat(only("#".repeat((1 << 20) + 1)))
                .isEqualTo("garden.yaml:1:1: The document is larger than 1048576 bytes (1 MiB)."
                        + " A garden takes a few thousand: check that this is the right file.");
    }

    @Test
    void anEndlessStreamIsNotReadToItsEnd() throws IOException {
        class Endless extends InputStream {
            long given;

            @Override
            public int read() {
                given++;
                return 'a';
            }

            @Override
            public int read(byte[] bytes, int from, int length) {
                Arrays.fill(bytes, from, from + length, (byte) 'a');
                given += length;
                return length;
            }
        }
        Endless endless = new Endless();
        assertThat(GardenReader.read(endless)).isInstanceOf(DocumentAnswer.Faulty.class);
        assertThat(endless.given).isEqualTo((1 << 20) + 1);
    }

    @Test
    void aNameTurnsNoTextRoundAndIsOneLine() {
        assertThat(last("name: \"Bed \\u202E one\"\n")).contains("The character U+202E here cannot be printed.");
        assertThat(last("name: \"Bed \\u0007 one\"\n")).contains("The character U+0007 here cannot be printed.");
        assertThat(last("name: \"Bed\\none\"\nunits: \"me\\ntric\"\n")).contains("`me tric`");
    }

    @Test
    void bracketsWithinBracketsStopAtTwenty() {
        assertThat(only("[".repeat(1 << 20)))
                .startsWith("garden.yaml:1:21: ")
                .endsWith("More than 20 groups or lists stand within each other here."
                        + " A garden needs no more than nine; look for a bracket too many.");
        assertThat(only("{a: ".repeat(200_000))).contains("More than 20 groups or lists");
        assertThat(only("- ".repeat(500_000))).contains("More than 20 groups or lists");
        assertThat(only("? ".repeat(500_000))).contains("More than 20 groups or lists");
    }

    @Test
    void moreKeysAndValuesThanAnyGardenStopTheReading() {
        assertThat(only("owned: [" + "a,".repeat(500_000) + "]"))
                .endsWith("The document has more than 100000 keys and values."
                        + " Split it, or leave out the price lines that are not needed.");
        String keys =
                IntStream.range(0, 50_000).mapToObj(i -> "k" + i + ": 1\n").collect(Collectors.joining());
        assertThat(only(keys))
                .endsWith("A group of more than 100 keys stands here."
                        + " No part of a garden has so many; look at its indentation.");
    }

    @Test
    void aVeryLongTextIsRefusedAndTheRestStillRead() {
        String faulty =
                SMALL.replace("name: Small", "name: " + "x".repeat(500_000)).replace("GBP", "GPB");
        assertThat(Documents.faults(faulty))
                .containsExactly(
                        "garden.yaml:1:7: name: A text of 500000 characters stands here. The most is 2000.",
                        "garden.yaml:2:11: currency: `GPB` is not a currency of ISO 4217."
                                + " Write its three letters, such as `GBP`, `EUR` or `USD`. Perhaps you meant `GBP`.");
    }

    @Test
    void aTextOfHalfAMillionDigitsIsNoNumber() {
        assertThat(only(SMALL.replace("9.60", "9".repeat(1_900)))).contains("is too large or has too many decimals");
        assertThat(only(SMALL.replace("4.8 m", "9".repeat(1_900) + " m")))
                .contains("A text of 1902 characters is too long for a length or an angle.");
        assertThat(only(SMALL.replace("9.60", "0." + "9".repeat(1_900)))).contains("too many decimals");
    }

    @Test
    void faultsWithoutNumberAreShownUpToFiveHundred() {
        String runs = IntStream.range(0, 15_000)
                .mapToObj(i -> "  - {section: spruce" + i + ", length: 1}\n")
                .collect(Collectors.joining());
        String text = SMALL + "owned:\n" + runs;
        assertThat(Documents.faults(text)).hasSize(501);
        assertThat(last(text)).endsWith("There are more than 500 faults; the rest are not shown. Mend these first.");
    }

    @Test
    void manyUnknownNamesAgainstManyKnownOnesStayBounded() {
        String sections = IntStream.range(0, 5_000)
                .mapToObj(i -> "  - {name: a board with quite a long name " + i + ", thickness: 25 mm, width: 15 cm}\n")
                .collect(Collectors.joining());
        String owned = IntStream.range(0, 5_000)
                .mapToObj(i -> "  - {section: a bored with quite a long name " + i + ", length: 1 m}\n")
                .collect(Collectors.joining());
        String text = SMALL.replace("suppliers:", sections + "suppliers:") + "owned:\n" + owned;
        assertThat(Documents.faults(text)).hasSize(501);
    }

    @Test
    void twentyVariantsAreRead() {
        String variants = IntStream.range(0, 20)
                .mapToObj(i -> "  - {name: v" + i + ", changes: {budget: " + i + "}}\n")
                .collect(Collectors.joining());
        assertThat(Documents.faults(SMALL + "variants:\n" + variants)).isEmpty();
        assertThat(only(SMALL + "variants:\n" + variants + variants))
                .isEqualTo("garden.yaml:18:3: variants: 40 variants stand here. The most is 20.");
    }
}
