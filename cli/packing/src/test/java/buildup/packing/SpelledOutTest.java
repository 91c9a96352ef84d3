package buildup.packing;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;

class SpelledOutTest {
    private static final List<String> NAMES = List.of(
            "buildup/packing/Lambdas",
            "buildup/packing/Lambdas$Inner",
            "buildup/packing/Lambdas$Named",
            "buildup/packing/Lambdas$Nothing",
            "buildup/packing/Lambdas$Parts",
            "buildup/packing/Lambdas$Wide");

    /** One with two interfaces, and one that can be written, which has a second place, where it would be read again. */
    private static final int LEFT = 3;

    @Test
    void what_is_spelled_out_answers_as_before() throws ReflectiveOperationException, IOException {
        Map<String, byte[]> classes = classes();
        Map<String, byte[]> spelled = new LinkedHashMap<>(classes);
        spelled.putAll(SpelledOut.of(classes));

        assertThat(answers(spelled)).isEqualTo(new Lambdas().get()).hasSizeGreaterThan(40);
    }

    @Test
    void only_those_of_another_factory_are_left() throws IOException {
        assertThat(lambdas(classes())).isGreaterThan(25 + LEFT);
        assertThat(lambdas(SpelledOut.of(classes()))).isEqualTo(LEFT);
    }

    @Test
    void a_record_compares_itself_without_the_help_of_java() throws IOException {
        assertThat(sites(classes(), "ObjectMethods")).isEqualTo(2 * 3);
        assertThat(sites(SpelledOut.of(classes()), "ObjectMethods"))
                .as("toString stays")
                .isEqualTo(2);
    }

    @Test
    void each_is_spelled_out_as_a_class_of_its_nest() throws IOException {
        Map<String, byte[]> spelled = SpelledOut.of(classes());
        ClassNode host = node(spelled.get(NAMES.get(0)));
        List<String> made =
                spelled.keySet().stream().filter(name -> name.contains("$$")).toList();

        assertThat(made).hasSize(lambdas(classes()) - LEFT);
        assertThat(host.nestMembers).containsAll(made);
        assertThat(made).allSatisfy(name -> {
            assertThat(node(spelled.get(name)).nestHostClass).isEqualTo(host.name);
            assertThat(node(spelled.get(name)).sourceFile).isEqualTo("Lambdas.java");
        });
    }

    @Test
    void a_jar_keeps_what_else_is_in_it_and_comes_out_the_same_each_time(@TempDir Path folder) throws IOException {
        Path one = jar(folder.resolve("one.jar"));
        Path other = jar(folder.resolve("other.jar"));
        PackedJar.main(new String[] {one.toString()});
        PackedJar.main(new String[] {other.toString()});

        assertThat(one).hasSameBinaryContentAs(other);
        assertThat(folder).isDirectoryNotContaining("glob:**.packed");
        try (ZipFile jar = new ZipFile(one.toFile())) {
            assertThat(new String(jar.getInputStream(jar.getEntry("note.txt")).readAllBytes(), UTF_8))
                    .isEqualTo("as it was");
            assertThat(jar.getEntry("buildup/packing/Lambdas$$1.class")).isNotNull();
        }
    }

    private static Path jar(Path path) throws IOException {
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(path))) {
            put(zip, "note.txt", "as it was".getBytes(UTF_8));
            for (Map.Entry<String, byte[]> one : classes().entrySet()) {
                put(zip, one.getKey() + ".class", one.getValue());
            }
        }
        return path;
    }

    private static void put(ZipOutputStream zip, String name, byte[] bytes) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(LocalDateTime.of(2025, 1, 1, 0, 0));
        zip.putNextEntry(entry);
        zip.write(bytes);
        zip.closeEntry();
    }

    /** What they answer where only these classes are known, each checked by the JVM as any other. */
    private static List<?> answers(Map<String, byte[]> classes) throws ReflectiveOperationException {
        ClassLoader loader = new ClassLoader(ClassLoader.getPlatformClassLoader()) {
            @Override
            protected Class<?> findClass(String name) throws ClassNotFoundException {
                byte[] bytes = classes.get(name.replace('.', '/'));
                if (bytes == null) {
                    throw new ClassNotFoundException(name);
                }
                return defineClass(name, bytes, 0, bytes.length);
            }
        };
        Supplier<?> lambdas = (Supplier<?>)
                loader.loadClass("buildup.packing.Lambdas").getConstructor().newInstance();
        assertThat(lambdas.getClass()).isNotEqualTo(Lambdas.class);
        return (List<?>) lambdas.get();
    }

    private static Map<String, byte[]> classes() throws IOException {
        Map<String, byte[]> classes = new LinkedHashMap<>();
        for (String name : NAMES) {
            try (InputStream in = SpelledOutTest.class.getResourceAsStream("/" + name + ".class")) {
                classes.put(name, in.readAllBytes());
            }
        }
        return classes;
    }

    private static int lambdas(Map<String, byte[]> classes) {
        return sites(classes, "LambdaMetafactory");
    }

    private static int sites(Map<String, byte[]> classes, String factory) {
        return (int) classes.values().stream()
                .flatMap(bytes -> node(bytes).methods.stream())
                .flatMap(method -> List.of(method.instructions.toArray()).stream())
                .filter(step -> step instanceof InvokeDynamicInsnNode site
                        && site.bsm.getOwner().endsWith(factory))
                .count();
    }

    private static ClassNode node(byte[] bytes) {
        ClassNode node = new ClassNode();
        new ClassReader(bytes).accept(node, 0);
        return node;
    }
}
