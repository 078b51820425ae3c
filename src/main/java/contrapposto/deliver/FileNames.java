package contrapposto.deliver;

import contrapposto.check.CheckedSpec;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.zip.CRC32;

/**
 * Names of folders and files, made from what a stranger wrote: letters, digits, {@code . - _} only, no leading dot, no
 * device name, at most 60 characters. Nothing in them can leave the folder they are put in.
 */
public final class FileNames {
    private static final int LONGEST = 60;
    private static final Pattern STRANGE = Pattern.compile("[^A-Za-z0-9._-]+");
    private static final Set<String> DEVICES = Set.of("con", "prn", "aux", "nul", "com1", "com2", "com3", "com4", "com5", "com6", "com7",
            "com8", "com9", "lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9");

    private FileNames() { }

    /** The folder of a client: the code as it is, else the name in lower case with hyphens. */
    public static String folder(CheckedSpec spec) {
        var client = spec.client();
        return client.code().isEmpty() ? safe(client.name().toLowerCase(Locale.ROOT).replace('.', ' ').replace('_', ' ')) : safe(client.code());
    }

    /** {@code <spec>-client.pdf}, {@code <spec>-plan.yaml} … */
    public static String file(CheckedSpec spec, String ending) {
        return safe(spec.fileName()) + "-" + ending;
    }

    /** {@code <pack>-index.pdf}: the page that lists a pack. @param pack the name of its file, without ending */
    public static String index(String pack, String ending) {
        return safe(pack) + "-" + ending;
    }

    /** {@code text} as a name; one that keeps nothing of it is told apart by a checksum. */
    static String safe(String text) {
        String latin = Normalizer.normalize(text, Normalizer.Form.NFKD).replaceAll("\\p{M}+", "");
        String name = STRANGE.matcher(latin).replaceAll("-").replaceAll("-{2,}", "-").replaceAll("^[.-]+|[.-]+$", "");
        String cut = name.length() > LONGEST ? name.substring(0, LONGEST) : name;
        if (cut.isEmpty()) {
            return "client-" + checksum(text);
        }
        return DEVICES.contains(cut.toLowerCase(Locale.ROOT).replaceAll("\\..*$", "")) ? "_" + cut : cut;
    }

    private static String checksum(String text) {
        var crc = new CRC32();
        crc.update(text.getBytes(StandardCharsets.UTF_8));
        return Long.toHexString(crc.getValue());
    }
}
