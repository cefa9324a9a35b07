package borderwright.engine;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.LineMap;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** What the Java files of the whole project hold, as the compiler's own parser reads them. */
final class SourceTree {
    private static final Path HOUSE = Path.of("..");

    private final List<Type> types = new ArrayList<>();
    private final List<Method> methods = new ArrayList<>();
    private final List<Call> calls = new ArrayList<>();

    /**
     * A class, record, interface or enum.
     *
     * @param file that declares it
     * @param name with its package and the types round it
     * @param components of a record; empty for any other
     * @param hasBuilder whether a {@code Builder} is nested in it
     */
    record Type(Path file, String name, List<Parameter> components, boolean hasBuilder) {}

    record Parameter(String name, String type) {}

    /** A method or constructor; {@code name} is the type's for a constructor. */
    record Method(Type of, String name, List<Parameter> parameters, boolean isOpen, int lines) {
        boolean isConstructor() {
            return of.name.endsWith("." + name);
        }

        /** Whether it is the constructor that a record has by its components. */
        boolean isCanonical() {
            return isConstructor() && !of.components.isEmpty() && parameters.size() == of.components.size();
        }
    }

    /**
     * A call of a constructor.
     *
     * @param file that makes it
     * @param within the type that makes it, with its package
     * @param type what is made, as written
     * @param meanings of it with their package, the nearest first: within a type round the call, of its package, imported
     */
    record Call(Path file, String within, String type, List<String> meanings, List<Argument> arguments) {
        /** Whether it makes this type; {@code known} are the names of all. A name that none of them has makes any so called. */
        boolean makes(Type made, Set<String> known) {
            return meanings.stream()
                    .filter(known::contains)
                    .findFirst()
                    .map(made.name::equals)
                    .orElseGet(() -> ("." + made.name).endsWith("." + type.substring(type.lastIndexOf('.') + 1)));
        }
    }

    /**
     * What a call hands over.
     *
     * @param written the expression
     * @param name of the variable, field or accessor that it reads, the last one of a chain; any other expression as written
     */
    record Argument(String written, String name) {
        static Argument of(ExpressionTree tree) {
            ExpressionTree read = tree instanceof MethodInvocationTree call
                            && call.getArguments().isEmpty()
                    ? call.getMethodSelect()
                    : tree;
            String name = read instanceof MemberSelectTree select
                    ? String.valueOf(select.getIdentifier())
                    : String.valueOf(read);
            return new Argument(String.valueOf(tree), name);
        }
    }

    private SourceTree() {}

    /** The Java files of {@code src/main} and {@code src/test} of every module. */
    static List<Path> files(String... parts) {
        List<Path> files = new ArrayList<>();
        for (String module : List.of("words", "engine", "pack", "app", "bench")) {
            for (String part : parts) {
                Path root = HOUSE.resolve(module).resolve("src").resolve(part).resolve("java");
                if (Files.isDirectory(root)) {
                    try (Stream<Path> walk = Files.walk(root)) {
                        walk.filter(f -> f.toString().endsWith(".java")).forEach(files::add);
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                }
            }
        }
        return files.stream().sorted().toList();
    }

    static SourceTree read(List<Path> files) throws IOException {
        SourceTree all = new SourceTree();
        var compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, Locale.ROOT, null)) {
            JavacTask task = (JavacTask) compiler.getTask(
                    null, manager, null, List.of("-proc:none"), null, manager.getJavaFileObjectsFromPaths(files));
            SourcePositions positions = Trees.instance(task).getSourcePositions();
            for (CompilationUnitTree unit : task.parse()) {
                all.new Scanner(unit, positions).scan(unit, null);
            }
        }
        return all;
    }

    List<Type> types() {
        return types;
    }

    List<Method> methods() {
        return methods;
    }

    List<Call> calls() {
        return calls;
    }

    private final class Scanner extends TreeScanner<Void, Void> {
        private final CompilationUnitTree unit;
        private final SourcePositions positions;
        private final Path file;
        private final Deque<Type> inside = new ArrayDeque<>();

        Scanner(CompilationUnitTree unit, SourcePositions positions) {
            this.unit = unit;
            this.positions = positions;
            this.file = Path.of(unit.getSourceFile().getName());
        }

        @Override
        public Void visitClass(ClassTree tree, Void none) {
            String within = inside.isEmpty() ? String.valueOf(unit.getPackageName()) : inside.peek().name;
            List<Parameter> components = new ArrayList<>();
            if (tree.getKind() == Tree.Kind.RECORD) {
                tree.getMembers().stream()
                        .filter(VariableTree.class::isInstance)
                        .map(VariableTree.class::cast)
                        .filter(field -> !field.getModifiers().getFlags().contains(Modifier.STATIC))
                        .forEach(field -> components.add(parameter(field)));
            }
            boolean hasBuilder = tree.getMembers().stream()
                    .anyMatch(member -> member instanceof ClassTree nested
                            && nested.getSimpleName().contentEquals("Builder"));
            Type type = new Type(file, within + "." + tree.getSimpleName(), components, hasBuilder);
            types.add(type);
            inside.push(type);
            super.visitClass(tree, none);
            inside.pop();
            return null;
        }

        @Override
        public Void visitMethod(MethodTree tree, Void none) {
            Type of = inside.getFirst();
            String simple = of.name.substring(of.name.lastIndexOf('.') + 1);
            String name = tree.getName().contentEquals("<init>") ? simple : String.valueOf(tree.getName());
            boolean isOverride = tree.getModifiers().getAnnotations().stream()
                    .anyMatch(a -> String.valueOf(a.getAnnotationType()).equals("Override"));
            boolean isOpen = !isOverride && !tree.getModifiers().getFlags().contains(Modifier.PRIVATE);
            LineMap lines = unit.getLineMap();
            long from = lines.getLineNumber(positions.getStartPosition(unit, tree));
            long to = lines.getLineNumber(positions.getEndPosition(unit, tree));
            List<Parameter> parameters =
                    tree.getParameters().stream().map(this::parameter).toList();
            methods.add(new Method(of, name, parameters, isOpen, (int) (to - from + 1)));
            return super.visitMethod(tree, none);
        }

        @Override
        public Void visitNewClass(NewClassTree tree, Void none) {
            String type = String.valueOf(tree.getIdentifier()).replaceAll("<.*", "");
            calls.add(new Call(
                    file,
                    inside.getFirst().name,
                    type,
                    meanings(type),
                    tree.getArguments().stream().map(Argument::of).toList()));
            return super.visitNewClass(tree, none);
        }

        private List<String> meanings(String type) {
            List<String> meanings = new ArrayList<>();
            for (String round = inside.getFirst().name;
                    round.contains(".");
                    round = round.substring(0, round.lastIndexOf('.'))) {
                meanings.add(round + "." + type);
            }
            String first = type.replaceAll("[.].*", "");
            unit.getImports().stream()
                    .map(one -> String.valueOf(one.getQualifiedIdentifier()))
                    .filter(name -> name.endsWith("." + first))
                    .forEach(name -> meanings.add(name + type.substring(first.length())));
            return meanings;
        }

        private Parameter parameter(VariableTree tree) {
            return new Parameter(String.valueOf(tree.getName()), String.valueOf(tree.getType()));
        }
    }
}
