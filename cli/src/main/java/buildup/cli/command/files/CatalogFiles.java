package buildup.cli.command.files;

import buildup.catalog.Catalog;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notices;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** The catalogs of a run: those that a document names and those of the command line, over the lists that come along. */
public record CatalogFiles(InputFiles files, Claims claims, Notices notices) {
    /** Not beside the document: an absolute name of any system, or a step out of the folder. */
    private static final Pattern ELSEWHERE =
            Pattern.compile("[/\\\\~].*|[A-Za-z]:.*|(?:.*[/\\\\])?\\.\\.(?:[/\\\\].*)?");

    /**
     * All lists together.
     *
     * @param kind of the document
     * @param word of the command line that names it: a file, or {@code -}
     * @param more given beside it, the last first in rank
     */
    public Catalog of(InputFiles.Kind kind, Optional<Document> document, String word, List<Path> more) {
        Catalog catalog = Catalog.builtIn();
        if (document.isPresent()) {
            catalog = own(kind, document.get(), word, catalog);
        }
        for (SentFiles.Named one : files.sent(word).map(SentFiles::lists).orElse(List.of())) {
            catalog = with(catalog, one);
        }
        return with(catalog, more);
    }

    /** The lists that come along, and those of the command line. */
    public Catalog of(List<Path> more) {
        return with(Catalog.builtIn(), more);
    }

    private Catalog with(Catalog lists, List<Path> more) {
        Catalog catalog = lists;
        for (Path path : more) {
            catalog = with(catalog, path);
        }
        return catalog;
    }

    /** The catalog files that the document names, which lie beside it. */
    private Catalog own(InputFiles.Kind kind, Document document, String word, Catalog builtIn) {
        Catalog catalog = builtIn;
        List<Scalar> names = Fields.of(document, claims, notices, new LengthReader(LengthUnit.INCH, Map.of()))
                .scalars("catalog");
        Path folder = word.equals("-")
                ? Path.of("")
                : Optional.ofNullable(Path.of(word).getParent()).orElse(Path.of(""));
        for (Scalar name : names.stream().distinct().toList()) {
            Optional<SentFiles> job = files.sent(word);
            if (job.isPresent()) {
                catalog = sent(job.get(), name.text().strip(), word, catalog);
                continue;
            }
            Optional<Path> path = beside(folder, name.text().strip());
            if (path.isPresent()) {
                Catalog lists = catalog;
                catalog = files.beside(word, name.text().strip(), path.get(), name.mark())
                        .map(found -> lists.with(found, claims, notices))
                        .orElse(catalog);
            } else {
                notices.add(FileNotices.ELSEWHERE
                        .with("file", name.text())
                        .with("document", kind.word())
                        .at(name.mark()));
            }
        }
        return catalog;
    }

    private Catalog sent(SentFiles job, String name, String word, Catalog catalog) {
        Optional<SentFiles.Named> one = job.beside(name);
        if (one.isEmpty()) {
            notices.add(FileNotices.NOT_IN_ARCHIVE
                    .with("file", InputFiles.nameOf(word))
                    .with("entry", name));
        }
        return one.map(found -> with(catalog, found)).orElse(catalog);
    }

    private Catalog with(Catalog catalog, SentFiles.Named one) {
        return files.document(one)
                .map(document -> catalog.with(document, claims, notices))
                .orElse(catalog);
    }

    private static Optional<Path> beside(Path folder, String name) {
        try {
            return name.isEmpty() || ELSEWHERE.matcher(name).matches()
                    ? Optional.empty()
                    : Optional.of(folder.resolve(name));
        } catch (InvalidPathException notAName) {
            return Optional.empty();
        }
    }

    private Catalog with(Catalog catalog, Path path) {
        return files.file(InputFiles.Kind.CATALOG, path)
                .map(document -> catalog.with(document, claims, notices))
                .orElse(catalog);
    }
}
