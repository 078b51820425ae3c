package contrapposto.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CatalogueTableTest {
    /** A mismatch leaves {@code target/catalogue.received.md}; look at it, then copy it over {@code docs/catalogue.md}. */
    @Test
    void the_printed_table_is_in_step_with_the_families() throws IOException {
        var table = CatalogueTable.of(CatalogueTest.CATALOGUE);
        var printed = Files.readString(Path.of("docs/catalogue.md"));
        if (!table.equals(printed)) {
            Files.writeString(Path.of("target/catalogue.received.md"), table);
        }
        assertEquals(table, printed);
    }
}
