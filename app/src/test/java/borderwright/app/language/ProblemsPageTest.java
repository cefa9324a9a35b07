package borderwright.app.language;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.app.docs.Pages;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.MessageCode;
import borderwright.pack.language.Language;
import borderwright.words.Catalogue;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** docs/problems.md lists every fault of the catalogue: every code that tells what would be right. */
class ProblemsPageTest {
    private static final Path PAGE = Pages.ROOT.resolve("docs/problems.md");
    private static final String MARK = "<!-- made by ProblemsPageTest -->\n";

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
        assertThat(Codes.all().stream().filter(ProblemsPageTest::isFault))
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
                    .flatMap(room -> Codes.all().stream().filter(code -> isFault(code) && isWithin(code, room)))
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
        Catalogue words = Catalogue.english();
        return "| `" + code.key() + "` | "
                + cell(Placeholders.of(words.pattern(code.key()))) + " | "
                + cell(Placeholders.of(words.pattern(code.key() + ".right"))) + " | "
                + cell(Language.english().in(UnitSystem.METRIC).sentence(Examples.of(code))) + " |\n";
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
