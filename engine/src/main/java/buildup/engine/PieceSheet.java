package buildup.engine;

import buildup.catalog.Catalog;
import buildup.engine.hold.backing.Backing;
import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Section;
import buildup.engine.section.compose.Standing;
import buildup.engine.section.placing.PieceBlank;
import buildup.engine.section.placing.Placed;
import buildup.engine.section.stack.PieceKind;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.sheet.Cell;
import buildup.shared.sheet.Columns;
import buildup.shared.sheet.Sheet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** The pieces as a sheet: what they are, where they sit, what holds them while fastenings are not counted. */
final class PieceSheet {
    /** A piece with what is known of it. */
    private record Row(int number, Body body, Placed placed, Standing standing, List<Backing.Stretch> backing) {}

    private final Section section;
    private final Catalog catalog;

    private PieceSheet(Section section, Catalog catalog) {
        this.section = section;
        this.catalog = catalog;
    }

    static Sheet of(Section section, List<Backing> backings, Catalog catalog) {
        return new PieceSheet(section, catalog).sheet(backings);
    }

    private Sheet sheet(List<Backing> backings) {
        String boards = section.stack().boardList();
        return Sheet.of("pieces", "PIECES", rows(backings))
                .name("name", "piece", row -> row.body().name())
                .words("letter", "", row -> Section.letter(row.number()))
                .alone()
                .words("profile", "profile", row -> row.placed().piece().stock().name())
                .words("kind", "kind", row -> row.placed().piece().kind().word())
                .words("wood", "wood", row -> row.placed().piece().wood().name())
                .length("bottom", "bottom", row -> row.body().outline().box().bottom())
                .length("top", "top", row -> row.body().outline().box().top())
                .length("back", "back", row -> row.body().outline().box().back())
                .length("face", "face", row -> row.body().outline().box().face())
                .length("height", "height", row -> row.body().outline().box().height())
                .text()
                .measure("area", "", Quantity.AREA, row -> row.body().outline().area())
                .saying("size", "blank", PieceSheet::size)
                .sayingIf("board", "cut from", this::board)
                .text()
                .one("blank", "blank", " x ", blank(), Optional::of)
                .json()
                .flag("grounded", "grounded", row -> row.standing().grounded())
                .words("held", "held", PieceSheet::held)
                .text()
                .many("bearing", "bears on", bearing(), row -> row.standing().bearing())
                .adds()
                .noneWithoutRow()
                .many("backing", "backing to nail to", backing(), Row::backing)
                .adds()
                .noneWithoutRow()
                .many("outline", "true segments, walked with the wood on the left", outline(), PieceSheet::outline)
                .json()
                .alone()
                .alone()
                .table(
                        "PIECES in the order of putting up; blanks thickness x width; boards of the list " + boards,
                        "letter",
                        "name",
                        "kind",
                        "profile",
                        "size",
                        "board")
                .table(
                        "WHERE THE PIECES SIT: heights from the datum, out from the wall plane",
                        "letter",
                        "name",
                        "bottom",
                        "top",
                        "back",
                        "face",
                        "area")
                .table(
                        "SUPPORT AND BACKING, fastenings not counted; with the width that bears and the face that takes"
                                + " a nail",
                        "letter",
                        "name",
                        "held",
                        "bearing",
                        "backing")
                .sheet();
    }

    private List<Row> rows(List<Backing> backings) {
        return IntStream.range(0, section.bodies().size())
                .filter(number -> section.body(number).placed().isPresent())
                .mapToObj(number -> new Row(
                        number,
                        section.body(number),
                        section.body(number).placed().orElseThrow(),
                        standing(number),
                        backings.stream()
                                .filter(backing -> backing.body() == number)
                                .flatMap(backing -> backing.stretches().stream())
                                .toList()))
                .toList();
    }

    private Standing standing(int number) {
        return section.standing().stream()
                .filter(one -> one.body() == number)
                .findFirst()
                .orElseThrow();
    }

    private Columns<Row> blank() {
        return Columns.<Row>inner()
                .length("width", "width", row -> row.placed().blankWidth())
                .length("thickness", "thickness", row -> row.placed().blankThickness())
                .sayingIf("stock", "cut from", this::stock)
                .both();
    }

    /** Thickness x width; framing is there already, and nobody cuts it. */
    private static Phrase size(Row row) {
        return row.placed().piece().kind() == PieceKind.FRAMING
                ? Phrase.of("")
                : Phrase.of("{thickness} x {width}")
                        .with("thickness", Figure.length(row.placed().blankThickness()))
                        .with("width", Figure.length(row.placed().blankWidth()));
    }

    private Optional<Phrase> stock(Row row) {
        return PieceBlank.phrase(row.placed(), catalog, section.stack().boardList());
    }

    /** Said where it is not the profile itself. */
    private Optional<Phrase> board(Row row) {
        String own = row.placed().piece().stock().name();
        return stock(row).filter(name -> !name.equals(Phrase.plain(own)));
    }

    private static String held(Row row) {
        if (row.placed().piece().kind() == PieceKind.FRAMING) {
            return "framing";
        }
        return row.standing().fixed() ? "fixed" : row.standing().grounded() ? "stands" : "nails only";
    }

    private Columns<Standing.Bearing> bearing() {
        return Columns.<Standing.Bearing>inner()
                .name("on", "on", bearing -> section.name(bearing.on()))
                .length("width", "width", Standing.Bearing::width)
                .text()
                .place(
                        "from",
                        "from",
                        bearing -> bearing.from().x(),
                        bearing -> bearing.from().y())
                .json()
                .place(
                        "to",
                        "to",
                        bearing -> bearing.to().x(),
                        bearing -> bearing.to().y())
                .json();
    }

    /** The true segments in their walk, the wood on the left. */
    private static List<Stroke> outline(Row row) {
        return row.body().outline().strokes();
    }

    private static Columns<Stroke> outline() {
        return Columns.<Stroke>inner()
                .words("member", "member", Stroke::member)
                .words("kind", "line or arc", stroke -> stroke.segment() instanceof Arc ? "arc" : "line")
                .place(
                        "from",
                        "beginning",
                        stroke -> stroke.segment().from().x(),
                        stroke -> stroke.segment().from().y())
                .place(
                        "to",
                        "end",
                        stroke -> stroke.segment().to().x(),
                        stroke -> stroke.segment().to().y())
                .placeIf(
                        "center",
                        "center of an arc",
                        stroke -> arc(stroke.segment())
                                .map(arc -> new Cell.Place(
                                        arc.center().x(), arc.center().y())))
                .flagIf(
                        "clockwise",
                        "whether an arc is walked clockwise",
                        stroke -> arc(stroke.segment()).map(arc -> !arc.counterclockwise()));
    }

    private static Optional<Arc> arc(Segment segment) {
        return segment instanceof Arc arc ? Optional.of(arc) : Optional.empty();
    }

    private Columns<Backing.Stretch> backing() {
        return Columns.<Backing.Stretch>inner()
                .name("by", "by", stretch -> section.name(stretch.by()))
                .length("length", "length", stretch -> stretch.from().distance(stretch.to()))
                .text()
                .place(
                        "from",
                        "from",
                        stretch -> stretch.from().x(),
                        stretch -> stretch.from().y())
                .json()
                .place(
                        "to",
                        "to",
                        stretch -> stretch.to().x(),
                        stretch -> stretch.to().y())
                .json();
    }
}
