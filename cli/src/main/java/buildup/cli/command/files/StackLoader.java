package buildup.cli.command.files;

import buildup.catalog.Catalog;
import buildup.engine.Answer;
import buildup.engine.Searched;
import buildup.engine.judge.search.SearchLimits;
import buildup.engine.section.stack.Light;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.notice.Notices;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;

/** Opens one stack and the catalogs that it and the command line name. */
public final class StackLoader {
    private final InputFiles files;
    private final Notices notices;
    private final Optional<List<Light>> lights;
    private final Claims claims = new Claims();

    public StackLoader(InputFiles files, Notices notices) {
        this(files, notices, Optional.empty());
    }

    /** @param lights to shine in place of those of the stack */
    public StackLoader(InputFiles files, Notices notices, Optional<List<Light>> lights) {
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
    public Answer load(String word, List<Path> catalogs) {
        return answer(files.stack(word), word, catalogs);
    }

    /** The same for whoever asks every question, a little sooner. */
    public Answer whole(String word, List<Path> catalogs) {
        return answer(files.stack(word), word, catalogs, Answer::whole);
    }

    /**
     * What is known of a stack that was read, if it could be.
     *
     * @param word as on the command line: beside which its catalogs lie
     */
    public Answer answer(Optional<Document> document, String word, List<Path> catalogs) {
        return answer(document, word, catalogs, Answer::of);
    }

    /** What makes an answer of a document. */
    private interface Asked {
        /** The answer; lights shine in place of those of the stack where they are given. */
        Answer of(Document document, Catalog catalog, Claims claims, Notices notices, Optional<List<Light>> lights);
    }

    private Answer answer(Optional<Document> document, String word, List<Path> catalogs, Asked asked) {
        Catalog catalog = new CatalogFiles(files, claims, notices).of(InputFiles.Kind.STACK, document, word, catalogs);
        return document.map(found -> asked.of(found, catalog, claims, notices, lights))
                .orElseGet(() -> Answer.unread(files.name(word), notices.sorted()));
    }

    /**
     * What a search through the free sizes of a stack finds.
     *
     * @param document the stack, if it could be read
     * @param word as on the command line: beside which its catalogs lie
     * @param why the rule that is asked about, if one is
     */
    public Searched searched(
            Optional<Document> document, String word, List<Path> catalogs, SearchLimits limits, Optional<String> why) {
        Catalog catalog = new CatalogFiles(files, claims, notices).of(InputFiles.Kind.STACK, document, word, catalogs);
        return document.map(found -> Searched.of(found, catalog, claims, notices, limits, why))
                .orElseGet(() -> Searched.unread(files.name(word), notices.sorted()));
    }

    /** Every key that this run asked its documents for. */
    public SortedSet<String> asked() {
        return claims.asked();
    }
}
