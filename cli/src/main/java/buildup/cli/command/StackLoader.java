package buildup.cli.command;

import buildup.catalog.Catalog;
import buildup.cli.report.Answer;
import buildup.engine.placing.Placed;
import buildup.engine.placing.Placing;
import buildup.engine.stack.Kind;
import buildup.engine.stack.Light;
import buildup.engine.stack.Stack;
import buildup.engine.stack.StackReader;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.document.Fields;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.stream.Collectors;

/** Reads, places and composes one stack with the catalogs that it and the command line name. */
final class StackLoader {
    private final InputFiles files;
    private final Notices notices;
    private final Optional<List<Light>> lights;
    private final Claims claims = new Claims();

    StackLoader(InputFiles files, Notices notices) {
        this(files, notices, Optional.empty());
    }

    /** @param lights to shine in place of those of the stack */
    StackLoader(InputFiles files, Notices notices, Optional<List<Light>> lights) {
        this.files = files;
        this.notices = notices;
        this.lights = lights;
    }

    /**
     * What is known of the stack.
     *
     * @param word as on the command line: a file, or {@code -}
     * @param catalogs given beside it, the last first in rank
     */
    Answer load(String word, List<Path> catalogs) {
        Optional<Document> document = files.stack(word);
        Catalog catalog = new CatalogFiles(files, claims, notices).of(InputFiles.Kind.STACK, document, word, catalogs);
        if (document.isEmpty()) {
            String name = InputFiles.nameOf(word);
            return new Answer(name, name, LengthUnit.INCH, Optional.empty(), notices.sorted());
        }
        return answer(document.get(), catalog);
    }

    /** Every key that this run asked its documents for. */
    SortedSet<String> asked() {
        return claims.asked();
    }

    private Answer answer(Document document, Catalog catalog) {
        Stack stack = StackReader.read(document, catalog, claims, notices);
        List<Placed> placed = placed(stack);
        Asking asking =
                new Asking(stack, catalog, root(document, claims, notices).withReader(stack.lengths()), notices);
        notices.addAll(claims.unclaimed(document));
        Optional<Answer.Known> known = notices.refused() ? Optional.empty() : Optional.of(asking.about(placed, lights));
        notices.addAll(claims.ordinaryEchoes());
        return new Answer(document.file(), stack.title(), unit(document), known, notices.sorted());
    }

    /**
     * Places what was read, also when something was refused: what is wrong with a place is then said in the same run,
     * unless it may only follow from what was refused.
     */
    private List<Placed> placed(Stack stack) {
        Set<String> suspect = notices.sorted().stream()
                .filter(notice -> notice.level() == Level.REFUSAL)
                .flatMap(notice -> notice.piece().stream())
                .collect(Collectors.toSet());
        boolean refused = notices.refused();
        Notices found = new Notices();
        List<Placed> placed = Placing.place(stack, found);
        found.sorted().stream()
                .filter(notice -> !refused || !follows(notice, suspect))
                .forEach(notices::add);
        if (!notices.refused() && placed.stream().allMatch(one -> one.piece().kind() == Kind.FRAMING)) {
            notices.add(Notice.refusal("empty-stack", "The stack holds framing alone: there is nothing to measure.")
                    .cure("Add pieces of kind trim or nailer."));
        }
        return placed;
    }

    private static boolean follows(Notice notice, Set<String> suspect) {
        return notice.code().equals("unknown-name")
                || notice.piece().filter(suspect::contains).isPresent();
    }

    private Fields root(Document document, Claims asking, Notices told) {
        return Fields.of(document, asking, told, new LengthReader(LengthUnit.INCH, Map.of()));
    }

    /** The unit of the document; what is wrong with it has been said by the reader. */
    private LengthUnit unit(Document document) {
        return root(document, claims, new Notices())
                .text("units")
                .flatMap(LengthUnit::named)
                .orElse(LengthUnit.INCH);
    }
}
