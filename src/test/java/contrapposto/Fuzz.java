package contrapposto;

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
import java.util.Random;
import java.util.function.Function;

/**
 * Files taken apart and put together again by chance (with a fixed seed, so that a failure comes again): whatever comes
 * out, a reader answers with a value or with notices that can be shown, soon. Each reader is given {@code -Dfuzz.bytes=N}
 * bytes and goes on until {@code -Dfuzz.seconds=N} have passed; CI gives each a few seconds, the profile {@code nightly} millions of bytes.
 */
public final class Fuzz {
    private static final long BYTES = Long.getLong("fuzz.bytes", 150_000);
    private static final long NANOS = Long.getLong("fuzz.seconds", 0) * 1_000_000_000L;
    private static final long SEED = Long.getLong("fuzz.seed", 20261125L);
    private static final long SLOWEST_NANOS = 10_000_000_000L;

    private Fuzz() { }

    /** Damages {@code seeds} with one another's pieces and with {@code snippets} until the budget is used up. */
    public static void tried(String what, List<byte[]> seeds, List<String> snippets, Function<byte[], List<Notice>> reader) {
        var chance = new Random(SEED);
        long began = System.nanoTime();
        long bytes = 0;
        int refused = 0;
        int inputs = 0;
        while (bytes < BYTES || System.nanoTime() - began < NANOS) {
            byte[] input = mutated(seeds, snippets, chance);
            long start = System.nanoTime();
            try {
                var notices = reader.apply(input);
                notices.forEach(NoticeText::of);
                refused += notices.stream().anyMatch(n -> n.severity() == Severity.ERROR) ? 1 : 0;
            } catch (RuntimeException | StackOverflowError | OutOfMemoryError escaped) {
                throw new AssertionError("escaped on input " + inputs + ":\n" + new String(input, StandardCharsets.ISO_8859_1), escaped);
            }
            assertTrue(System.nanoTime() - start < SLOWEST_NANOS, () -> "slow: " + new String(input, StandardCharsets.ISO_8859_1));
            bytes += input.length;
            inputs++;
        }
        assertTrue(refused > inputs / 10, "the inputs are damaged enough to mean something: " + refused + " of " + inputs);
        System.out.println("fuzz " + what + ": " + inputs + " inputs, " + bytes + " bytes, " + refused + " refused");
    }

    /** The files of a folder whose name ends so, in order. */
    public static List<byte[]> seeds(Path folder, String ending) throws IOException {
        var seeds = new ArrayList<byte[]>();
        try (var files = Files.list(folder)) {
            for (Path file : files.filter(f -> f.toString().endsWith(ending)).sorted().toList()) {
                seeds.add(Files.readAllBytes(file));
            }
        }
        return seeds;
    }

    /** One to six changes: a piece cut, doubled, moved in from another file, a byte flipped, a snippet put in. */
    private static byte[] mutated(List<byte[]> seeds, List<String> snippets, Random chance) {
        byte[] input = seeds.get(chance.nextInt(seeds.size()));
        for (int i = chance.nextInt(6); i >= 0; i--) {
            int at = chance.nextInt(input.length + 1);
            int end = Math.min(input.length, at + chance.nextInt(40));
            byte[] piece = switch (chance.nextInt(5)) {
                case 0 -> new byte[0];
                case 1 -> Arrays.copyOfRange(input, at, end).length == 0 ? new byte[0] : twice(Arrays.copyOfRange(input, at, end));
                case 2 -> some(seeds.get(chance.nextInt(seeds.size())), chance);
                case 3 -> new byte[] {(byte) chance.nextInt(256)};
                default -> snippets.get(chance.nextInt(snippets.size())).getBytes(StandardCharsets.UTF_8);
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
}
