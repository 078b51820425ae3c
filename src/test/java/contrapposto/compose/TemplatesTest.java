package contrapposto.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.notice.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class TemplatesTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {
        "${\"freemarker.template.utility.Execute\"?new()(\"id\")}",
        "${\"freemarker.template.utility.ObjectConstructor\"?new()(\"java.io.File\", \"x\")}",
        "${name?api.getClass()}",
        "${name.class}",
        "<#include \"../../../../etc/passwd\">",
        "<#include \"/etc/passwd\">",
        "<#include \"file:///etc/passwd\">",
        "${missing}",
        "<#macro m><@m/></#macro><@m/>",
        "<#list 1..2000000000 as i>xxxxxxxxxxxxxxxxxxxx</#list>",
        "<#if>"})
    void a_template_that_reaches_out_or_does_not_end_is_refused(String text) throws IOException {
        var outcome = run(text);
        assertInstanceOf(Outcome.Refused.class, outcome);
        assertEquals(List.of("template-slip"), outcome.notices().stream().map(n -> n.id()).toList());
        assertTrue(outcome.notices().getFirst().span().file().startsWith("templates/"), outcome.notices().toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "<#list 1..2000000000 as a><#list 1..2000000000 as b></#list></#list>",
        "<#list 1..2000000000 as a>${(1..2000000000)?filter(i -> i < 0)?size}</#list>",
        "<#macro m><#list 1..2000000000 as a><#nested></#list></#macro><@m><@m></@m></@m>",
        "<#include 'inner.ftlx'>", "<#import 'inner.ftlx' as p>"})
    void what_runs_without_an_end_is_stopped_and_its_thread_with_it(String text) throws Exception {
        Files.writeString(folder.resolve("inner.ftlx"), "<#list 1..2000000000 as a><#list 1..2000000000 as b></#list></#list>");
        Files.writeString(folder.resolve("probe.ftlx"), text);
        var outcome = Templates.over(folder).within(Duration.ofMillis(300)).run("probe.ftlx", Map.of());
        assertEquals(List.of("the template runs for more than 300 ms"), outcome.notices().stream().map(n -> n.message()).toList());
        for (Thread thread : Thread.getAllStackTraces().keySet()) {
            if (thread.getName().equals("template")) {
                thread.join(5000);
                assertFalse(thread.isAlive(), () -> "still running: " + List.of(thread.getStackTrace()));
            }
        }
    }

    @Test
    void text_is_escaped() throws IOException {
        assertEquals(Outcome.done("a &lt;b&gt; &amp; &quot;c&quot;\n"), run("a ${name} & \"c\"".replace("& \"c\"", "&amp; &quot;c&quot;"), "<b>"));
    }

    @Test
    void a_number_may_not_reach_a_template() {
        assertThrows(IllegalArgumentException.class, () -> Values.of(Map.of("sets", 3)));
        assertThrows(IllegalArgumentException.class, () -> Values.of(List.of(1.5)));
    }

    private Outcome<String> run(String text) throws IOException {
        return run(text, "Ines");
    }

    private Outcome<String> run(String text, String name) throws IOException {
        Files.writeString(folder.resolve("probe.ftlx"), text);
        return Templates.over(folder).run("probe.ftlx", Map.of("name", name));
    }
}
