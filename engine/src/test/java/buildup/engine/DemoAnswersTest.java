package buildup.engine;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.catalog.Catalog;
import buildup.engine.judge.verdict.Ruling.Reply;
import buildup.engine.mill.quote.OfferSheets;
import buildup.engine.mill.quote.Order;
import buildup.engine.mill.quote.Quote;
import buildup.engine.mill.quote.QuoteSheets;
import buildup.engine.room.run.CutSheets;
import buildup.engine.room.sticks.LengthSheets;
import buildup.engine.room.sticks.Limit;
import buildup.engine.room.sticks.StickSheets;
import buildup.shared.document.Claims;
import buildup.shared.document.DocumentReader;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notices;
import buildup.shared.sheet.Sheet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every answer about the demos, asked through the front door alone. */
class DemoAnswersTest {
    private static Answer answer(String demo) throws IOException {
        byte[] bytes = Files.readAllBytes(Path.of("../catalog/demo/reading-room-" + demo + ".yaml"));
        return Answer.of(
                DocumentReader.read(demo + ".yaml", bytes, new Notices()).orElseThrow(), Catalog.builtIn());
    }

    @ParameterizedTest
    @ValueSource(strings = {"cornice", "case", "door-head", "mantel", "wainscot-cap"})
    void every_sheet_of_a_demo_has_a_cell_for_every_column(String demo) throws IOException {
        List<Sheet> sheets = Sheets.of(answer(demo).known().orElseThrow());
        assertThat(sheets).hasSizeGreaterThan(15);
        assertThat(sheets)
                .allSatisfy(sheet -> assertThat(sheet.rows())
                        .allSatisfy(row -> assertThat(row.cells()).hasSameSizeAs(sheet.columns())));
        assertThat(sheets.stream().map(Sheet::key).filter(key -> !key.isEmpty()))
                .doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @ValueSource(strings = {"cornice", "case", "door-head", "mantel", "wainscot-cap"})
    void a_row_says_no_exactly_where_a_problem_was_said(String demo) throws IOException {
        Answer answer = answer(demo);
        boolean problems = answer.notices().stream().anyMatch(notice -> notice.level() == Level.PROBLEM);
        assertThat(answer.known().orElseThrow().verdict().count(Reply.NO) > 0).isEqualTo(problems);
    }

    @ParameterizedTest
    @ValueSource(strings = {"case"})
    void a_demo_with_a_plan_is_cut_from_sticks(String demo) throws IOException {
        Cuts cuts = Cuts.of(answer(demo), Limit.usual());
        Cuts.Known known = cuts.known().orElseThrow();
        assertThat(known.list()).isPresent();
        List<Sheet> sheets = new ArrayList<>(CutSheets.of(Optional.of(known.job()), known.covings()));
        sheets.addAll(StickSheets.of(known.list()));
        sheets.add(LengthSheets.cutList("case", known.list().orElseThrow()));
        assertThat(sheets)
                .allSatisfy(sheet -> assertThat(sheet.rows())
                        .allSatisfy(row -> assertThat(row.cells()).hasSameSizeAs(sheet.columns())));
    }

    @Test
    void the_order_of_the_demo_is_quoted_line_by_line() throws IOException {
        byte[] bytes = Files.readAllBytes(Path.of("../catalog/demo/reading-room-order.yaml"));
        Notices notices = new Notices();
        Quote quote = Order.read(
                        DocumentReader.read("order.yaml", bytes, notices).orElseThrow(),
                        Catalog.builtIn(),
                        new Claims(),
                        notices)
                .map(order -> Quote.of(order, Catalog.builtIn(), notices))
                .orElseThrow();
        List<Sheet> sheets = new ArrayList<>(QuoteSheets.of(Optional.of(quote)));
        sheets.addAll(OfferSheets.of(quote));
        sheets.add(QuoteSheets.items(Optional.of(quote)));
        assertThat(sheets)
                .isNotEmpty()
                .allSatisfy(sheet -> assertThat(sheet.rows())
                        .allSatisfy(row -> assertThat(row.cells()).hasSameSizeAs(sheet.columns())));
    }
}
