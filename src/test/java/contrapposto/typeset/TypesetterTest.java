package contrapposto.typeset;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.document.Document;
import contrapposto.document.Document.Paper;
import contrapposto.document.Document.Print;
import contrapposto.notice.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class TypesetterTest {
    static final Typesetter TYPESETTER = new Typesetter();

    static Pages set(Document document) {
        var outcome = TYPESETTER.set(document);
        assertEquals(List.of(), outcome.notices());
        return ((Outcome.Done<Pages>) outcome).value();
    }

    @ParameterizedTest
    @CsvSource({"A4, PLAIN", "LETTER, PLAIN", "A4, LARGE", "LETTER, LARGE"})
    void every_block_passes_the_validator(Paper paper, Print print) throws IOException {
        byte[] pdf = set(Samples.every(paper, print)).bytes();
        Files.write(Files.createDirectories(Path.of("target/samples")).resolve(paper + "-" + print + ".pdf"), pdf);
        Proof.passes("ua1", pdf);
        Proof.passes("3a", pdf);
    }

    @Test
    void without_a_file_inside_it_is_the_second_part_of_the_archive_standard() {
        byte[] pdf = set(Samples.of("Plan", Paper.A4, Print.PLAIN, List.of(Samples.part("Your plan",
                List.of(Samples.opening()))), Optional.empty())).bytes();
        Proof.passes("ua1", pdf);
        Proof.passes("2a", pdf);
    }

    @Test
    void the_same_document_gives_the_same_bytes_on_any_thread() throws Exception {
        byte[] first = set(Samples.every(Paper.A4, Print.PLAIN)).bytes();
        Callable<byte[]> again = () -> set(Samples.every(Paper.A4, Print.PLAIN)).bytes();
        try (var threads = Executors.newFixedThreadPool(2)) {
            for (var bytes : threads.invokeAll(List.of(again, again, again, again))) {
                assertArrayEquals(first, bytes.get());
            }
        }
    }

    @Test
    void a_character_that_no_font_has_is_refused_by_name_and_place() {
        var outcome = TYPESETTER.set(Samples.of("Plan", Paper.A4, Print.PLAIN, List.of(Samples.part("Notes",
                List.of(new contrapposto.document.Block.Heading(2, "A snowman ☃ here")))), Optional.empty()));
        assertTrue(outcome instanceof Outcome.Refused<Pages>);
        assertEquals(List.of("no font has the character `☃` (U+2603, snowman), met in `A snowman ☃ here`"),
                outcome.notices().stream().map(n -> n.message()).toList());
    }
}
