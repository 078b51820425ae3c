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
        "<#list 1..9 as i></#list>", "<#list 1.. as i></#list>", "${(1..2000000000)?map(i -> \"\")?join(\"\")}", "<#assign n = 5><#list 0..!n as i></#list>",
        "<#list [1]?first .. [9]?first as i></#list>", "<#list 1 <#-- a --> .. 9 as i></#list>", "${\"1.\" + \".9\"?eval}", "${\"1\"?<#-- x -->eval}",
        "<@\"x\"?interpret />", "${\"aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa!\"?matches(\"(a+)+$\")?c}"})
    void what_could_not_be_stopped_is_refused_before_it_runs(String text) throws IOException {
        var notice = run(text).notices().getFirst();
        assertTrue(notice.message().endsWith("may have no end") || notice.message().endsWith("cannot be used here"), notice.toString());
        Files.writeString(folder.resolve("inner.ftlx"), text);
        assertEquals("templates/inner.ftlx", run("<#include 'inner.ftlx'>").notices().getFirst().span().file());
    }

    @Test
    void a_range_may_cut_a_list_or_end_at_its_size_and_three_dots_are_words() throws IOException {
        assertEquals(Outcome.done("bc 1 wait... ../x\n"), run("<#assign s = [\"a\", \"b\", \"c\"]>${s[1..]?join(\"\")} <#list 1..<s?size as i><#if i == 1>${i}</#if></#list> wait... ../x"));
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "<#list s as a><#list s as b><#list s as c><#list s as d><#list s as e><#list s as f><#list s as g><#list s as h></#list></#list></#list></#list></#list></#list></#list></#list>",
        "<#list s?filter(a -> s?filter(b -> s?filter(c -> s?filter(d -> s?filter(e -> s?filter(f -> s?filter(g -> g?length < 0)?size < 0)?size < 0)?size < 0)?size < 0)?size < 0)?size < 0) as a></#list>",
        "<#macro m><#list s as a><#list s as b><#nested></#list></#list></#macro><@m><@m><@m><@m></@m></@m></@m></@m>",
        "<#include 'inner.ftlx'>", "<#import 'inner.ftlx' as p>"})
    void what_runs_without_an_end_is_stopped_and_its_thread_with_it(String text) throws Exception {
        String twenty = "<#assign s = \"abcdefghijklmnopqrst\"?replace(\"\", \" \")?trim?split(\" \")>";
        Files.writeString(folder.resolve("inner.ftlx"), twenty + "<#list s as a><#list s as b><#list s as c><#list s as d><#list s as e><#list s as f><#list s as g></#list></#list></#list></#list></#list></#list></#list>");
        Files.writeString(folder.resolve("probe.ftlx"), twenty + text);
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
    void one_that_often_runs_over_its_time_is_not_begun_again() throws IOException {
        Files.writeString(folder.resolve("probe.ftlx"), "<#macro m><#list 1..<s?size as a><#nested></#list></#macro><#assign s = \"" + "x ".repeat(1000) + "\"?split(\" \")>"
                + "<@m><@m><@m></@m></@m></@m>");
        var templates = Templates.over(folder).within(Duration.ofMillis(100));
        for (int i = 0; i < 3; i++) {
            templates.run("probe.ftlx", Map.of());
        }
        long start = System.nanoTime();
        assertEquals("the template runs for more than 100 ms", templates.run("probe.ftlx", Map.of()).notices().getFirst().message());
        assertTrue(System.nanoTime() - start < 50_000_000);
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
