package buildup.profiles.region;

import buildup.profiles.outline.Outline;
import java.util.ArrayList;
import java.util.List;

/** Every order in which a few outlines can be put up. */
final class Orders {
    private Orders() {}

    static List<List<Outline>> of(List<Outline> outlines) {
        if (outlines.isEmpty()) {
            return List.of(List.of());
        }
        List<List<Outline>> orders = new ArrayList<>();
        for (int first = 0; first < outlines.size(); first++) {
            List<Outline> rest = new ArrayList<>(outlines);
            Outline one = rest.remove(first);
            for (List<Outline> then : of(rest)) {
                List<Outline> order = new ArrayList<>(List.of(one));
                order.addAll(then);
                orders.add(order);
            }
        }
        return orders;
    }
}
