package borderwright.app.docs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The pages of the repository that people read, and the commands that they show. */
public final class Pages {
    public static final Path ROOT = root();

    private Pages() {}

    /** A line of a code block: the page, its line number from 1, and the block's language ("" where none is given). */
    record CodeLine(String page, int line, String language, String text) {
        @Override
        public String toString() {
            return page + ":" + line + ": " + text;
        }
    }

    /** All pages: those at the top of the repository and those of docs/, by path. */
    static List<Path> all() {
        List<Path> pages = new ArrayList<>(within(ROOT, 1));
        pages.addAll(within(ROOT.resolve("docs"), 2));
        return pages;
    }

    static List<Path> within(Path folder, int depth) {
        try (Stream<Path> files = Files.walk(folder, depth)) {
            return files.filter(file -> file.toString().endsWith(".md"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String text(Path page) {
        try {
            return Files.readString(page);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Lines in fenced blocks, and lines indented by four blanks, of every page. */
    static List<CodeLine> code() {
        List<CodeLine> found = new ArrayList<>();
        for (Path page : all()) {
            String language = null;
            List<String> lines = text(page).lines().toList();
            for (int i = 0; i < lines.size(); i++) {
                String line = lines.get(i);
                if (line.startsWith("```")) {
                    language = language == null ? line.substring(3).strip() : null;
                } else if (language != null || line.startsWith("    ")) {
                    String name = ROOT.relativize(page).toString();
                    found.add(new CodeLine(name, i + 1, language == null ? "" : language, line.strip()));
                }
            }
        }
        return found;
    }

    private static Path root() {
        Path folder = Path.of("").toAbsolutePath();
        while (!Files.exists(folder.resolve("README.md"))) {
            folder = folder.getParent();
        }
        return folder;
    }
}
