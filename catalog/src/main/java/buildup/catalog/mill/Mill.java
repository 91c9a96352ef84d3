package buildup.catalog.mill;

import buildup.shared.length.Length;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How a mill buys wood and cuts blanks of it.
 *
 * @param about one line for a list
 * @param quarters in rising order
 * @param allowance width that the blank has over the finished width
 * @param board width of the boards that come in, one with another
 * @param edge what straightening takes off each board's width
 * @param kerf of the saw that rips
 * @param joint what jointing takes off a board's width for each glue line
 * @param longest boards that come in
 * @param sound share of the wood that is free of defects, more than 0 to 1
 * @param setUp length that is run to set the machine up
 * @param waste extra length by the kind of work, as a share; the first is the usual one
 * @param accuracy of the profile, as promised
 */
public record Mill(
        String name,
        String about,
        List<Quarter> quarters,
        Length allowance,
        Length board,
        Length edge,
        Length kerf,
        Length joint,
        Length longest,
        BigDecimal sound,
        Length setUp,
        Map<String, BigDecimal> waste,
        Length accuracy) {
    /**
     * A rough thickness as the yard names it.
     *
     * @param rough by which it is paid
     * @param finished the greatest finished thickness that it yields
     */
    public record Quarter(String label, Length rough, Length finished) {}

    public Mill {
        quarters = List.copyOf(quarters);
        // in the order of the file, which says what is usual
        waste = Collections.unmodifiableMap(new LinkedHashMap<>(waste));
    }
}
