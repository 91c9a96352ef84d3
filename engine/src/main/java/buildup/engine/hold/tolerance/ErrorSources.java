package buildup.engine.hold.tolerance;

import buildup.catalog.Catalog;
import buildup.catalog.wood.StockSpread;
import buildup.catalog.wood.Wood;
import buildup.engine.hold.tolerance.ErrorSource.What;
import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Section;
import buildup.engine.section.placing.PieceBlank;
import buildup.engine.section.placing.Placed;
import buildup.engine.section.stack.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** Finds what strays in a stack: the sizes of its sticks, a wall out of plumb, a ceiling out of level. */
final class ErrorSources {
    private final Section section;
    private final Catalog catalog;

    private ErrorSources(Section section, Catalog catalog) {
        this.section = section;
        this.catalog = catalog;
    }

    /** What strays by more than 0, pieces in order. */
    static List<ErrorSource> of(Section section, Catalog catalog, ErrorSettings settings) {
        ErrorSources sources = new ErrorSources(section, catalog);
        List<ErrorSource> all = new ArrayList<>();
        for (int i = 0; i < section.bodies().size(); i++) {
            Body body = section.body(i);
            if (body.inStack()) {
                all.addAll(sources.of(i, body.placed().orElseThrow()));
            }
        }
        if (section.stack().space().wall().solid()) {
            all.add(new ErrorSource("plumb of the wall", What.WALL, -1, settings.plumb()));
        }
        if (section.stack().space().ceiling().isPresent()) {
            all.add(new ErrorSource("level of the ceiling", What.CEILING, -1, settings.level()));
        }
        return all.stream().filter(source -> source.spread() > 0).toList();
    }

    private List<ErrorSource> of(int number, Placed placed) {
        Piece piece = placed.piece();
        Optional<StockSpread> listed = catalog.spread(piece.wood().name()).or(() -> catalog.spread(kind(placed)));
        double width =
                given(piece.spread().width(), listed.map(one -> one.width().toInches()));
        double thickness = given(
                piece.spread().thickness(), listed.map(one -> one.thickness().toInches()));
        return List.of(
                new ErrorSource("width of " + piece.name(), What.WIDTH, number, width),
                new ErrorSource("thickness of " + piece.name(), What.THICKNESS, number, thickness));
    }

    private static double given(OptionalDouble own, Optional<Double> listed) {
        return own.isPresent() ? own.getAsDouble() : listed.orElse(0.0);
    }

    private String kind(Placed placed) {
        Piece piece = placed.piece();
        if (piece.wood().group().filter(group -> group == Wood.Group.PANEL).isPresent()) {
            return "panel";
        }
        if (!piece.stock().board()) {
            return piece.stock().profileKind().equals("section") ? "block" : "molding";
        }
        // a board that a list has at its own width is used as it is bought
        return PieceBlank.ownWidth(placed, catalog, section.stack().boardList()) ? "lumber" : "ripped";
    }

    /** The numbers of the sources of one piece. */
    static IntStream of(int piece, List<ErrorSource> sources) {
        return IntStream.range(0, sources.size())
                .filter(number -> sources.get(number).piece() == piece);
    }
}
