package buildup.engine.hold.support;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.document.DocumentReader;
import buildup.shared.document.Fields;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Level;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A coefficient of friction as people write it. */
class FrictionTest {
    private final Notices notices = new Notices();

    private OptionalDouble read(String line) {
        Document document = DocumentReader.read("stack.yaml", ("title: x\n" + line + "\n").getBytes(UTF_8), notices)
                .orElseThrow();
        return Friction.read(
                Fields.of(document, new Claims(), notices, new LengthReader(LengthUnit.INCH, Map.of())), notices);
    }

    @Test
    void a_number_from_0_to_1_is_one() {
        assertThat(read("friction: 0.4")).hasValue(0.4);
        assertThat(read("friction: .25")).hasValue(0.25);
        assertThat(read("friction: 0")).hasValue(0);
        assertThat(read("friction: 1")).hasValue(1);
        assertThat(read("friction: 1.00")).hasValue(1);
        assertThat(notices.sorted()).isEmpty();
    }

    @Test
    void left_out_or_left_blank_nothing_rubs_and_nothing_is_said() {
        assertThat(read("wood: oak")).isEmpty();
        assertThat(read("friction:")).isEmpty();
        assertThat(read("friction: '  '")).isEmpty();
        assertThat(notices.sorted()).isEmpty();
    }

    @Test
    void anything_else_is_refused_where_it_stands() {
        for (String wrong :
                new String[] {"1.5", "-0.1", "1.1", "40 %", "NaN", "Infinity", "1e-1", "'0,3'", "rough", "2"}) {
            Notices before = new Notices();
            before.addAll(notices.sorted());
            assertThat(read("friction: " + wrong)).as(wrong).isEmpty();
            assertThat(notices.sorted()).as(wrong).hasSize(before.sorted().size() + 1);
        }
        assertThat(notices.sorted()).allSatisfy(notice -> {
            assertThat(notice.level()).isEqualTo(Level.REFUSAL);
            assertThat(notice.code()).isEqualTo("not-a-friction");
            assertThat(notice.mark().orElseThrow().line()).isEqualTo(2);
        });
        assertThat(NoticeWords.INCHES.message(notices.sorted().get(0))).contains("is not a coefficient of friction.");
    }
}
