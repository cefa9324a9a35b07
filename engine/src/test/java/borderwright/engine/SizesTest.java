package borderwright.engine;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.SourceTree.Argument;
import borderwright.engine.SourceTree.Call;
import borderwright.engine.SourceTree.Parameter;
import borderwright.engine.SourceTree.Type;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

/**
 * The sizes and shapes of rule 12 in docs/rules.md, over every module.
 *
 * <p>What was there before the rule stands in the lists of {@code src/test/resources/borderwright/engine/sizes}. They only
 * shrink: what is on no list fails, and so does an entry that is no longer found. {@code -Drenew=yes} takes such entries out.
 */
class SizesTest {
    private static final int FILE_LINES = 300;
    private static final int METHOD_LINES = 40;
    private static final int PACKAGE_FILES = 25;
    private static final int ARGUMENTS = 7;
    /** A number or a text. */
    private static final Pattern PRINTED = Pattern.compile("[0-9.]+|\"[^\"]*\"");

    private static final Path LISTS = Path.of("src/test/resources/borderwright/engine/sizes");

    private static SourceTree main;
    private static SourceTree tests;
    /** Of all types, with their packages. */
    private static Set<String> names;

    @BeforeAll
    static void read() throws IOException {
        main = SourceTree.read(SourceTree.files("main"));
        tests = SourceTree.read(SourceTree.files("test"));
        names = Stream.concat(main.types().stream(), tests.types().stream())
                .map(Type::name)
                .collect(Collectors.toSet());
    }

    @Test
    void noFileIsLongerThan300Lines(TestReporter report) {
        onlyShrinks(
                "long-files.txt",
                SourceTree.files("main", "test").stream()
                        .filter(file -> lines(file) > FILE_LINES)
                        .map(SizesTest::path),
                report);
    }

    @Test
    void noMethodIsLongerThan40Lines(TestReporter report) {
        onlyShrinks(
                "long-methods.txt",
                main.methods().stream()
                        .filter(method -> method.lines() > METHOD_LINES)
                        .map(method -> method.of().name() + "#" + method.name()),
                report);
    }

    @Test
    void noPackageHoldsMoreThan25Files(TestReporter report) {
        Map<Path, Long> packages = SourceTree.files("main", "test").stream()
                .collect(Collectors.groupingBy(Path::getParent, TreeMap::new, Collectors.counting()));
        onlyShrinks(
                "large-packages.txt",
                packages.entrySet().stream()
                        .filter(entry -> entry.getValue() > PACKAGE_FILES)
                        .map(entry -> path(entry.getKey())),
                report);
    }

    /**
     * A record whose every call stands in its own file with numbers and texts alone mirrors a printed table. It is checked
     * against the page row by row, and a name before every figure would hide the columns: such rows need no builder.
     */
    @Test
    void noConstructorTakesMoreThan7ArgumentsWithoutABuilder(TestReporter report) {
        Stream<String> records = main.types().stream()
                .filter(type -> type.components().size() > ARGUMENTS && !type.hasBuilder() && !isPrintedTable(type))
                .map(Type::name);
        Stream<String> constructors = main.methods().stream()
                .filter(method -> method.isConstructor()
                        && !method.isCanonical()
                        && method.isOpen()
                        && method.parameters().size() > ARGUMENTS)
                .map(method -> method.of().name());
        onlyShrinks("long-argument-lists.txt", Stream.concat(records, constructors), report);
    }

    private static boolean isPrintedTable(Type type) {
        List<Call> rows = Stream.concat(main.calls().stream(), tests.calls().stream())
                .filter(call -> call.makes(type, names))
                .toList();
        return !rows.isEmpty()
                && rows.stream()
                        .allMatch(row -> row.file().equals(type.file())
                                && row.arguments().stream()
                                        .map(Argument::written)
                                        .allMatch(PRINTED.asMatchPredicate()));
    }

    /** Where a record has a builder, only its own file calls its constructor. */
    @Test
    void aLongRecordWithABuilderIsBuiltByIt() {
        Map<String, Set<Path>> built = main.types().stream()
                .filter(type -> type.components().size() > ARGUMENTS && type.hasBuilder())
                .collect(Collectors.groupingBy(
                        type -> simple(type.name()), Collectors.mapping(Type::file, Collectors.toSet())));
        List<Call> calls = new ArrayList<>(main.calls());
        calls.addAll(tests.calls());
        assertThat(calls.stream()
                        .filter(call -> call.arguments().size() > ARGUMENTS)
                        .filter(call -> built.containsKey(simple(call.type())))
                        .filter(call -> !built.getOrDefault(simple(call.type()), Set.of())
                                .contains(call.file())))
                .isEmpty();
    }

    /**
     * A setter of a builder is named after its field, so that its call shows what the boolean means. So does a constructor where
     * every call outside its own type hands over a variable, field or accessor of the parameter's name.
     */
    @Test
    void noBooleanParameterHidesItsMeaning(TestReporter report) {
        Stream<String> components = main.types().stream()
                .filter(type -> !type.hasBuilder() && hidesBoolean(type, type.components()))
                .map(Type::name);
        Stream<String> methods = main.methods().stream()
                .filter(method -> method.isOpen() && !method.isCanonical() && hasBoolean(method.parameters()))
                .filter(method -> !method.of().name().endsWith(".Builder"))
                .filter(method -> !method.isConstructor() || hidesBoolean(method.of(), method.parameters()))
                .map(method -> method.of().name() + "#" + method.name());
        onlyShrinks("boolean-parameters.txt", Stream.concat(components, methods), report);
    }

    /** Which key each of a row of nulls stands for cannot be read: the record has a builder, or a maker for what is needed. */
    @Test
    void noTestHandsOverThreeNullsInARow() {
        assertThat(tests.calls().stream()
                        .filter(call -> call.arguments().stream()
                                .map(Argument::written)
                                .collect(Collectors.joining(","))
                                .contains("null,null,null")))
                .isEmpty();
    }

    private static boolean hasBoolean(List<Parameter> parameters) {
        return parameters.stream().anyMatch(SizesTest::isBoolean);
    }

    private static boolean isBoolean(Parameter parameter) {
        return parameter.type().equals("boolean");
    }

    /** Whether a call of a constructor outside its own type hands over a boolean under another name than the parameter's. */
    private static boolean hidesBoolean(Type type, List<Parameter> parameters) {
        return hasBoolean(parameters)
                && Stream.concat(main.calls().stream(), tests.calls().stream())
                        .filter(call -> call.arguments().size() == parameters.size())
                        .filter(call -> !(call.within() + ".").startsWith(type.name() + "."))
                        .filter(call -> call.makes(type, names))
                        .anyMatch(call -> IntStream.range(0, parameters.size())
                                .filter(i -> isBoolean(parameters.get(i)))
                                .anyMatch(i -> !bare(call.arguments().get(i).name())
                                        .equals(bare(parameters.get(i).name()))));
    }

    /** A name less a leading {@code is} or {@code has}. */
    private static String bare(String name) {
        return name.replaceAll("^(is|has)(?=[A-Z])", "").toLowerCase(Locale.ROOT);
    }

    private static void onlyShrinks(String list, Stream<String> found, TestReporter report) {
        TreeSet<String> now = found.collect(Collectors.toCollection(TreeSet::new));
        try {
            Path file = LISTS.resolve(list);
            TreeSet<String> listed = new TreeSet<>(Files.readAllLines(file));
            report.publishEntry(list, now.size() + " left of " + listed.size());
            if ("yes".equals(System.getProperty("renew"))) {
                listed.retainAll(now);
                Files.write(file, listed);
            }
            assertThat(now).as("%s: what is on no list breaks the rule", list).isSubsetOf(listed);
            assertThat(listed).as("%s: take out what is mended", list).isSubsetOf(now);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String path(Path file) {
        return file.normalize().toString().replace('\\', '/').replace("../", "");
    }

    private static String simple(String name) {
        return name.substring(name.lastIndexOf('.') + 1);
    }

    private static int lines(Path file) {
        try {
            return Files.readAllLines(file).size();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
