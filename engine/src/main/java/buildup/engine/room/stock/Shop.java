package buildup.engine.room.stock;

import buildup.catalog.Catalog;
import buildup.engine.section.stack.Stack;
import buildup.shared.document.Fields;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The wood and the saws of a shop; lengths in {@link LengthSteps}.
 *
 * @param grid on which everything is measured
 * @param kerf of the saw that cuts to length
 * @param ripKerf of the saw that rips
 * @param trim comes off each end of a stick before anything else, kerf included
 * @param offcut a rest at least so long is kept
 * @param hold has to remain of a stick to clamp it when a shorter piece is cut off
 * @param holdForReturn the same when the piece is a return
 * @param aim what is to be least, where the document says
 * @param joints price of making each joint, in hundredths
 */
public record Shop(
        TapeStep grid,
        int kerf,
        int ripKerf,
        int trim,
        int offcut,
        int hold,
        int holdForReturn,
        Optional<Aim> aim,
        List<Supply> supplies,
        Map<EndJoint, Long> joints) {
    /** Common practice, no source: a foot of stick can be clamped. */
    static final double USUAL_HOLD = 12;

    /** Two articles on trim cut returns off a long piece, one of them off 18 in. */
    static final double HOLD_FOR_RETURN = 18;

    /** A shop without wood. */
    public static final Shop NONE = new Shop(
            TapeStep.SIXTY_FOURTHS,
            0,
            0,
            0,
            0,
            TapeStep.SIXTY_FOURTHS.needed(USUAL_HOLD),
            TapeStep.SIXTY_FOURTHS.needed(HOLD_FOR_RETURN),
            Optional.empty(),
            List.of(),
            Map.of());

    /** What is to be least. */
    public enum Aim {
        CHEAPEST("cheapest"),
        FEWEST("fewest");

        private final String word;

        Aim(String word) {
            this.word = word;
        }

        /** As the document calls it. */
        public String word() {
            return word;
        }

        /** What a stick of a length takes of what is to be least: hundredths, or itself. */
        public long price(Supply supply, int length) {
            return this == CHEAPEST ? supply.price(length) : 1;
        }

        /** Hundredths, or sticks that are bought. */
        public long taken(List<Stick> sticks) {
            return this == CHEAPEST
                    ? sticks.stream().mapToLong(Stick::price).sum()
                    : sticks.stream()
                            .filter(stick -> stick.origin() == Stick.Origin.BOUGHT)
                            .count();
        }
    }

    public Shop {
        supplies = List.copyOf(supplies);
        joints = Map.copyOf(joints);
    }

    /** Reads {@code stock:}; nothing when the document has none. What cannot be read is refused and left out. */
    public static Optional<Shop> read(Stack stack, Fields root, Catalog catalog, Notices notices) {
        return root.fields("stock").map(fields -> new ShopReader(stack, catalog, fields, notices).read());
    }

    /** What can be used of a stick. */
    public int usable(int length) {
        return length - 2 * trim;
    }
}
