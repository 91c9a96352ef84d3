package buildup.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;
import buildup.shared.notice.Level;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.io.IOException;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The codes of all notices, and the page of the guide that lists them. With {@code -Dbuildup.update} the page is written
 * anew.
 */
class NoticesGuideTest {
    private static final Path PAGE = Path.of("guide/notices.md");

    /** Fewer, and the test would be looking past the program. */
    private static final int FEWEST_CODES = 90;

    /** Everything that the main classes of the program keep as a code or a kind of notice. */
    private static final List<Object> KEPT = House.CLASSES.stream()
            .flatMap(type -> type.getFields().stream())
            .filter(NoticesGuideTest::mayTell)
            .sorted(Comparator.comparing(JavaField::getFullName))
            .map(NoticesGuideTest::value)
            .toList();

    private static final List<Kind> KINDS = KEPT.stream()
            .flatMap(NoticesGuideTest::kinds)
            .distinct()
            .sorted(Comparator.comparing(Kind::level).thenComparing(Kind::sentence))
            .toList();

    private static final Map<String, Set<String>> MEANINGS = Stream.concat(
                    KEPT.stream().filter(Code.class::isInstance).map(Code.class::cast),
                    KINDS.stream().map(Kind::code))
            .collect(Collectors.groupingBy(
                    Code::name,
                    TreeMap::new,
                    Collectors.mapping(Code::meaning, Collectors.toCollection(TreeSet::new))));

    private static boolean mayTell(JavaField field) {
        JavaClass type = field.getRawType();
        return field.getModifiers().contains(JavaModifier.STATIC)
                && (type.isEquivalentTo(Code.class)
                        || type.isEquivalentTo(Kind.class)
                        || type.isRecord()
                                && type.getFields().stream()
                                        .anyMatch(part -> part.getRawType().isEquivalentTo(Kind.class)));
    }

    private static Object value(JavaField field) {
        try {
            Field real = field.reflect();
            real.setAccessible(true);
            return real.get(null);
        } catch (IllegalAccessException closed) {
            throw new AssertionError(field.getFullName(), closed);
        }
    }

    private static Stream<Kind> kinds(Object kept) {
        if (kept instanceof Kind kind) {
            return Stream.of(kind);
        }
        return kept instanceof Code
                ? Stream.empty()
                : Stream.of(kept.getClass().getRecordComponents())
                        .map(part -> part(kept, part))
                        .filter(Kind.class::isInstance)
                        .map(Kind.class::cast);
    }

    private static Object part(Object kept, RecordComponent component) {
        try {
            Method accessor = component.getAccessor();
            accessor.setAccessible(true);
            return accessor.invoke(kept);
        } catch (ReflectiveOperationException closed) {
            throw new AssertionError(component.toString(), closed);
        }
    }

    @Test
    void every_code_is_in_kebab_case_and_means_one_thing() {
        assertThat(MEANINGS).hasSizeGreaterThan(FEWEST_CODES);
        assertThat(MEANINGS.keySet()).allSatisfy(name -> assertThat(name).matches("[a-z]+(-[a-z0-9]+)*"));
        assertThat(MEANINGS)
                .allSatisfy((name, meanings) ->
                        assertThat(meanings).as(name).singleElement().asString().matches("[A-Z].{8,}\\."));
    }

    @Test
    void every_code_is_said_in_some_sentence() {
        assertThat(MEANINGS.keySet())
                .isEqualTo(
                        KINDS.stream().map(kind -> kind.code().name()).collect(Collectors.toCollection(TreeSet::new)));
        assertThat(KINDS)
                .allSatisfy(kind ->
                        assertThat(kind.sentence()).as(kind.code().name()).isNotBlank());
    }

    @Test
    void the_guide_lists_all_of_them() throws IOException {
        String page = page();
        if (System.getProperty("buildup.update") != null) {
            Files.createDirectories(PAGE.getParent());
            Files.writeString(PAGE, page, UTF_8);
        }
        assertThat(Files.readString(PAGE, UTF_8))
                .as("%s; -Dbuildup.update writes it anew", PAGE)
                .isEqualTo(page);
    }

    private static String page() {
        StringBuilder page = new StringBuilder("""
                # What Buildup says, code by code

                Every notice has a level, a place, a sentence, mostly a cure, and a code that stays as it is. With
                `--format json` the code stands beside the sentence, and so do the figures in it.

                - A **note** tells how something was taken; the answer stands.
                - A **problem** is wrong with what was drawn; the answer stands, and the exit code is 1.
                - A **refusal** leaves out a figure that would be false; the exit code is 2.

                Words in italics stand for names and figures. Figures are told in inches, and in
                millimeters where the document counts in millimeters or centimeters.

                | code | level | when | what is said |
                |---|---|---|---|
                """);
        MEANINGS.forEach((name, meanings) -> page.append(row(name, meanings)));
        return page.toString();
    }

    private static String row(String name, Collection<String> meanings) {
        List<Kind> kinds =
                KINDS.stream().filter(kind -> kind.code().name().equals(name)).toList();
        String levels = kinds.stream()
                .map(Kind::level)
                .distinct()
                .map(NoticesGuideTest::word)
                .collect(Collectors.joining(", "));
        String said =
                kinds.stream().map(kind -> plain(kind.sentence())).distinct().collect(Collectors.joining("<br>"));
        return "| `" + name + "` | " + levels + " | " + plain(String.join(" ", meanings)) + " | " + said + " |\n";
    }

    private static String word(Level level) {
        return level.name().toLowerCase(Locale.ROOT);
    }

    /** A template with its places in italics, and nothing in it that a table takes for its own. */
    private static String plain(String template) {
        return template.replace("\\", "\\\\")
                .replace("*", "\\*")
                .replace("_", "\\_")
                .replace("|", "\\|")
                .replace("<", "&lt;")
                .replaceAll("(?<!\\{)\\{([a-zA-Z][a-zA-Z0-9-]*)\\}", "*$1*")
                .replace("{{", "{");
    }
}
