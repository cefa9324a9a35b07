package borderwright.app.plan;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.app.plan.PrintedBlocks.Block;
import borderwright.engine.assembly.BoxBench;
import borderwright.engine.assembly.WallBench;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.ScrewLine;
import borderwright.engine.plan.Comparison;
import borderwright.engine.plan.Plan;
import borderwright.pack.pages.PackPages;
import borderwright.pack.paper.PaperSize;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The screws of walls into uprights, read from the text of the PDF file: each lies where the plan drives it, to 1 mm. */
class PrintedScrewsTest {
    private static final Pattern ROW = Pattern.compile("(\\d+) of .*?two in every board, ([\\d., ]+) mm up it"
            + "((?: \\(courses? [\\d, ]+: [\\d., ]+ mm\\))*)(?:: (.*))?");
    private static final Pattern OTHER_COURSES = Pattern.compile("\\(courses? ([\\d, ]+): ([\\d., ]+) mm\\)");
    private static final Pattern PLACE =
            Pattern.compile("([\\d.]+) (mm|m)( left of the hooked end)? into (\\S+) \\((\\d+)\\)");
    private static final double TO_MM = 1.0 + 1e-6;

    /** A screw from the hook along the wall, above its bottom edge, into an upright, mm. */
    private record Screw(String into, double x, double up) {
        boolean isAt(Screw other) {
            return into.equals(other.into) && Math.abs(x - other.x) <= TO_MM && Math.abs(up - other.up) <= TO_MM;
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"fence-to-shed", "terrace-corner", "sloping-border", "garden-bend", "behind-the-shed"})
    void everyScrewOfAWallIsReadFromTheTextOfThePdf(String example) throws IOException {
        Plan plan = ExamplePlans.of(example);
        List<Block> blocks = PrintedBlocks.of(PackPages.pdf(plan, Comparison.NONE, PaperSize.A4, Optional.empty()));
        int screws = 0;
        for (Box box : plan.boxes()) {
            for (WallBench wall : BoxBench.of(box, plan.garden().sections()).walls()) {
                String title = "Side " + wall.mark() + " of " + box.plan().name();
                List<Block> page = page(blocks, title);
                if (wall.kind() == WallBench.Kind.WALL && !page.isEmpty()) {
                    List<Screw> printed = printed(page, box);
                    List<Screw> driven = driven(box, wall);
                    assertThat(printed).as(title).hasSameSizeAs(driven);
                    driven.forEach(one -> takeOff(printed, one, title));
                    screws += driven.size();
                } else if (wall.kind() == WallBench.Kind.WALL) {
                    assertThat(blocks)
                            .as(title + " stands for itself or with another")
                            .anyMatch(block -> block.text()
                                    .matches("Side .*; alike: .*\\b[Ss]ide " + wall.mark() + " of "
                                            + Pattern.quote(box.plan().name()) + "(,.*)?"));
                }
            }
        }
        assertThat(screws).isGreaterThan(40);
    }

    /** Each printed screw stands for one that is driven. */
    private static void takeOff(List<Screw> printed, Screw driven, String title) {
        Optional<Screw> match = printed.stream().filter(driven::isAt).findFirst();
        assertThat(match).as(title + ": " + driven).isPresent();
        printed.remove(match.get());
    }

    /** What follows a heading up to the next. */
    private static List<Block> page(List<Block> blocks, String title) {
        for (int i = 0; i < blocks.size(); i++) {
            boolean isIt = blocks.get(i).kind() == PrintedBlocks.Kind.HEADING
                    && (blocks.get(i).text() + ";").startsWith(title + ";");
            if (isIt) {
                return blocks.subList(i + 1, blocks.size()).stream()
                        .takeWhile(block -> block.kind() != PrintedBlocks.Kind.HEADING)
                        .toList();
            }
        }
        return List.of();
    }

    private static List<Screw> driven(Box box, WallBench wall) {
        return box.joints().stream()
                .filter(joint -> joint.hold() == Box.Hold.WALL_TO_UPRIGHT && joint.side() == wall.index())
                .flatMap(joint -> joint.screws().stream().map(screw -> at(joint.into(), screw, wall)))
                .toList();
    }

    private static Screw at(String into, ScrewLine screw, WallBench wall) {
        return new Screw(
                into, wall.face().x(screw.head()), screw.zMm() - wall.face().bottomMm());
    }

    private static List<Screw> printed(List<Block> page, Box box) {
        List<Screw> screws = new ArrayList<>();
        Map<Integer, List<Double>> heights = Map.of();
        for (Block block : page) {
            Matcher row = ROW.matcher(block.text());
            boolean isParagraph = block.kind() == PrintedBlocks.Kind.PARAGRAPH;
            if (isParagraph && row.matches()) {
                heights = heights(row.group(2), row.group(3), box);
                for (String place : Optional.ofNullable(row.group(4)).orElse("").split("; ")) {
                    add(screws, place, heights);
                }
            } else if (isParagraph) {
                heights = Map.of();
            } else if (!heights.isEmpty()) {
                add(screws, block.text(), heights);
            }
        }
        return screws;
    }

    /** Heights above the bottom edge of the wall, by course. */
    private static Map<Integer, List<Double>> heights(String usual, String others, Box box) {
        Map<Integer, List<Double>> heights = new HashMap<>();
        double bottom = box.courses().get(0).bottomMm();
        for (Box.Course course : box.courses()) {
            heights.put(course.number(), above(usual, course.bottomMm() - bottom));
        }
        Matcher other = OTHER_COURSES.matcher(others);
        while (other.find()) {
            for (String number : other.group(1).split(", ")) {
                Box.Course course = box.courses().get(Integer.parseInt(number) - 1);
                heights.put(course.number(), above(other.group(2), course.bottomMm() - bottom));
            }
        }
        return heights;
    }

    private static List<Double> above(String heights, double bottom) {
        return Stream.of(heights.split(", "))
                .map(height -> bottom + Double.parseDouble(height))
                .toList();
    }

    private static void add(List<Screw> screws, String text, Map<Integer, List<Double>> heights) {
        Matcher place = PLACE.matcher(text);
        if (place.matches()) {
            double x = Double.parseDouble(place.group(1)) * (place.group(2).equals("m") ? 1000 : 1);
            double along = place.group(3) == null ? x : -x;
            List<Screw> all = heights.values().stream()
                    .flatMap(List::stream)
                    .map(up -> new Screw(place.group(4), along, up))
                    .toList();
            assertThat(all).as(text).hasSize(Integer.parseInt(place.group(5)));
            screws.addAll(all);
        }
    }
}
