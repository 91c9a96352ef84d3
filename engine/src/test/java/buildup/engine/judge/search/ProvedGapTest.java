package buildup.engine.judge.search;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.shared.figure.FigurePrinter;
import buildup.shared.length.LengthUnit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class ProvedGapTest {
    private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");

    /** 18.6 and 18.2 were told as 19 and 18 with a gap of 0. */
    @Test
    void the_gap_is_what_lies_between_the_answer_and_its_bound_as_they_are_printed_and_never_nothing() {
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < 2000; i++) {
            double bound = 40 * random.nextDouble();
            double found = bound + Math.pow(10, -4 * random.nextDouble());
            for (LengthUnit unit : List.of(LengthUnit.INCH, LengthUnit.MILLIMETER)) {
                String said = new FigurePrinter(unit).print(new ProvedGap(Optional.empty(), found, bound).said());
                List<BigDecimal> numbers = NUMBER.matcher(said)
                        .results()
                        .map(result -> new BigDecimal(result.group()))
                        .toList();
                assertThat(numbers).as(said).hasSize(3);
                assertThat(numbers.get(2)).as(said).isPositive();
                assertThat(numbers.get(0).subtract(numbers.get(1))).as(said).isEqualByComparingTo(numbers.get(2));
            }
        }
    }
}
