package buildup.catalog;

import buildup.catalog.entry.CatalogNotices;
import buildup.catalog.entry.Sizes;
import buildup.catalog.wood.BoardList;
import buildup.catalog.wood.BoardList.Board;
import buildup.catalog.wood.BoardList.Dressed;
import buildup.catalog.wood.BoardReader;
import buildup.catalog.words.SizeText;
import buildup.catalog.words.WordProblems;
import buildup.profiles.Profile;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Value;
import buildup.shared.length.Length;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Mark;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Looks boards up in the lists of nominal sizes. */
record BoardLookup(Lists lists) {

    /** A board this near to a thickness is taken for it: planing and sanding take as much. */
    private static final Length SAME_THICKNESS = Length.inches(Tolerance.SAW_CUT);

    private static final List<Length> USUAL_BOARD = List.of(Length.inches(0.75), Length.inches(3.5));

    /** The board of a nominal size. */
    Optional<Profile> nominal(String text, Mark mark, String boardList, WordProblems speaker) {
        Optional<BoardList> list = list(boardList, mark, speaker);
        List<String> parts = SizeText.split(text);
        List<Length> sizes = parts.stream()
                .map(part -> BoardReader.nominal(
                        part, list.map(BoardList::nominalUnit).orElse(LengthUnit.INCH)))
                .flatMap(Optional::stream)
                .toList();
        if (parts.size() != 2 || sizes.size() != 2) {
            speaker.say(CatalogNotices.NO_BOARD_SIZE.with("text", text).with("size", Sizes.figures(USUAL_BOARD)), mark);
            return Optional.empty();
        }
        return list.flatMap(found -> board(text, sizes.get(0), sizes.get(1), found, mark, speaker));
    }

    private Optional<BoardList> list(String name, Mark mark, WordProblems speaker) {
        Optional<BoardList> list = lists.find(BoardList.class, name);
        if (list.isEmpty()) {
            Map<String, String> known = new TreeMap<>();
            lists.names(BoardList.class).forEach(one -> known.put(one, ""));
            speaker.say(CatalogNotices.UNKNOWN_BOARDS.with("name", name).cure(NearNames.cure(name, known)), mark);
        }
        return list;
    }

    private static Optional<Profile> board(
            String text, Length thick, Length wide, BoardList list, Mark mark, WordProblems speaker) {
        Optional<Dressed> thickness = list.thickness(thick);
        Optional<Length> width =
                list.widths().isEmpty() ? Optional.of(wide) : list.width(wide).map(Dressed::dressed);
        if (thickness.isEmpty() || width.isEmpty()) {
            speaker.say(
                    CatalogNotices.NOT_LISTED
                            .with("list", list.name())
                            .with("text", text)
                            .with("near", nearest(thick, wide, list))
                            .with("size", Sizes.figures(List.of(thick, wide))),
                    mark);
            return Optional.empty();
        }
        return Optional.of(Profile.board(
                text + " (" + list.name() + ")",
                thickness.get().dressed().toInches(),
                width.get().toInches()));
    }

    /** The listed sizes on either side of one that is not, as the trade writes them. */
    private static Value nearest(Length thick, Length wide, BoardList list) {
        List<Dressed> thicknesses = beside(list.thicknesses(), thick);
        List<Dressed> widths = beside(list.widths(), wide);
        return thicknesses.stream()
                .flatMap(t -> widths.isEmpty()
                        ? Stream.of(new Board(t, Optional.empty()))
                        : widths.stream().map(w -> new Board(t, Optional.of(w))))
                .map(Board::phrase)
                .reduce((first, then) ->
                        CatalogNotices.EITHER.with("first", first).with("then", then))
                .orElse(CatalogNotices.ANOTHER_LIST);
    }

    private static List<Dressed> beside(List<Dressed> sizes, Length nominal) {
        List<Dressed> same = sizes.stream()
                .filter(size -> size.nominal().near(nominal, Sizes.SAME))
                .toList();
        if (!same.isEmpty()) {
            return same;
        }
        Optional<Dressed> below = sizes.stream()
                .filter(size -> size.nominal().compareTo(nominal) < 0)
                .max(Comparator.comparing(Dressed::nominal));
        Optional<Dressed> above = sizes.stream()
                .filter(size -> size.nominal().compareTo(nominal) > 0)
                .min(Comparator.comparing(Dressed::nominal));
        return Stream.concat(below.stream(), above.stream()).toList();
    }

    Optional<Board> stockFor(Length thickness, Length width, String boardList) {
        Optional<BoardList> list = lists.find(BoardList.class, boardList);
        Optional<Dressed> thick = list.map(BoardList::thicknesses).orElse(List.of()).stream()
                .filter(size -> size.dressed().near(thickness, SAME_THICKNESS))
                .min(Comparator.comparing(
                        size -> size.dressed().minus(thickness).abs()));
        if (thick.isEmpty() || list.isEmpty() || list.get().widths().isEmpty()) {
            return thick.map(size -> new Board(size, Optional.empty()));
        }
        return list.get().widths().stream()
                .filter(size -> !size.seldom())
                .filter(size -> size.nominal().compareTo(thick.get().nominal()) >= 0)
                .filter(size -> size.dressed().plus(Sizes.SAME).compareTo(width) >= 0)
                .min(Comparator.comparing(Dressed::dressed))
                .map(size -> new Board(thick.get(), Optional.of(size)));
    }
}
