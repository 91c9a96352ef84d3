package buildup.engine.sticks;

import java.util.List;

/** Pieces that are cut from the same sticks, or from strips of the same width of the same boards. */
record Lot(Source source, String wood, List<Bundle> bundles) {
    Lot {
        bundles = List.copyOf(bundles);
    }

    int pieces() {
        return bundles.stream().mapToInt(bundle -> bundle.pieces().size()).sum();
    }
}
