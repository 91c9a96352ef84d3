package buildup.shared.notice;

import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Named;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Text;
import buildup.shared.figure.Value;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One thing that a run has to say about its input: a kind, and the figures that stand in its sentence. It becomes words
 * at the edge, in the unit of the document: {@link NoticeWords}.
 *
 * @param kind code, level, sentence
 * @param mark where in the input
 * @param piece the piece it is about
 * @param amount by how much
 * @param values what stands in the places of sentence and cure
 * @param ownCure a cure of its own, in place of that of the kind
 */
public record Notice(
        Kind kind,
        Optional<Mark> mark,
        Optional<String> piece,
        Optional<Figure> amount,
        List<Named> values,
        Optional<Cure> ownCure) {
    /** Copies the list. */
    public Notice {
        values = List.copyOf(values);
    }

    /** By code, piece and place: few notices share them, and the figures of all others need not be looked at. */
    @Override
    public int hashCode() {
        int place = mark.isPresent() ? 31 * mark.get().line() + mark.get().column() : values.hashCode();
        return 31 * (31 * code().hashCode() + piece.hashCode()) + place;
    }

    /** How grave. */
    public Level level() {
        return kind.level();
    }

    /** The stable name of its kind. */
    public String code() {
        return kind.code().name();
    }

    /** The same without its place: it is about words of the command line. */
    public Notice nowhere() {
        return new Notice(kind, Optional.empty(), piece, amount, values, ownCure);
    }

    /** The same, at a place. */
    public Notice at(Mark place) {
        return new Notice(kind, Optional.of(place), piece, amount, values, ownCure);
    }

    /** The same, about a piece. */
    public Notice of(String name) {
        return new Notice(kind, mark, Optional.of(name), amount, values, ownCure);
    }

    /** The same, with how much. */
    public Notice amount(Figure howMuch) {
        return new Notice(kind, mark, piece, Optional.of(howMuch), values, ownCure);
    }

    /** The same, with a value in a place. */
    public Notice with(String name, Value value) {
        List<Named> more = new ArrayList<>(values);
        more.add(new Named(name, value));
        return new Notice(kind, mark, piece, amount, more, ownCure);
    }

    /** The same, with words in a place. */
    public Notice with(String name, String words) {
        return with(name, new Text(words));
    }

    /** The same, with a cure of its own; its places may also name the values of the notice. */
    public Notice cure(Phrase wayOut) {
        return cure(Cure.of(wayOut));
    }

    /** The same, with a cure of its own. */
    public Notice cure(Cure wayOut) {
        return new Notice(kind, mark, piece, amount, values, Optional.of(wayOut));
    }

    /** What is the matter. */
    public Phrase sentence() {
        return filled(Phrase.of(kind.sentence()));
    }

    /** One way out, if there is one. */
    public Optional<Phrase> cure() {
        return ownCure.map(Cure::words).or(kind::ownCure).map(this::filled);
    }

    /** The cures that change the document, the one that is told first. */
    public List<Cure> cures() {
        return ownCure.stream()
                .flatMap(cure -> Stream.concat(Stream.of(cure), cure.others().stream()))
                .filter(cure -> !cure.changes().isEmpty())
                .toList();
    }

    /** A way out, behind those that change the document, that only a person can go. */
    public Optional<Cure> byHand() {
        return ownCure.stream()
                .flatMap(cure -> cure.others().stream())
                .filter(cure -> cure.changes().isEmpty())
                .findFirst();
    }

    /** The cure as changes of the document; none where a person has to decide. */
    public List<Change> changes() {
        return ownCure.map(Cure::changes).orElse(List.of());
    }

    /**
     * What it names, in quotes, in its sentence: the rule that is not met, the two pieces that a gap parts. Two notices of
     * one kind that name the same say the same, be their figures as they may.
     */
    public List<String> about() {
        return values.stream()
                .filter(named ->
                        named.value() instanceof Text && kind.sentence().contains("'{" + named.name() + "}'"))
                .map(named -> ((Text) named.value()).words())
                .toList();
    }

    /** The figures and words in it under their names, those of phrases and lists taken apart; each name once. */
    public List<Named> figures() {
        Map<String, Named> found = new LinkedHashMap<>();
        values.forEach(named -> collect(named, found));
        ownCure.map(Cure::words).ifPresent(phrase -> phrase.values().forEach(named -> collect(named, found)));
        return List.copyOf(found.values());
    }

    private static void collect(Named named, Map<String, Named> found) {
        if (named.value() instanceof Phrase phrase) {
            phrase.values().forEach(inner -> collect(inner, found));
        } else if (named.value() instanceof Listing listing) {
            listing.values().forEach(inner -> collect(new Named(named.name(), inner), found));
        } else {
            String name = named.name();
            for (int i = 2; found.containsKey(name) && !found.get(name).value().equals(named.value()); i++) {
                name = named.name() + "-" + i;
            }
            found.putIfAbsent(name, new Named(name, named.value()));
        }
    }

    private Phrase filled(Phrase phrase) {
        Stream<Named> own = phrase.values().stream();
        Stream<Named> about = piece.stream().map(name -> new Named("piece", new Text(name)));
        Stream<Named> much = amount.stream().map(figure -> new Named("amount", figure));
        return new Phrase(
                phrase.template(),
                Stream.of(own, values.stream(), about, much).flatMap(all -> all).toList());
    }
}
