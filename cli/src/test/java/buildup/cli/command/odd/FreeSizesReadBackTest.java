package buildup.cli.command.odd;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import buildup.catalog.Catalog;
import buildup.engine.Answer;
import buildup.engine.section.free.FreeSize;
import buildup.engine.section.free.FreeSizes;
import buildup.shared.document.Document;
import buildup.shared.document.DocumentReader;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notices;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * What a search writes in the place of a free size is read there, whatever the size counts. Every key of the guide's list
 * is set free by eighths or by ones: some of them in the build, all in the long run.
 */
@Tag("sampled")
class FreeSizesReadBackTest {
    /** One key in so many is asked. */
    private static final int SHARE = Integer.getInteger("buildup.odd.values", 0) > 0 ? 1 : 48;

    /** Keys whose values are held as fractions of their kind alone: one that writes decimals alone is always asked. */
    private static final Set<String> ALWAYS =
            Set.of("loads.load", "friction", "lights.hour", "fastenings.per", "seasons.moisture", "fastenings.angle");

    private static final List<String> UNITS = List.of("in", "mm", "ft", "cm");

    /** What may stand behind a key: a number and its unit. */
    private record Start(String number, String unit) {
        String at(BigDecimal more) {
            return new BigDecimal(number).add(more).toPlainString() + unit;
        }
    }

    private static final List<Start> STARTS = List.of(
            new Start("5", ""),
            new Start("1", ""),
            new Start("0.25", ""),
            new Start("30", ""),
            new Start("5", " lb/ft"),
            new Start("9", " %"),
            new Start("60", " F"),
            new Start("300", " ft2/gal"),
            new Start("1", " qt"));

    private final Random random = new Random(20);
    private final List<String> faults = new ArrayList<>();
    private final Set<String> asked = new TreeSet<>();

    @Test
    void whatever_a_free_size_counts_what_is_typed_for_it_is_read_as_such_a_size() {
        List<String> keys = new ArrayList<>(EveryKey.listedOfAStack());
        Collections.shuffle(keys, random);
        for (int i = 0; i < keys.size(); i++) {
            if (i % SHARE == 0 || ALWAYS.contains(keys.get(i))) {
                SmallDocument document = SmallDocument.ofAStack(keys.get(i));
                for (Start start : STARTS) {
                    ask(keys.get(i), document, start, UNITS.get(random.nextInt(UNITS.size())));
                }
            }
        }
        assertThat(faults).isEmpty();
        assertThat(asked).containsAll(ALWAYS);
    }

    private void ask(String key, SmallDocument document, Start start, String unit) {
        Set<String> usual = refusals(read(document.text(), unit));
        if (!usual.containsAll(refusals(read(document.with(start.at(BigDecimal.ZERO)), unit)))) {
            return;
        }
        for (String step : List.of("0.125", "1/8", "1")) {
            String range = "\"between " + start.at(BigDecimal.ZERO) + " and " + start.at(BigDecimal.ONE) + " by " + step
                    + start.unit() + "\"";
            Notices read = new Notices();
            FreeSizes free = FreeSizes.read(read(document.with(range), unit), Catalog.builtIn()::usualCalls, read);
            if (!read.refused() && !free.sizes().isEmpty()) {
                FreeSize size = free.sizes().get(0);
                BigDecimal one = step.equals("1") ? BigDecimal.ONE : new BigDecimal("0.125");
                Set<String> plain = refusals(read(document.with(start.at(one)), unit));
                double low = size.amounts().get(0);
                double between = low + random.nextDouble() * (size.amounts().get(1) - low);
                for (String text : List.of(size.choices().get(1), size.typed(between))) {
                    asked.add(key);
                    Set<String> found = refusals(free.with(List.of(text)));
                    found.removeAll(usual);
                    found.removeAll(plain);
                    if (!found.isEmpty()) {
                        faults.add(unit + ", " + size.place() + " " + range + " at " + text + ": " + found);
                    }
                }
            }
        }
    }

    private static Document read(String yaml, String unit) {
        String inUnit = yaml.replaceFirst("(?m)^units: .*$", "units: " + unit);
        return DocumentReader.read("every.yaml", inUnit.getBytes(UTF_8), new Notices())
                .orElseThrow();
    }

    private static Set<String> refusals(Document document) {
        return Answer.of(document, Catalog.builtIn()).notices().stream()
                .filter(notice -> notice.level() == Level.REFUSAL)
                .map(notice -> notice.code())
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
