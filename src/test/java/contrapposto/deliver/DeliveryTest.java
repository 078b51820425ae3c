package contrapposto.deliver;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.notice.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class DeliveryTest {
    private static final byte[] NEW = {1, 2, 3};

    @TempDir
    Path root;

    @Test
    void files_stand_in_the_folder_and_nothing_else_does() throws IOException {
        var outcome = new Delivery(root).deliver(parcel("a-client.pdf", "a-plan.yaml"));
        assertEquals(Outcome.done(List.of("HS-1/a-client.pdf", "HS-1/a-plan.yaml")), outcome);
        assertArrayEquals(NEW, Files.readAllBytes(root.resolve("HS-1/a-client.pdf")));
        assertEquals(List.of("a-client.pdf", "a-plan.yaml"), names());
    }

    @Test
    void an_older_program_does_not_stay_beside_a_referral() throws IOException {
        new Delivery(root).deliver(parcel("a-client.pdf"));
        new Delivery(root).deliver(new Delivery.Parcel("HS-1", Map.of("a-referral.pdf", NEW), List.of("a-client.pdf", "a-coach.pdf")));
        assertEquals(List.of("a-referral.pdf"), names());
    }

    @Test
    void when_one_place_is_taken_by_a_folder_nothing_is_written() throws IOException {
        Files.createDirectories(root.resolve("HS-1/a-plan.yaml"));
        assertInstanceOf(Outcome.Refused.class, new Delivery(root).deliver(parcel("a-client.pdf", "a-plan.yaml")));
        assertEquals(List.of("a-plan.yaml"), names());
    }

    @Test
    void a_link_is_not_followed() throws IOException {
        Path elsewhere = Files.createDirectories(root.resolve("elsewhere"));
        Files.createSymbolicLink(root.resolve("HS-1"), elsewhere);
        assertInstanceOf(Outcome.Refused.class, new Delivery(root).deliver(parcel("a-client.pdf")));
        try (var inside = Files.list(elsewhere)) {
            assertEquals(0, inside.count());
        }
    }

    @Test
    void a_link_in_place_of_a_file_is_not_followed() throws IOException {
        Files.createDirectories(root.resolve("HS-1"));
        Path target = Files.write(root.resolve("precious"), new byte[] {9});
        Files.createSymbolicLink(root.resolve("HS-1/a-client.pdf"), target);
        assertInstanceOf(Outcome.Refused.class, new Delivery(root).deliver(parcel("a-client.pdf")));
        assertArrayEquals(new byte[] {9}, Files.readAllBytes(target));
    }

    @Test
    void a_root_that_is_a_file_is_one_notice() throws IOException {
        Path file = Files.write(root.resolve("file"), NEW);
        var outcome = new Delivery(file).deliver(parcel("a-client.pdf"));
        assertEquals(List.of("cannot-write"), outcome.notices().stream().map(n -> n.id()).toList());
        assertTrue(Files.isRegularFile(file));
        assertFalse(Files.exists(root.resolve("HS-1")));
    }

    private List<String> names() throws IOException {
        try (var inside = Files.list(root.resolve("HS-1"))) {
            return inside.map(p -> p.getFileName().toString()).sorted().toList();
        }
    }

    private static Delivery.Parcel parcel(String... names) {
        var files = new LinkedHashMap<String, byte[]>();
        for (String name : names) {
            files.put(name, NEW);
        }
        return new Delivery.Parcel("HS-1", files, List.of());
    }
}
