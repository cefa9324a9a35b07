package borderwright.app.plan;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.app.plan.PrintedBlocks.Block;
import borderwright.engine.reading.LengthText;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * A bench drawing's text as it was read back from a PDF file.
 *
 * @param title which wall, divider or floor
 * @param alike those that it stands for as well
 * @param told what stands above the tables
 * @param lines a piece each, or a stack of pieces one above the other
 */
record PrintedBench(String title, List<String> alike, String told, List<Line> lines) {
    private static final Pattern TITLE =
            Pattern.compile("((?:Side|Divider|Floor) .+?)(?:; alike: (?:the floors of )?(.+))?");
    /** 47, 47 mm, 3.564 m, or 18' 4-3/8". */
    static final String LENGTH =
            "(?:-?[\\d.]+(?: mm| m)?(?![\\d'\"/-])|-?(?:\\d+'(?: (?=\\d))?)?(?:\\d+(?:-\\d+/\\d+|/\\d+)?\")?)";

    private static final Pattern PLACE = Pattern.compile(
            "(\\S+?)(?: to (\\S+?))? (L) to (L)(?:, (L) to (L)(?: up)?)?(?:; (.*))?".replace("L", LENGTH));
    private static final Pattern HEIGHTS =
            Pattern.compile("(?:from )?(L) to (L) (?:up|above the bed)(?:, )?".replace("L", LENGTH));
    private static final Pattern NUMBERED = Pattern.compile("(.*?)(\\d+)([a-z]*)");

    /**
     * A line of a table.
     *
     * @param what kind of piece
     * @param labels of it, lowest first
     * @param fromMm nearest distance from the hook
     * @param toMm farthest
     * @param bottomMm lower height; of a floor the nearest distance across
     * @param topMm upper height; of a floor the farthest distance across
     * @param notes what else stands there
     */
    record Line(
            String what,
            List<String> labels,
            double fromMm,
            double toMm,
            double bottomMm,
            double topMm,
            String notes) {}

    /** All of a pack. */
    static List<PrintedBench> of(List<Block> blocks) {
        List<PrintedBench> found = new ArrayList<>();
        for (int i = 0; i < blocks.size(); i++) {
            Matcher title = TITLE.matcher(blocks.get(i).text());
            if (blocks.get(i).kind() == PrintedBlocks.Kind.HEADING && title.matches()) {
                List<String> alike = Optional.ofNullable(title.group(2))
                        .map(all -> Arrays.asList(all.split(", ")))
                        .orElse(List.of());
                int end = i + 1;
                while (end < blocks.size() && blocks.get(end).kind() != PrintedBlocks.Kind.HEADING) {
                    end++;
                }
                found.add(new PrintedBench(
                        title.group(1), alike, blocks.get(i + 1).text(), lines(blocks.subList(i + 2, end))));
            }
        }
        return found;
    }

    private static List<Line> lines(List<Block> blocks) {
        List<Line> lines = new ArrayList<>();
        String what = "";
        String shared = "";
        for (Block block : blocks) {
            if (block.kind() == PrintedBlocks.Kind.PARAGRAPH) {
                if (block.text().matches("\\d+ of .*")) {
                    // Screws: their places follow.
                    return lines;
                }
                String[] parts = block.text().split(": ", 2);
                what = parts[0];
                shared = parts.length > 1 ? parts[1] : "";
            } else {
                lines.add(line(what, shared, block.text()));
            }
        }
        return lines;
    }

    /** What lies left of the hook, as distances below nothing. */
    private static String signed(String text) {
        return text.replaceAll("overhangs the (?:hooked end|corner) by (L), to ".replace("L", LENGTH), "-$1 to ")
                .replaceAll("(L) to (L) left of the (?:hooked end|corner)".replace("L", LENGTH), "-$1 to -$2");
    }

    private static Line line(String what, String sharedText, String itemText) {
        String shared = signed(sharedText);
        String text = signed(itemText);
        Matcher place = PLACE.matcher(text);
        assertThat(place.matches()).as(what + ": " + text).isTrue();
        Matcher heights = HEIGHTS.matcher(shared);
        boolean isLevel = heights.find() && place.group(5) == null;
        String notes =
                (isLevel ? heights.replaceFirst("") : shared) + (place.group(7) == null ? "" : "; " + place.group(7));
        double[] along = range(place.group(3), place.group(4));
        double[] up = isLevel ? range(heights.group(1), heights.group(2)) : range(place.group(5), place.group(6));
        return new Line(
                what,
                labels(place.group(1), Optional.ofNullable(place.group(2)).orElse(place.group(1))),
                along[0],
                along[1],
                up[0],
                up[1],
                notes);
    }

    /** Two lengths of which only the second names its unit, where that is mm or m. */
    static double[] range(String from, String to) {
        boolean isBare = from.matches("-?[\\d.]+");
        return new double[] {mm(isBare ? from + to.replaceFirst(".* ", " ") : from), mm(to)};
    }

    /** F7-divider1 to F7-divider3, or TE4-1b to TE4-2b: pieces one above the other. */
    private static List<String> labels(String first, String last) {
        Matcher from = NUMBERED.matcher(first);
        Matcher to = NUMBERED.matcher(last);
        if (first.equals(last) || !from.matches() || !to.matches()) {
            return List.of(first);
        }
        return IntStream.rangeClosed(Integer.parseInt(from.group(2)), Integer.parseInt(to.group(2)))
                .mapToObj(i -> from.group(1) + i + from.group(3))
                .toList();
    }

    /** The first length in a text. */
    static double mm(String text) {
        Matcher found = Pattern.compile("-?[\\d.]+ m?m\\b|-?(?:\\d+'(?: (?=\\d))?)(?:[\\d/-]+\")?|-?[\\d/-]+\"")
                .matcher(text);
        assertThat(found.find()).as(text).isTrue();
        boolean isBelow = found.group().startsWith("-");
        double mm = LengthText.parse(isBelow ? found.group().substring(1) : found.group())
                .orThrow()
                .mm();
        return isBelow ? -mm : mm;
    }
}
