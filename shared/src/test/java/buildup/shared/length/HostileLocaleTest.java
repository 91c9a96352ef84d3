package buildup.shared.length;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.shared.length.Reading.Good;
import buildup.shared.text.Nearest;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Turkish has its own small i, Arabic its own digits, German its decimal comma. */
class HostileLocaleTest {

    private final Locale usual = Locale.getDefault();

    @AfterEach
    void restore() {
        Locale.setDefault(usual);
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "ar-EG-u-nu-arab", "de-DE", "hi-IN-u-nu-deva"})
    void the_default_locale_changes_nothing(String locale) {
        Locale.setDefault(Locale.forLanguageTag(locale));
        LengthReader reader = new LengthReader(LengthUnit.INCH, Map.of());

        assertThat(reader.read("1 INCH")).isInstanceOf(Good.class);
        assertThat(reader.read("3 MILLIMETRES")).isInstanceOf(Good.class);
        assertThat(((Good) reader.read("13/8")).echo().orElseThrow().readAs()).isEqualTo("1.625");
        assertThat(LengthPrinter.sixteenths(Length.inches(1234.625))).isEqualTo("1234-5/8");
        assertThat(LengthPrinter.decimals(Length.inches(-1234.5678), 3)).isEqualTo("-1234.568");
        assertThat(LengthPrinter.tenths(Length.millimeters(1234.5))).isEqualTo("1234.5");
        assertThat(Angle.read("38 DEG")).contains(Angle.degrees(38));
        assertThat(Angle.degrees(22.5)).hasToString("22.5°");
        assertThat(Nearest.to("FRIEZE", List.of("frieze"))).contains("frieze");
    }
}
