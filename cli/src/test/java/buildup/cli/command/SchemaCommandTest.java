package buildup.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import buildup.cli.tell.Schema;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.dialect.DialectId;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SchemaCommandTest {
    @Test
    void every_schema_is_a_schema() {
        var dialect = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(SchemaLocation.of(DialectId.DRAFT_2020_12));
        for (Schema schema : SchemaCommand.ALL) {
            Ran ran = Ran.of("schema", schema.name());
            assertThat(ran.code()).isZero();
            assertThat(dialect.validate(ran.out(), InputFormat.JSON))
                    .as(schema.name())
                    .isEmpty();
        }
    }

    @Test
    void a_name_that_has_none_is_refused_with_the_nearest_one_that_has() {
        Ran ran = Ran.of("schema", "reprot");
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).isEqualTo("refusal  schema  There is no schema 'reprot'. Did you mean report?\n");
    }

    @Test
    void a_schema_goes_into_a_file(@TempDir Path folder) {
        Path file = folder.resolve("report.json");
        assertThat(Ran.of("schema", "report", "-o", file.toString()).out()).isEmpty();
        assertThat(Ran.read(file)).isEqualTo(Ran.of("schema", "report").out());
    }
}
