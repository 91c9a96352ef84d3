package buildup.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ModifiersTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.ThrowTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/** What the text of the main sources must hold beyond what classes show: comments, and numbers that have a name. */
class SourcesTest {
    /** A number nearer to 0 than this is taken for a tolerance: no size of wood, and no share of a picture, is so small. */
    private static final double SMALL = 0.005;

    /** Where small numbers are something else, and what. */
    private static final Map<String, String> NO_TOLERANCES = Map.of(
            "buildup/profiles/outline/Tolerance.java", "the tolerances themselves",
            "buildup/shared/length/PrintTolerance.java", "those of printed figures",
            "buildup/shared/figure/Quantity.java", "cubic meters in a board foot",
            "buildup/engine/hold/season/MoistureContent.java", "constants of a handbook's equation",
            "buildup/engine/hold/tolerance/Draws.java", "the last bit of a random number",
            "buildup/catalog/format/DxfUnits.java", "inches in a mil and in a microinch",
            "buildup/cli/scene/LineStyle.java", "widths of lines, in of paper");

    /** A hatch is drawn with so wide a line, in of paper. */
    private static final Set<String> INK = Set.of("Pattern");

    private static final Sources SOURCES = Sources.read();

    @Test
    void the_scan_sees_the_whole_house() {
        assertThat(SOURCES.files()).hasSizeGreaterThan(400);
        assertThat(SOURCES.types()).hasSizeGreaterThan(300);
        assertThat(SOURCES.methods()).hasSizeGreaterThan(900);
        assertThat(SOURCES.small().keySet()).containsAll(NO_TOLERANCES.keySet());
    }

    @Test
    void a_tolerance_has_a_name_and_stands_with_the_others() {
        Map<String, List<String>> elsewhere = new TreeMap<>(SOURCES.small());
        elsewhere.keySet().removeAll(NO_TOLERANCES.keySet());
        assertThat(elsewhere)
                .as("numbers below %s outside Tolerance: name what they bound there", SMALL)
                .isEmpty();
    }

    @Test
    void every_public_type_says_what_it_is() {
        assertThat(SOURCES.types().stream().filter(item -> !item.told()).map(Item::place))
                .as("public types without a comment")
                .isEmpty();
    }

    @Test
    void every_public_method_says_what_it_gives() {
        assertThat(SOURCES.methods().stream().filter(item -> !item.told()).map(Item::place))
                .as("public methods without a comment")
                .isEmpty();
    }

    @Test
    void every_public_method_says_what_it_throws() {
        assertThat(SOURCES.methods().stream().filter(item -> !item.untold().isEmpty()))
                .as("public methods that throw what no @throws names")
                .isEmpty();
    }

    /** A group is a room of a module with all that it is parted into: {@code engine/hold}, {@code cli/drawing}. */
    @Test
    void no_group_holds_more_than_a_fifth_of_the_house() throws IOException {
        Map<String, Long> groups = new TreeMap<>();
        for (Path path : Sources.mainSources()) {
            String file = path.toString().replace('\\', '/');
            String[] rooms = file.substring(file.lastIndexOf("/buildup/") + 1).split("/");
            long lines = Files.readString(path).lines().count();
            groups.merge(rooms[1] + "/" + (rooms.length > 3 ? rooms[2] : ""), lines, Long::sum);
        }
        long whole = groups.values().stream().mapToLong(Long::longValue).sum();
        assertThat(groups)
                .allSatisfy((group, lines) -> assertThat(lines)
                        .as("lines of %s, of %s in all", group, whole)
                        .isLessThanOrEqualTo(whole / 5));
    }

    /**
     * A public type or method.
     *
     * @param place file and name
     * @param told whether a comment stands before it
     * @param untold what it throws and its comment does not name
     */
    private record Item(String place, boolean told, Set<String> untold) {}

    /**
     * The main sources, parsed.
     *
     * @param small literals below {@link #SMALL} by file
     */
    private record Sources(List<String> files, List<Item> types, List<Item> methods, Map<String, List<String>> small) {

        static Sources read() {
            JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
            Sources sources = new Sources(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new TreeMap<>());
            try (StandardJavaFileManager files =
                    compiler.getStandardFileManager(null, Locale.ROOT, StandardCharsets.UTF_8)) {
                JavacTask task = (JavacTask) compiler.getTask(
                        null,
                        files,
                        null,
                        List.of("-proc:none"),
                        null,
                        files.getJavaFileObjectsFromPaths(mainSources()));
                DocTrees docs = DocTrees.instance(task);
                for (CompilationUnitTree unit : task.parse()) {
                    String path = unit.getSourceFile().toUri().getPath();
                    String file = path.substring(path.lastIndexOf("/buildup/") + 1);
                    sources.files.add(file);
                    new Scan(file, unit, docs, sources).scan(unit, null);
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            return sources;
        }

        private static List<Path> mainSources() throws IOException {
            List<Path> found = new ArrayList<>();
            for (String module : List.of("shared", "profiles", "catalog", "engine", "cli")) {
                try (Stream<Path> paths = Files.walk(Path.of("..", module, "src", "main", "java"))) {
                    paths.filter(path -> path.toString().endsWith(".java"))
                            .sorted()
                            .forEach(found::add);
                }
            }
            return found;
        }
    }

    private static final class Scan extends TreePathScanner<Void, Void> {
        private final String file;
        private final CompilationUnitTree unit;
        private final DocTrees docs;
        private final Sources sources;

        Scan(String file, CompilationUnitTree unit, DocTrees docs, Sources sources) {
            this.file = file;
            this.unit = unit;
            this.docs = docs;
            this.sources = sources;
        }

        @Override
        public Void visitClass(ClassTree type, Void none) {
            if (isPublic(type.getModifiers()) || isMemberOfAnInterface()) {
                sources.types().add(item(type.getSimpleName().toString(), Set.of()));
            }
            return super.visitClass(type, none);
        }

        @Override
        public Void visitMethod(MethodTree method, Void none) {
            boolean overrides = method.getModifiers().getAnnotations().stream()
                    .anyMatch(one -> one.getAnnotationType().toString().equals("Override"));
            boolean generated = method.getName().contentEquals("<init>")
                    && docs.getSourcePositions().getEndPosition(unit, method) < 0;
            if ((isPublic(method.getModifiers()) || isMemberOfAnInterface())
                    && !overrides
                    && !generated
                    && !isConstructor(method)) {
                sources.methods().add(item(method.getName().toString(), thrown(method)));
            }
            return super.visitMethod(method, none);
        }

        @Override
        public Void visitLiteral(LiteralTree literal, Void none) {
            if (literal.getValue() instanceof Double value && value > 0) {
                note(value, literal);
            }
            return null;
        }

        @Override
        public Void visitBinary(BinaryTree binary, Void none) {
            if (binary.getKind() == Tree.Kind.DIVIDE
                    && binary.getLeftOperand() instanceof LiteralTree over
                    && over.getValue() instanceof Double value
                    && binary.getRightOperand() instanceof LiteralTree under
                    && under.getValue() instanceof Number number) {
                note(value / number.doubleValue(), binary);
            }
            return super.visitBinary(binary, none);
        }

        @Override
        public Void visitNewClass(NewClassTree made, Void none) {
            return INK.contains(made.getIdentifier().toString()) ? null : super.visitNewClass(made, none);
        }

        private void note(double value, Tree tree) {
            if (value < SMALL) {
                sources.small()
                        .computeIfAbsent(file, unseen -> new ArrayList<>())
                        .add(line(tree) + ": " + tree);
            }
        }

        private Item item(String name, Set<String> thrown) {
            String comment = docs.getDocComment(getCurrentPath());
            Set<String> untold = new TreeSet<>(thrown);
            untold.removeIf(one -> comment != null && comment.contains("@throws " + one));
            return new Item(
                    file + ":" + line(getCurrentPath().getLeaf()) + " " + name,
                    comment != null && !comment.isBlank(),
                    untold);
        }

        private long line(Tree tree) {
            return unit.getLineMap().getLineNumber(docs.getSourcePositions().getStartPosition(unit, tree));
        }

        private boolean isMemberOfAnInterface() {
            return getCurrentPath().getParentPath().getLeaf().getKind() == Tree.Kind.INTERFACE;
        }

        private static boolean isConstructor(MethodTree method) {
            return method.getName().contentEquals("<init>");
        }

        private static boolean isPublic(ModifiersTree modifiers) {
            return modifiers.getFlags().contains(Modifier.PUBLIC);
        }

        /** What the method itself makes and throws, by simple name. */
        private static Set<String> thrown(MethodTree method) {
            Set<String> thrown = new TreeSet<>();
            new com.sun.source.util.TreeScanner<Void, Void>() {
                @Override
                public Void visitThrow(ThrowTree thrower, Void none) {
                    if (thrower.getExpression() instanceof NewClassTree made) {
                        thrown.add(made.getIdentifier().toString());
                    }
                    return super.visitThrow(thrower, none);
                }

                @Override
                public Void visitClass(ClassTree inner, Void none) {
                    return null;
                }

                @Override
                public Void visitLambdaExpression(com.sun.source.tree.LambdaExpressionTree inner, Void none) {
                    return null;
                }
            }.scan(method.getBody(), null);
            return thrown;
        }
    }
}
