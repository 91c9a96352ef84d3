package buildup.catalog.mill;

import buildup.catalog.wood.BoardList;
import buildup.shared.length.Length;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How a mill buys wood and cuts blanks of it.
 *
 * @param about one line for a list
 * @param boards the board list that says what a quarter yields; none where the mill says it itself
 * @param quarters that the mill stocks, in rising order; of a board list those found in it
 * @param allowance width that the blank has over the finished width
 * @param widths of the boards that come in, in rising order
 * @param edge what straightening takes off each board's width
 * @param kerf of the saw that rips
 * @param joint what jointing takes off a board's width for each glue line
 * @param longest boards that come in
 * @param sound share of the wood that is free of defects, more than 0 to 1
 * @param setUp length that is run to set the machine up
 * @param waste extra length by the kind of work, as a share; the first is the usual one
 * @param accuracy of the profile, as promised
 * @param drops what is taken back of the boards; none where nothing is
 * @param random how random lengths fall, as promised; none where nothing is
 * @param moisture of the wood when it leaves, in the mill's words; none where nothing is promised
 */
public record Mill(
        String name,
        String about,
        Optional<String> boards,
        List<Quarter> quarters,
        Length allowance,
        List<Width> widths,
        Length edge,
        Length kerf,
        Length joint,
        Length longest,
        BigDecimal sound,
        Length setUp,
        Map<String, BigDecimal> waste,
        Length accuracy,
        Optional<Drops> drops,
        Optional<RandomLengths> random,
        Optional<String> moisture) {
    /**
     * A rough thickness as the yard names it.
     *
     * @param rough by which it is paid
     * @param finished the greatest finished thickness that it yields
     */
    public record Quarter(String label, Length rough, Length finished) {}

    /**
     * Boards of one width.
     *
     * @param share of all board feet that come in, more than 0 to 1
     */
    public record Width(Length width, BigDecimal share) {}

    /**
     * What falls off beside the strips.
     *
     * @param least narrower than this it is waste
     * @param credit share of the price of wood at which the rest is taken back
     */
    public record Drops(Length least, BigDecimal credit) {}

    /**
     * How random lengths fall.
     *
     * @param shortest length delivered
     * @param under a length below which there are few
     * @param few share of the feet that may be shorter than that
     */
    public record RandomLengths(Length shortest, Length under, BigDecimal few) {}

    /** Copies the lists. */
    public Mill {
        quarters = List.copyOf(quarters);
        widths = List.copyOf(widths);
        // in the order of the file, which says what is usual
        waste = Collections.unmodifiableMap(new LinkedHashMap<>(waste));
    }

    /** The same with what a board list says of its quarters; empty when it does not list them all. */
    public Optional<Mill> dressed(BoardList list) {
        List<Quarter> found = new ArrayList<>();
        quarters.forEach(quarter -> list.thickness(quarter.rough())
                .ifPresent(size -> found.add(new Quarter(quarter.label(), quarter.rough(), size.dressed()))));
        found.sort(Comparator.comparing(Quarter::finished));
        return found.size() == quarters.size()
                ? Optional.of(new Mill(
                        name, about, boards, found, allowance, widths, edge, kerf, joint, longest, sound, setUp, waste,
                        accuracy, drops, random, moisture))
                : Optional.empty();
    }

    /** The same with boards of other widths, where there are any. */
    public Mill withWidths(List<Width> others) {
        return others.isEmpty()
                ? this
                : new Mill(
                        name, about, boards, quarters, allowance, others, edge, kerf, joint, longest, sound, setUp,
                        waste, accuracy, drops, random, moisture);
    }
}
