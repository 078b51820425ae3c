package contrapposto.deliver;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import contrapposto.notice.Outcome;
import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;

/** Disks that fill up and folders that cannot be written, on a file system in memory that really runs out. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HardKnocksTest {
    private static final byte[] OLD = new byte[6_000];
    private static final byte[] LARGE = new byte[20_000];

    private final FileSystem disk = Jimfs.newFileSystem(Configuration.unix().toBuilder().setBlockSize(512).setMaxSize(60_000).build());
    private final Path root = disk.getPath("/clinic/out");

    @Test
    void when_the_disk_is_full_the_old_files_stay_whole_and_nothing_else_is_left() throws IOException {
        var delivery = new Delivery(root);
        delivery.deliver(parcel(OLD, "a-client.pdf", "a-coach.pdf"));
        var outcome = delivery.deliver(parcel(LARGE, "a-client.pdf", "a-coach.pdf", "a-plan.yaml"));
        assertEquals(List.of("cannot-write"), outcome.notices().stream().map(n -> n.id()).toList());
        assertTrue(outcome.notices().getFirst().hints().getFirst().contains("has room"));
        assertEquals(List.of("a-client.pdf", "a-coach.pdf"), names());
        assertArrayEquals(OLD, Files.readAllBytes(root.resolve("C-1/a-client.pdf")));
        assertArrayEquals(OLD, Files.readAllBytes(root.resolve("C-1/a-coach.pdf")));
    }

    @Test
    void when_the_second_of_two_files_cannot_be_moved_the_first_goes_back() throws IOException {
        Path folder = Files.createDirectories(root.resolve("C-1"));
        Files.write(folder.resolve("first"), OLD);
        var exchange = new Exchange(folder);
        exchange.draft("first", LARGE);
        exchange.draft("second", new byte[10]);
        exchange.draft("new", new byte[10]);
        Files.delete(folder.resolve(".new.part"));      // stands for whatever makes a move fail
        org.junit.jupiter.api.Assertions.assertThrows(IOException.class, exchange::swap);
        exchange.undo();
        assertEquals(List.of("first"), names());
        assertArrayEquals(OLD, Files.readAllBytes(folder.resolve("first")));
    }

    @Test
    void a_ledger_on_a_full_disk_only_forgets() throws IOException {
        var ledger = ((Outcome.Done<Ledger>) Ledger.open(root)).value();
        Files.write(root.resolve("filler"), new byte[58_000]);
        var made = new Ledger.Made(Manifest.Result.DONE, List.of());
        for (int i = 0; i < 60; i++) {
            ledger.add("client-" + i, "k".repeat(64), made);
        }
        assertEquals(Optional.empty(), ledger.unchanged("client-59", "k".repeat(64)));
        ledger.close();
        Files.delete(root.resolve("filler"));
        try (var again = ((Outcome.Done<Ledger>) Ledger.open(root)).value()) {
            assertEquals(Optional.of(made), again.unchanged("client-0", "k".repeat(64)));
            again.add("client-59", "k".repeat(64), made);
            assertEquals(Optional.of(made), again.unchanged("client-59", "k".repeat(64)));
        }
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void a_folder_that_cannot_be_written_is_one_notice_with_a_way_out() {
        Path nowhere = Path.of("/proc/contrapposto-out");      // refused to everyone, root included
        for (Outcome<?> outcome : List.of(Ledger.open(nowhere), Manifest.begin(nowhere), new Delivery(nowhere).deliver(parcel(OLD, "a-client.pdf")))) {
            var notice = assertInstanceOf(Outcome.Refused.class, outcome).notices().getFirst();
            assertTrue(notice.toString().contains("cannot-write") && notice.toString().contains("`-o`"), notice.toString());
        }
    }

    @Test
    void a_link_in_place_of_the_ledger_or_the_manifest_is_not_followed() throws IOException {
        Files.createDirectories(root);
        Path precious = Files.write(disk.getPath("/clinic/precious"), OLD);
        Files.createSymbolicLink(root.resolve("manifest.json"), precious);
        assertInstanceOf(Outcome.Refused.class, Manifest.begin(root));
        Files.createSymbolicLink(root.resolve(".made"), precious);
        assertInstanceOf(Outcome.Refused.class, Ledger.open(root));
        assertArrayEquals(OLD, Files.readAllBytes(precious));
    }

    private List<String> names() throws IOException {
        try (var inside = Files.list(root.resolve("C-1"))) {
            return inside.map(p -> p.getFileName().toString()).sorted().toList();
        }
    }

    private static Delivery.Parcel parcel(byte[] bytes, String... names) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (String name : names) {
            files.put(name, bytes);
        }
        return new Delivery.Parcel("C-1", files, List.of());
    }
}
