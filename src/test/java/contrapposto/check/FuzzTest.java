package contrapposto.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.notice.Notice;
import contrapposto.notice.NoticeText;
import contrapposto.notice.Severity;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * Files taken apart and put together again by chance (with a fixed seed, so that a failure comes again): whatever comes
 * out, the reader answers with a value or with notices that can be shown, soon. {@code -Dfuzz.bytes=N} tries N bytes for
 * each reader; the profile {@code nightly} tries ten million in all.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FuzzTest {
    private static final long BYTES = Long.getLong("fuzz.bytes", 150_000);
    private static final long SEED = Long.getLong("fuzz.seed", 20261125L);
    private static final long SLOWEST_NANOS = 5_000_000_000L;
    private static final List<String> SNIPPETS = List.of("&a ", "*a", "!!binary ", "{", "}", "[", "]", ": ", "- ", "|", ">", "? ", "#", "\"", "'", ",", "\n", "\r\n", "\t", "\u0000",
            "\u202E", "\uFEFF", "\uD83D\uDE00", "---\n", "...\n", "%YAML 9.9\n", "<<: ", "1e999", "-0", "9999999999999999999", "0x1F", ".nan", "2026-02-30", "5 ft 99 in", "64 kg",
            "null", "yes", "client.name", "assessment.pelvis.turned", "\\x00", "é", "\u0301");

    @Test
    void specs() throws IOException {
        var seeds = seeds(Path.of("programs"), ".yaml");
        seeds.addAll(seeds(Path.of("src/test/resources/rejected"), ".yaml"));
        tried(seeds, bytes -> Checks.check("f.yaml", bytes, DemoSpecsTest.EXERCISES).notices());
    }

    @Test
    void rosters() throws IOException {
        var seeds = seeds(Path.of("src/test/resources/rejected"), ".csv");
        seeds.add("spec,client.name,client.height\nplain.yaml,\"Quill, Ada\",171 cm\nplain.yaml,Bo,5 ft 7 in\n".getBytes(StandardCharsets.UTF_8));
        tried(seeds, bytes -> {
            var roster = Roster.open("f.csv", bytes, RosterTest::spec, DemoSpecsTest.EXERCISES);
            var notices = new ArrayList<>(roster.notices());
            roster.map(rows -> {
                rows.forEach(row -> notices.addAll(row.outcome().notices()));
                return rows;
            });
            return notices;
        });
    }

    @Test
    void packs() throws IOException {
        var seeds = seeds(Path.of("programs/packs"), ".yaml");
        seeds.addAll(seeds(Path.of("src/test/resources/rejected"), "pack-slip.yaml"));
        tried(seeds, bytes -> Pack.open("f.yaml", bytes, name -> Optional.of(seeds.getFirst()), DemoSpecsTest.EXERCISES).notices());
    }

    @Test
    void a_file_of_fifty_megabytes_is_refused_at_once() {
        var large = new byte[50_000_000];
        Arrays.fill(large, (byte) 'a');
        long start = System.nanoTime();
        var notice = Checks.check("large.yaml", large, DemoSpecsTest.EXERCISES).notices().getFirst();
        assertEquals("yaml-too-big", notice.id());
        assertTrue(System.nanoTime() - start < SLOWEST_NANOS);
    }

    private static void tried(List<byte[]> seeds, Function<byte[], List<Notice>> reader) {
        var chance = new Random(SEED);
        long bytes = 0;
        int refused = 0;
        int inputs = 0;
        while (bytes < BYTES) {
            byte[] input = mutated(seeds, chance);
            long start = System.nanoTime();
            try {
                var notices = reader.apply(input);
                notices.forEach(NoticeText::of);
                refused += notices.stream().anyMatch(n -> n.severity() == Severity.ERROR) ? 1 : 0;
            } catch (RuntimeException | StackOverflowError | OutOfMemoryError escaped) {
                throw new AssertionError("escaped on input " + inputs + ":\n" + new String(input, StandardCharsets.UTF_8), escaped);
            }
            assertTrue(System.nanoTime() - start < SLOWEST_NANOS, () -> "slow: " + new String(input, StandardCharsets.UTF_8));
            bytes += input.length;
            inputs++;
        }
        assertTrue(refused > inputs / 10, "the inputs are damaged enough to mean something: " + refused + " of " + inputs);
        System.out.println("fuzz: " + inputs + " inputs, " + bytes + " bytes, " + refused + " refused");
    }

    /** One to six changes: a piece cut, doubled, moved in from another file, a byte flipped, a snippet put in. */
    private static byte[] mutated(List<byte[]> seeds, Random chance) {
        byte[] input = seeds.get(chance.nextInt(seeds.size()));
        for (int i = chance.nextInt(6); i >= 0; i--) {
            int at = chance.nextInt(input.length + 1);
            int end = Math.min(input.length, at + chance.nextInt(40));
            byte[] piece = switch (chance.nextInt(5)) {
                case 0 -> new byte[0];
                case 1 -> Arrays.copyOfRange(input, at, end).length == 0 ? new byte[0] : twice(Arrays.copyOfRange(input, at, end));
                case 2 -> some(seeds.get(chance.nextInt(seeds.size())), chance);
                case 3 -> new byte[] {(byte) chance.nextInt(256)};
                default -> SNIPPETS.get(chance.nextInt(SNIPPETS.size())).getBytes(StandardCharsets.UTF_8);
            };
            input = joined(Arrays.copyOf(input, at), piece, Arrays.copyOfRange(input, end, input.length));
        }
        return input;
    }

    private static byte[] twice(byte[] piece) {
        return joined(piece, piece, new byte[0]);
    }

    private static byte[] some(byte[] file, Random chance) {
        int from = chance.nextInt(file.length + 1);
        return Arrays.copyOfRange(file, from, Math.min(file.length, from + chance.nextInt(80)));
    }

    private static byte[] joined(byte[] first, byte[] second, byte[] third) {
        byte[] all = Arrays.copyOf(first, first.length + second.length + third.length);
        System.arraycopy(second, 0, all, first.length, second.length);
        System.arraycopy(third, 0, all, first.length + second.length, third.length);
        return all;
    }

    private static List<byte[]> seeds(Path folder, String ending) throws IOException {
        var seeds = new ArrayList<byte[]>();
        try (var files = Files.list(folder)) {
            for (Path file : files.filter(f -> f.toString().endsWith(ending)).sorted().toList()) {
                seeds.add(Files.readAllBytes(file));
            }
        }
        return seeds;
    }
}
