package contrapposto.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.apache.james.mime4j.message.DefaultMessageBuilder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The mail command, run in process. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "has other permissions")
class MailTest {
    private static final String MAIL = "mail: 1\nfrom: Practice <plans@example.org>\naddresses: {EX-1: one@example.org, ex-3: three@example.org}\n";

    @TempDir
    Path here;

    private Terminal terminal;

    @BeforeEach
    void write() throws IOException {
        terminal = new Terminal(here);
        Files.writeString(here.resolve("base.yaml"), """
                format: 1
                client: {name: Invented Example, height: 171 cm, mass: 64 kg}
                practice: {name: Invented Practice, contact: "+00 555 0100"}
                assessment: {date: 2026-03-02, pelvis: {turned: right, degree: marked}}
                choose: {include: [floor-bridge]}
                schedule: {start: 2026-03-09, weeks: 1, days: [mon], minutes: 15}
                """);
        Files.writeString(here.resolve("all.csv"), "spec,client.code,screening.chest-pain\nbase.yaml,EX-1,\nbase.yaml,EX-2,\nbase.yaml,EX-3,yes\n");
        Files.writeString(here.resolve("mail.yaml"), MAIL);
        Files.setPosixFilePermissions(here.resolve("mail.yaml"), PosixFilePermissions.fromString("rw-------"));
    }

    @Test
    void one_draft_a_client_whose_words_tell_nothing_about_health_and_the_others_are_named() throws IOException {
        assertEquals(Console.PARTLY, terminal.run("mail", "all.csv", "--draft", "drafts"));
        try (var drafts = Files.list(here.resolve("drafts"))) {
            assertEquals(List.of("EX-1-base-client.eml"), drafts.map(p -> p.getFileName().toString()).toList());
        }
        assertTrue(terminal.err().contains("mail-no-address") && terminal.err().contains("mail-withheld"), terminal.err());
        byte[] eml = Files.readAllBytes(here.resolve("drafts/EX-1-base-client.eml"));
        var read = new DefaultMessageBuilder().parseMessage(new ByteArrayInputStream(eml));
        assertEquals("Your handout from Invented Practice", read.getSubject());
        String words = new String(eml, StandardCharsets.US_ASCII).split("application/pdf")[0];
        assertTrue(words.contains("Hello Invented Example,") && words.contains("+00 555 0100"), words);
        for (String fact : List.of("pelvis", "right", "marked", "exercise", "pain")) {
            assertFalse(words.toLowerCase(java.util.Locale.ROOT).contains(fact), fact + " in: " + words);
        }
    }

    @Test
    void a_dry_run_says_what_would_go_to_whom_and_leaves_nothing() {
        terminal.run("mail", "all.csv", "--send", "--dry-run");
        assertTrue(terminal.err().contains("all.csv:2: would go to one@example.org: Your handout from Invented Practice"), terminal.err());
        assertFalse(Files.exists(here.resolve("mail-sent.log")));
    }

    @Test
    void a_mail_file_that_others_may_read_or_with_slips_is_refused() throws IOException {
        Files.setPosixFilePermissions(here.resolve("mail.yaml"), PosixFilePermissions.fromString("rw-r--r--"));
        assertEquals(Console.NOTHING, terminal.run("mail", "all.csv", "--send"));
        assertTrue(terminal.err().contains("hint: make it yours alone: chmod 600 mail.yaml"), terminal.err());
        Files.setPosixFilePermissions(here.resolve("mail.yaml"), PosixFilePermissions.fromString("rw-------"));
        Files.writeString(here.resolve("mail.yaml"), "mail: 1\nport: 99999\nsecurity: none\npasword: x\n");
        assertEquals(Console.NOTHING, terminal.run("mail", "all.csv", "--send"));
        assertEquals(5, terminal.err().lines().filter(l -> l.startsWith("error[mail-file]")).count(), terminal.err());
    }

    @Test
    void drafting_and_sending_exclude_each_other_and_one_is_needed() {
        assertEquals(Console.NOTHING, terminal.run("mail", "all.csv"));
        assertEquals(Console.NOTHING, terminal.run("mail", "all.csv", "--send", "--draft", "d"));
    }
}
