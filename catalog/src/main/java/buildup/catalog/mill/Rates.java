package buildup.catalog.mill;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What a mill asks for its wood and its work. Sums of money are in {@code currency}, exact decimals.
 *
 * @param about one line for a list
 * @param wood price of a board foot by the name of the wood
 * @param knife of a new ground knife, for each inch of its width
 * @param setUp of each head or cutter that a profile takes
 * @param labor of an hour of labor, making blanks ready
 * @param machine of an hour of the machine with its operator
 * @param prepared feet of blank that are made ready in an hour
 * @param glue price of a square foot of glued joint; none where nothing is glued
 * @param finish price of a foot by the kind of finish
 * @param specified share added for lengths that the order asks for
 * @param markUp share added to everything
 * @param minimum below which no order is taken
 */
public record Rates(
        String name,
        String about,
        String currency,
        Map<String, BigDecimal> wood,
        BigDecimal knife,
        BigDecimal setUp,
        BigDecimal labor,
        BigDecimal machine,
        BigDecimal prepared,
        Optional<BigDecimal> glue,
        Map<String, BigDecimal> finish,
        BigDecimal specified,
        BigDecimal markUp,
        BigDecimal minimum) {
    public Rates {
        // in the order of the file, for lists of what there is
        wood = Collections.unmodifiableMap(new LinkedHashMap<>(wood));
        finish = Collections.unmodifiableMap(new LinkedHashMap<>(finish));
    }
}
