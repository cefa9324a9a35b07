package borderwright.pack;

import borderwright.engine.message.Sentences;
import borderwright.engine.plan.Comparison;
import borderwright.engine.plan.Plan;
import borderwright.pack.calendar.BuildCalendar;
import borderwright.pack.drawings.PlanDrawing;
import borderwright.pack.language.Language;
import borderwright.pack.pages.PackPages;
import borderwright.pack.paper.PaperSize;
import borderwright.pack.paper.SvgWriter;
import borderwright.pack.solid.BoxModel;
import borderwright.pack.tables.PlanJson;
import borderwright.pack.tables.PlanTables;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;

/** Everything that a person is handed for one plan, as files by name; writing them is the caller's. */
public final class PackWriter {
    private static final double LAYOUT_WIDTH_MM = 400;
    private static final double LAYOUT_HEIGHT_MM = 280;

    /** Files that a pack has only where there is something to put into them. */
    public static final Set<String> MAY_BE_MISSING = Set.of("build.ics", "model.glb", "layout.svg", "labels.pdf");

    private PackWriter() {}

    /**
     * All files of a pack.
     *
     * @param plan the plan
     * @param variants the garden and its variants side by side, {@link Comparison#NONE} for none
     * @param paper what the pack is printed on
     * @param date the day that it is dated; empty for an undated pack, which repeats to the byte
     * @return content by file name, in the order in which they are best written
     */
    public static Map<String, byte[]> write(Plan plan, Comparison variants, PaperSize paper, Optional<LocalDate> date) {
        // The pages take about as long as all else together, and neither knows of the other.
        CompletableFuture<Map<String, byte[]>> others = CompletableFuture.supplyAsync(() -> others(plan, paper, date));
        byte[] pages = PackPages.pdf(plan, variants, paper, date);
        Map<String, byte[]> files = new LinkedHashMap<>(others.join());
        files.put("pack.pdf", pages);
        return files;
    }

    private static Map<String, byte[]> others(Plan plan, PaperSize paper, Optional<LocalDate> date) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        Sentences sentences = Language.english().in(plan.garden().units());
        files.put("plan.json", PlanJson.write(plan, sentences));
        files.put("cutting.csv", PlanTables.cutting(plan, sentences));
        files.put("shopping.csv", PlanTables.shopping(plan, sentences));
        if (!plan.work().days().isEmpty()) {
            files.put("build.ics", BuildCalendar.write(plan));
        }
        if (!plan.boxes().isEmpty()) {
            files.put("model.glb", BoxModel.write(plan));
            files.put("layout.svg", text(SvgWriter.write(PlanDrawing.draw(plan, LAYOUT_WIDTH_MM, LAYOUT_HEIGHT_MM))));
        }
        files.put("working.pdf", PackPages.working(plan, paper, date));
        PackPages.labels(plan, paper, date).ifPresent(labels -> files.put("labels.pdf", labels));
        return files;
    }

    private static byte[] text(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
