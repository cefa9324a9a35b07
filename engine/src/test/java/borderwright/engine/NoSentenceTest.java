package borderwright.engine;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.AnnotationTree;
import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreeScanner;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/**
 * No stage holds a sentence, and no sheet or drawing: rule 6 in docs/rules.md. A text of three words or more, also one that is put together with
 * {@code +}, stands in the message files. Descriptions in annotations, and messages of a caller's bug, are free.
 */
class NoSentenceTest {
    /** Notes on defaults with their sources, and clauses and formulas of standards: facts, cited as they stand. */
    private static final List<String> CITING = List.of("garden/resolve", "strength/rules", "strength/timber");

    /** Their texts report a fault of ours to the person who mends it. */
    private static final Set<String> OUR_OWN_FAULTS =
            Set.of("PlaneVerifier.java", "CutVerifier.java", "FailedCheckException.java", "CuttingPattern.java");

    /** Names on the shopping list, keys of the garden document and a formula. The set only shrinks. */
    private static final Set<String> NAMES = Set.of(
            "concrete, 50 lb bag",
            "concrete, 25 kg bag",
            "front to back",
            "off the curve",
            "per board foot",
            "..in place of",
            "..order value from",
            "(w own + w person) / width");

    private static final Path PACK = Path.of("../pack/src/main/java/borderwright/pack");

    private static final Set<String> ON_DRAWINGS = Set.of(
            " and ", "UTF-8", "(?<!\\bx) (?!x\\b|(mm|m|m3|litres|quarts|cu|yd|ft|in)\\b|\\d+(-\\d+/\\d+|/\\d+)?\")");

    /** Names of layers in the file of a drawing: programs look for them, so they are the same in every language. */
    private static final Set<String> LAYERS = Set.of(
            "angles", "border", "boxes", "corners", "diagonals", "dimensions", "names", "near", "open-ground", "scale");

    /** Titles of sheets, parts and files, ticks, units and formats of files. But for titles the set only shrinks. */
    private static final Set<String> ON_SHEETS = Set.of(
            "Angle templates, full size",
            "At the bench: order of assembly",
            "At the bench: walls and floors",
            "Bags, loads and floors",
            "Borderwright Sans",
            "Build sequence",
            "Cautions by stage",
            "Cutting sheets",
            "Digging and bed",
            "Fill sheet",
            "For the bench",
            "For the garden",
            "For the saw",
            "For the shop",
            "Labels to cut out",
            "Plan and elevations",
            "Planting sheet",
            "Saw set-up cards",
            "Shopping list",
            "Strength of .",
            "Strength, step by step",
            "Survey sheet",
            "To cut out",
            "Wall chart",
            "Why this basket",
            ", two people",
            ". boxes like .",
            ". lb/sq ft",
            ". of rain",
            "does not hold",
            "every side: .",
            "full size, 1:1",
            "ground surface",
            "gaps measured",
            "load limit",
            "not shown to hold",
            "set out",
            "ties in");

    /** Rules of style and attributes of a drawing's file. */
    private static final Pattern STYLE = Pattern.compile("[{}<>]|=\"|; [a-z-]+:|-//");

    private static final int FEWEST_WORDS = 3;
    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private static final Pattern WORD = Pattern.compile("[A-Za-z]{2,}");
    /** A place in the garden document, such as {@code survey.edges[.].damp course}. */
    private static final Pattern FIELD = Pattern.compile("[a-z0-9 ]+(\\[\\.\\])?(\\.[a-z0-9 ]+(\\[\\.\\])?)+");

    private static final Pattern BUG =
            Pattern.compile("Illegal(Argument|State)Exception|UncheckedIOException|AssertionError");

    @Test
    void theEngineHoldsNoSentence() throws IOException {
        List<Path> files = SourceTree.files("main").stream()
                .filter(NoSentenceTest::isOfTheEngine)
                .filter(file -> CITING.stream().noneMatch(file.getParent()::endsWith))
                .filter(file -> !OUR_OWN_FAULTS.contains(file.getFileName().toString()))
                .toList();
        assertThat(files).hasSizeGreaterThan(300);
        assertThat(texts(files, FEWEST_WORDS, NAMES)).isEmpty();
    }

    /** Nor does the pack hold a text, however short, that stands on a drawing. */
    @Test
    void thePackHoldsNoTextOfADrawing() throws IOException {
        List<Path> files = SourceTree.files("main").stream()
                .filter(file -> file.startsWith(PACK.resolve("drawings")))
                .filter(file -> !file.endsWith("DrawingMessage.java"))
                .toList();
        assertThat(files).hasSizeGreaterThan(15);
        assertThat(texts(files, 1, ON_DRAWINGS))
                .filteredOn(text -> LAYERS.stream().noneMatch(layer -> text.endsWith(": " + layer)))
                .isEmpty();
    }

    /** And none of two words or more that stands on a sheet. */
    @Test
    void thePackHoldsNoSentence() throws IOException {
        List<Path> files = SourceTree.files("main").stream()
                .filter(file -> file.startsWith(PACK))
                .filter(file -> !file.startsWith(PACK.resolve("drawings")))
                .toList();
        assertThat(files).hasSizeGreaterThan(80);
        assertThat(texts(files, 2, ON_SHEETS))
                .filteredOn(text -> !STYLE.matcher(text).find())
                .isEmpty();
    }

    private static boolean isOfTheEngine(Path file) {
        return file.startsWith(Path.of("../engine/src/main/java/borderwright/engine"));
    }

    private static List<String> texts(List<Path> files, int fewestWords, Set<String> names) throws IOException {
        List<String> found = new ArrayList<>();
        var compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, Locale.ROOT, null)) {
            JavacTask task = (JavacTask) compiler.getTask(
                    null, manager, null, List.of("-proc:none"), null, manager.getJavaFileObjectsFromPaths(files));
            for (CompilationUnitTree unit : task.parse()) {
                String file =
                        Path.of(unit.getSourceFile().getName()).getFileName().toString();
                new TreeScanner<Void, Void>() {
                    @Override
                    public Void visitAnnotation(AnnotationTree tree, Void none) {
                        return null;
                    }

                    @Override
                    public Void visitNewClass(NewClassTree tree, Void none) {
                        boolean isBug =
                                BUG.matcher(tree.getIdentifier().toString()).matches();
                        return isBug ? null : super.visitNewClass(tree, none);
                    }

                    @Override
                    public Void visitBinary(BinaryTree tree, Void none) {
                        if (tree.getKind() != Tree.Kind.PLUS) {
                            return super.visitBinary(tree, none);
                        }
                        check(text(tree));
                        return scanOperands(tree);
                    }

                    /** What is put together has been checked; what stands within its other operands has not. */
                    private Void scanOperands(Tree tree) {
                        if (tree instanceof BinaryTree sum && tree.getKind() == Tree.Kind.PLUS) {
                            scanOperands(sum.getLeftOperand());
                            return scanOperands(sum.getRightOperand());
                        }
                        return tree instanceof LiteralTree ? null : scan(tree, null);
                    }

                    @Override
                    public Void visitLiteral(LiteralTree tree, Void none) {
                        check(text(tree));
                        return null;
                    }

                    private void check(String text) {
                        if (!names.contains(text)
                                && !FIELD.matcher(text).matches()
                                && BLANKS.splitAsStream(text)
                                                .filter(WORD.asPredicate())
                                                .count()
                                        >= fewestWords) {
                            found.add(file + ": " + text);
                        }
                    }
                }.scan(unit, null);
            }
        }
        return found;
    }

    /** The text that an expression puts together, with a dot for what is no literal. */
    private static String text(Tree tree) {
        if (tree instanceof BinaryTree sum && tree.getKind() == Tree.Kind.PLUS) {
            return text(sum.getLeftOperand()) + text(sum.getRightOperand());
        }
        return tree instanceof LiteralTree literal && literal.getValue() instanceof String text ? text : ".";
    }
}
