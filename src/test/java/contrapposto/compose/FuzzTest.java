package contrapposto.compose;

import contrapposto.Fuzz;
import contrapposto.check.CheckedSpec.Edition;
import contrapposto.check.CheckedSpec.Paper;
import contrapposto.check.CheckedSpec.Print;
import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Damaged templates, laid over ours and run for a plan made by hand; how they are damaged: {@link Fuzz}. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FuzzTest {
    private static final Map<String, Edition> FILES = new LinkedHashMap<>();
    private static final List<String> SNIPPETS = List.of("<#list plan as p>", "</#list>", "<#if", "</#if>", "${", "}", "<#macro x>", "<@x/>", "</#macro>", "<#include \"/etc/passwd\">", "<#import \"client.ftlx\" as c>",
            "?new()", "?api", "?eval", "?size", "?map(a -> a)", "1..", "<part name=\"x\">", "</part>", "<table title=\"\">", "<row>", "<words>", "width=\"-1\"", "width=\"1e9\"", "width=\"NaN\"", "&", "<", "]]>", "<!DOCTYPE x>",
            "<page-break/>", "drawing=\"none\"", "field=\"a.b\"", "\u0000", "\u202E", "\uD83D\uDE00", "<#recurse>", "<#nested>", "<#return 1>", "<#stop>", "<#setting locale=\"tr\">", "${.now}", "${.data_model}");

    static {
        for (String name : List.of("client", "body", "opening", "safety", "cards", "weeks", "log", "rules", "phrases")) {
            FILES.put(name, Edition.CLIENT);
        }
        for (String name : List.of("coach", "findings", "reasons", "sources")) {
            FILES.put(name, Edition.COACH);
        }
        FILES.put("pocket", Edition.POCKET);
    }

    @TempDir
    Path folder;

    @Test
    void templates() throws IOException {
        var seeds = new ArrayList<byte[]>();
        for (String name : FILES.keySet()) {
            seeds.add(("<#--" + name + "-->" + Files.readString(Path.of("templates/en", name + ".ftlx"))).getBytes(StandardCharsets.UTF_8));
        }
        Files.createDirectories(folder.resolve("en"));
        var plan = Plans.turnedRight();
        var drawn = ((Outcome.Done<Composer.Illustrated>) new Composer(Templates.own()).illustrate(plan, Optional.empty())).value();
        Fuzz.tried("templates", seeds, SNIPPETS, bytes -> {
            String name = name(bytes);
            return notices(name, bytes, new Composer.Order(FILES.get(name), Paper.A4, Print.PLAIN, true), plan, drawn);
        });
    }

    /** Which file it was before it was damaged, as its first comment says. */
    private static String name(byte[] bytes) {
        String start = new String(bytes, 0, Math.min(bytes.length, 30), StandardCharsets.UTF_8);
        return FILES.keySet().stream().filter(name -> start.startsWith("<#--" + name + "-->")).findFirst().orElse("client");
    }

    private List<Notice> notices(String name, byte[] bytes, Composer.Order order, contrapposto.prescribe.Plan plan, Composer.Illustrated drawn) {
        Path file = folder.resolve("en").resolve(name + ".ftlx");
        try {
            Files.write(file, bytes);
            var notices = new Composer(Templates.over(folder).within(Duration.ofSeconds(5))).compose(plan, order, drawn).notices();
            Files.delete(file);
            return notices;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
