package borderwright.app.language;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.app.docs.Pages;
import borderwright.app.document.DocumentAnswer;
import borderwright.app.document.GardenReader;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Sentences;
import borderwright.pack.language.Language;
import borderwright.words.Catalogue;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** docs/problems.md lists every fault of the catalogue: every code that tells what would be right. */
class ProblemsPageTest {
    private static final Path PAGE = Pages.ROOT.resolve("docs/problems.md");
    private static final String MARK = "<!-- made by ProblemsPageTest -->\n";

    private static final Sentences ENGLISH = Language.english().in(UnitSystem.METRIC);
    private static final Map<String, String> FROM_BROKEN_GARDENS = fromBrokenGardens();

    private static final List<MessageCode> FAULTS =
            Codes.all().stream().filter(ProblemsPageTest::isFault).toList();

    /** The sections of the page, in the order of the job, each with the packages whose faults it lists. */
    private static final Map<String, List<String>> SECTIONS = new LinkedHashMap<>();

    static {
        SECTIONS.put("The garden document", List.of("app.document"));
        SECTIONS.put("Lengths and angles", List.of("engine.reading"));
        SECTIONS.put("Names and values that must agree", List.of("engine.garden"));
        SECTIONS.put("Survey", List.of("engine.survey"));
        SECTIONS.put("Layout", List.of("engine.layout"));
        SECTIONS.put("Boxes and their pieces", List.of("engine.buildup"));
        SECTIONS.put("Strength", List.of("engine.strength"));
        SECTIONS.put(
                "The site",
                List.of("engine.ground", "engine.filling", "engine.planting", "engine.settingout", "engine.sequence"));
        SECTIONS.put(
                "Buying and cutting",
                List.of("engine.stock", "engine.prices", "engine.buying", "engine.cutting", "engine.shopping"));
        SECTIONS.put("The first estimate", List.of("engine.estimate", "app.plan"));
        SECTIONS.put("Work in progress", List.of("engine.sitelog"));
        SECTIONS.put("The plan", List.of("engine.floors", "engine.plan", "pack"));
        SECTIONS.put("Lists for `cut`", List.of("app.cut"));
    }

    @Test
    void thePageIsTheGeneratedOne() throws IOException {
        String text = Files.readString(PAGE);
        String whole = text.substring(0, text.indexOf(MARK) + MARK.length()) + "\n" + sections();
        if ("yes".equals(System.getProperty("renew"))) {
            Files.writeString(PAGE, whole);
        }
        assertThat(PAGE)
                .as("to renew it: ./test app ProblemsPageTest -Drenew=yes")
                .hasContent(whole);
    }

    @Test
    void everyFaultHasItsSection() {
        assertThat(FAULTS)
                .allSatisfy(code -> assertThat(SECTIONS.values().stream()
                                .flatMap(List::stream)
                                .anyMatch(within -> isWithin(code, within)))
                        .as("%s of %s", code.key(), code.getClass())
                        .isTrue());
    }

    private static String sections() {
        StringBuilder out = new StringBuilder();
        SECTIONS.forEach((title, rooms) -> {
            List<MessageCode> faults = rooms.stream()
                    .flatMap(room -> FAULTS.stream().filter(code -> isWithin(code, room)))
                    .toList();
            if (!faults.isEmpty()) {
                out.append("## ").append(title).append("\n\n");
                out.append("| name | what is wrong | what would be right | example |\n|---|---|---|---|\n");
                faults.forEach(fault -> out.append(row(fault)));
                out.append('\n');
            }
        });
        return out.toString();
    }

    private static String row(MessageCode code) {
        String what = Placeholders.of(Catalogue.english().pattern(code.key()));
        String right = Placeholders.of(Catalogue.english().pattern(code.key() + ".right"));
        // a sentence without a slot is its own example
        String example = (what + right).contains("‹")
                ? FROM_BROKEN_GARDENS.getOrDefault(code.key(), ENGLISH.sentence(Examples.of(code)))
                : "";
        return "| `" + code.key() + "` | " + cell(what) + " | " + cell(right) + " | " + cell(example) + " |\n";
    }

    /** The first fault of each code in the broken gardens of the tests. */
    private static Map<String, String> fromBrokenGardens() {
        Map<String, String> found = new HashMap<>();
        try (Stream<Path> files =
                Files.list(Pages.ROOT.resolve("app/src/test/resources/borderwright/app/document/broken"))) {
            for (Path file : files.sorted().toList()) {
                if (GardenReader.read(Files.readAllBytes(file)) instanceof DocumentAnswer.Faulty faulty) {
                    faulty.faults()
                            .forEach(fault -> found.putIfAbsent(
                                    fault.problem().code(), fault.problem().sentence(ENGLISH)));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return found;
    }

    private static String cell(String text) {
        return text.replace("|", "\\|");
    }

    private static boolean isFault(MessageCode code) {
        return Catalogue.english().has(code.key() + ".right");
    }

    private static boolean isWithin(MessageCode code, String room) {
        return (code.getClass().getPackageName() + ".").startsWith("borderwright." + room + ".");
    }
}
