package buildup.cli;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.judge.verdict.Topic;
import buildup.shared.notice.Kind;
import buildup.shared.notice.Level;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.lang.reflect.Field;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A problem makes the row of its own question no, and of no other. */
class TopicsTest {
    /** What a quote says is no part of a verdict on a stack. */
    private static final String QUOTE = "buildup.engine.mill.quote";

    private static Set<String> problems(String... packages) {
        return House.CLASSES.stream()
                .filter(type ->
                        Stream.of(packages).anyMatch(name -> (type.getPackageName() + ".").startsWith(name + ".")))
                .filter(type -> !type.getPackageName().equals(QUOTE))
                .flatMap(type -> type.getFields().stream())
                .filter(field -> field.getModifiers().contains(JavaModifier.STATIC)
                        && field.getRawType().isEquivalentTo(Kind.class))
                .map(TopicsTest::kind)
                .filter(kind -> kind.level() == Level.PROBLEM)
                .map(kind -> kind.code().name())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Kind kind(JavaField field) {
        try {
            Field reflected = field.reflect();
            reflected.setAccessible(true);
            return (Kind) reflected.get(null);
        } catch (IllegalAccessException closed) {
            throw new AssertionError(field.getFullName(), closed);
        }
    }

    @Test
    void every_problem_that_a_stack_can_have_belongs_to_a_question_by_name() {
        Set<String> problems = problems("buildup.engine", "buildup.catalog.words", "buildup.catalog.entry");
        assertThat(problems).hasSizeGreaterThan(25);
        assertThat(Topic.codes()).containsAll(problems);
    }

    @Test
    void no_question_waits_for_a_code_that_nobody_says() {
        String guide = Ran.read(Path.of("guide/notices.md"));
        assertThat(Topic.codes()).allSatisfy(code -> assertThat(guide).contains("| `" + code + "` |"));
    }
}
