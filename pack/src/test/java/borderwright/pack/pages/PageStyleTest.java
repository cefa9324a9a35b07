package borderwright.pack.pages;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.plan.Comparison;
import borderwright.engine.plan.Plan;
import borderwright.pack.SamplePlan;
import borderwright.pack.contents.SheetList;
import borderwright.pack.paper.PaperSize;
import borderwright.pack.paper.Tone;
import borderwright.pack.sheets.Sheet;
import borderwright.pack.sheets.SheetRun;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PageStyleTest {
    private static final String CSS = css();

    private static String css() {
        Plan plan = SamplePlan.small("Small");
        List<Sheet> sheets = SheetList.of(plan, Comparison.NONE, PaperSize.A4, Optional.empty());
        return PageStyle.css(plan.garden(), SheetRun.of(sheets), PaperSize.A4);
    }

    private static List<String> found(String pattern, String in) {
        return Pattern.compile(pattern)
                .matcher(in)
                .results()
                .map((MatchResult m) -> m.group(1))
                .toList();
    }

    @Test
    void everySizeOfTypeIsOnTheScaleAndEveryStepOfTheScaleIsUsed() {
        Set<Double> used = new TreeSet<>();
        found("font-size: *([^;}]+)", CSS).forEach(size -> {
            assertThat(size).endsWith("pt");
            used.add(Double.parseDouble(size.replace("pt", "")));
        });

        assertThat(used).containsExactlyInAnyOrderElementsOf(PageStyle.SIZES_PT);
    }

    @Test
    void noTemplateHasASizeOrAColourOfItsOwn() throws IOException {
        try (Stream<Path> templates = Files.list(Path.of("src", "main", "jte"))) {
            assertThat(templates)
                    .hasSizeGreaterThan(15)
                    .allSatisfy(template ->
                            assertThat(read(template)).doesNotContainPattern("font-size|color:|font-family"));
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The least contrast for small text: WCAG 2.1, success criterion 1.4.3, with its definition of relative luminance. */
    @ParameterizedTest
    @EnumSource(
            value = Tone.class,
            names = {"BLACK", "ACCENT"})
    void textStandsOutFromEveryTintItLiesOn(Tone text) {
        for (Tone ground : List.of(Tone.WHITE, Tone.PALE, Tone.LIGHT)) {
            assertThat((luminance(ground) + 0.05) / (luminance(text) + 0.05))
                    .as("%s on %s", text, ground)
                    .isGreaterThan(4.5);
        }
    }

    @Test
    void textHasNoColoursButThoseTones() {
        assertThat(found("[^-]color: *([^;}]+)", CSS))
                .isNotEmpty()
                .allSatisfy(colour -> assertThat(colour).isIn(Tone.BLACK.hex(), Tone.ACCENT.hex()));
    }

    private static double luminance(Tone tone) {
        return 0.2126 * linear(tone.red()) + 0.7152 * linear(tone.green()) + 0.0722 * linear(tone.blue());
    }

    private static double linear(double share) {
        return share <= 0.03928 ? share / 12.92 : StrictMath.pow((share + 0.055) / 1.055, 2.4);
    }
}
