package buildup.shared.document;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.shared.Said;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ClaimsTest {

    private final Notices notices = new Notices();
    private final Claims claims = new Claims();

    @Test
    void a_key_that_nobody_asked_for_is_refused_with_the_nearest_that_was_asked() {
        Document document = document("titel: Cap\nspace: { flor: 1 }\n");
        Fields root = root(document);
        root.text("title");
        root.fields("space").ifPresent(space -> {
            space.length("floor");
            space.length("ceiling");
        });

        assertThat(Said.all(claims.unclaimed(document)))
                .containsExactly(
                        refusal("No key is called 'titel' here.", 1, 1, "Did you mean title?"),
                        refusal("No key is called 'flor' in 'space'.", 2, 10, "Did you mean floor?"));
    }

    @Test
    void without_a_near_one_the_keys_that_were_asked_are_listed() {
        Document document = document("colour: red\n");
        Fields root = root(document);
        root.text("title");
        root.text("units");

        assertThat(Said.all(claims.unclaimed(document)))
                .containsExactly(refusal("No key is called 'colour' here.", 1, 1, "Known here: title, units."));
    }

    @Test
    void nobody_looks_below_a_key_that_is_unknown_itself() {
        Document document = document("other: { a: 1, b: { c: 2 } }\n");
        root(document).text("title");

        assertThat(claims.unclaimed(document)).hasSize(1);
    }

    @Test
    void the_keys_of_a_mapping_that_was_only_looked_at_are_free() {
        Document document = document("sizes: { lip: 1/4, lap: 1/2 }\n");
        root(document).mapping("sizes");

        assertThat(claims.unclaimed(document)).isEmpty();
    }

    @Test
    void a_free_mapping_may_hold_mappings_that_are_not_free() {
        Document document = document("woods: { oak: { density: 44, colour: red } }\n");
        Fields root = root(document);
        Mapping woods = root.mapping("woods").orElseThrow();
        root.fields((Mapping) woods.get("oak").orElseThrow(), "woods").text("density");

        assertThat(Said.all(claims.unclaimed(document)))
                .containsExactly(refusal("No key is called 'colour' in 'woods'.", 1, 30, "Known here: density."));
        assertThat(claims.asked()).containsExactly("woods", "woods.density");
    }

    @Test
    void two_pieces_that_are_written_alike_are_told_apart() {
        Document document = document("pieces:\n  - { name: a }\n  - { name: a }\n");
        root(document).list("pieces").get(0).text("name");

        assertThat(claims.unclaimed(document))
                .extracting(Notice::mark)
                .map(mark -> mark.map(Mark::line).orElseThrow())
                .containsExactly(3);
    }

    @Test
    void a_repeated_mapping_is_reported_once() {
        Document document = document("pieces: [&p { nmae: a }, *p, *p]\n");
        root(document).list("pieces").forEach(piece -> piece.text("name"));

        assertThat(claims.unclaimed(document)).hasSize(1);
    }

    @Test
    void a_mapping_of_which_nothing_was_asked_has_no_place_for_keys() {
        Document document = document("space: { floor: 1 }\n");
        root(document).fields("space");

        assertThat(Said.all(claims.unclaimed(document)))
                .containsExactly(refusal("No key is called 'floor' in 'space'.", 1, 10, "Take it out."));
    }

    @Test
    void every_key_ever_asked_is_listed_by_its_path() {
        Fields root = root(document("space: { wall: { from: 1 } }\npieces: [{ name: a }]\n"));
        root.fields("space").flatMap(space -> space.fields("wall")).ifPresent(wall -> wall.length("from"));
        root.list("pieces").forEach(piece -> piece.about("a").text("name"));

        assertThat(claims.asked()).containsExactly("pieces", "pieces.name", "space", "space.wall", "space.wall.from");
    }

    @Test
    void ordinary_ways_to_write_a_size_need_no_word() {
        Fields root = root(document("a: [1-3/8, 2-1/2, 6-1/4, ½]\n"));
        root.scalars("a").forEach(root::readLength);

        assertThat(notices.sorted()).isEmpty();
    }

    private Document document(String text) {
        return DocumentReader.read("s.yaml", text.getBytes(StandardCharsets.UTF_8), notices)
                .orElseThrow();
    }

    private Fields root(Document document) {
        return Fields.of(document, claims, notices, new LengthReader(LengthUnit.INCH, Map.of()));
    }

    private static Said refusal(String message, int line, int column, String cure) {
        return Said.refusal("unknown-key", message)
                .at(new Mark("s.yaml", line, column))
                .cure(cure);
    }
}
