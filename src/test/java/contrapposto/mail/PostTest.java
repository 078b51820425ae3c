package contrapposto.mail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import contrapposto.notice.Outcome;
import java.io.IOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Sending to a real SMTP server over TLS, and all that can go wrong on the way. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PostTest {
    private static final InstantSource CLOCK = InstantSource.fixed(Instant.parse("2026-03-02T08:00:00Z"));

    @TempDir
    static Path keys;

    private static GreenMail server;
    private static GreenMail open;

    @TempDir
    Path here;

    /** A server with a certificate of its own for {@code localhost}, made by the JDK's own tool. */
    @BeforeAll
    static void start() throws IOException, InterruptedException {
        Thread.setDefaultUncaughtExceptionHandler((thread, failure) -> { });      // the server's own words about a client that hangs up
        server = MailServer.overTls(keys);
        open = new GreenMail(new ServerSetup(0, "localhost", "smtp"));
        open.start();
    }

    @AfterAll
    static void stop() {
        server.stop();
        open.stop();
        Thread.setDefaultUncaughtExceptionHandler(null);
    }

    @BeforeEach
    void empty() throws Exception {
        server.purgeEmailFromAllMailboxes();
        open.purgeEmailFromAllMailboxes();
    }

    @Test
    void a_message_arrives_once_however_often_it_is_sent() throws Exception {
        for (var expected : List.of(Post.Result.SENT, Post.Result.SENT_BEFORE)) {
            try (var post = post(file(server, MailFile.Security.TLS))) {
                assertEquals(Outcome.done(expected), post.send(MessageTest.message("zoe@example.org")));
            }
        }
        assertEquals(1, server.getReceivedMessages().length);
        assertEquals("Ihr Blatt von Hafenstraße", server.getReceivedMessages()[0].getSubject());
        assertFalse(Files.readString(here.resolve("sent.log")).contains("zoe@"), "the log holds no address");
    }

    @Test
    void another_edition_or_another_address_is_another_message() {
        try (var post = post(file(server, MailFile.Security.TLS))) {
            post.send(MessageTest.message("zoe@example.org"));
            post.send(MessageTest.message("ada@example.org"));
        }
        assertEquals(2, server.getReceivedMessages().length);
    }

    @Test
    void a_server_that_nobody_vouches_for_gets_nothing() {
        var trusting = file(server, MailFile.Security.TLS);
        var refused = Post.open(new MailFile(trusting.from(), Map.of(), "localhost", trusting.port(), MailFile.Security.TLS, trusting.login(), Optional.empty(), 600), here.resolve("sent.log"), CLOCK);
        assertNotice(refused, "mail-server", "cannot be made safe", "certificate: FILE.pem");
        var elsewhere = Post.open(new MailFile(trusting.from(), Map.of(), "127.0.0.1", trusting.port(), MailFile.Security.TLS, trusting.login(), trusting.certificate(), 600), here.resolve("sent.log"), CLOCK);
        assertNotice(elsewhere, "mail-server", "cannot be made safe", "`host`");
        assertEquals(0, server.getReceivedMessages().length);
    }

    @Test
    void a_server_without_starttls_gets_neither_password_nor_message() {
        assertNotice(Post.open(file(open, MailFile.Security.STARTTLS), here.resolve("sent.log"), CLOCK), "mail-server", "STARTTLS", "`security`");
        assertEquals(0, open.getReceivedMessages().length);
    }

    @Test
    void a_wrong_password_is_told_without_showing_it() {
        var good = file(server, MailFile.Security.TLS);
        var outcome = Post.open(new MailFile(good.from(), Map.of(), good.host(), good.port(), good.security(), Optional.of(new MailFile.Login("plans", "wrong one")),
                good.certificate(), 600), here.resolve("sent.log"), CLOCK);
        assertNotice(outcome, "mail-server", "does not accept", "`password`");
        assertFalse(outcome.toString().contains("wrong one"));
    }

    @Test
    void a_refused_recipient_costs_the_next_nothing_and_may_be_tried_again() throws Exception {
        try (var line = new Line("550 no such box"); var post = post(line)) {
            assertNotice(post.send(MessageTest.message("gone@example.org")), "mail-refused", "no such box", "address");
            line.answer("250 ok");
            assertEquals(Outcome.done(Post.Result.SENT), post.send(MessageTest.message("zoe@example.org")));
            assertEquals(Outcome.done(Post.Result.SENT), post.send(MessageTest.message("gone@example.org")));
        }
    }

    @Test
    void a_message_whose_connection_broke_is_not_sent_again_by_itself() throws Exception {
        try (var line = new Line(Line.HANG_UP); var post = post(line)) {
            assertNotice(post.send(MessageTest.message("zoe@example.org")), "mail-unsure", "broke", "ask the client");
        }
        try (var post = post(file(server, MailFile.Security.TLS))) {
            assertNotice(post.send(MessageTest.message("zoe@example.org")), "mail-unsure", "cut off", "`sending`");
        }
        assertEquals(0, server.getReceivedMessages().length);
    }

    @Test
    void nobody_at_the_other_end_is_one_notice() throws IOException {
        int port;
        try (var socket = new ServerSocket(0)) {
            port = socket.getLocalPort();
        }
        assertNotice(Post.open(new MailFile("a@example.org", Map.of(), "localhost", port, MailFile.Security.STARTTLS, Optional.empty(), Optional.empty(), 600),
                here.resolve("sent.log"), CLOCK), "mail-server", "does not answer", "not sent twice");
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void without_a_log_nothing_is_sent() {
        assertNotice(Post.open(file(server, MailFile.Security.TLS), Path.of("/proc/sent.log"), CLOCK), "send-log", "cannot be written", "--log");
        // a device that takes no byte stands for a disk that is full
        var outcome = Post.open(file(server, MailFile.Security.TLS), Path.of("/dev/full"), CLOCK);
        if (outcome instanceof Outcome.Done<Post>(var post, var none)) {
            try (post) {
                assertNotice(post.send(MessageTest.message("zoe@example.org")), "send-log", "nothing was sent", "make room");
            }
        }
        assertEquals(0, server.getReceivedMessages().length);
    }

    @Test
    void the_rate_is_kept() {
        var fast = file(server, MailFile.Security.TLS);
        var slow = new MailFile(fast.from(), Map.of(), fast.host(), fast.port(), fast.security(), fast.login(), fast.certificate(), 300);
        long start = System.nanoTime();
        try (var post = post(slow)) {
            for (String name : List.of("a", "b", "c")) {
                post.send(MessageTest.message(name + "@example.org"));
            }
        }
        assertTrue(System.nanoTime() - start >= 400_000_000L, "three messages at 300 a minute take two fifths of a second");
    }

    private Post post(MailFile file) {
        return switch (Post.open(file, here.resolve("sent.log"), CLOCK)) {
            case Outcome.Done<Post>(var post, var none) -> post;
            case Outcome.Refused<Post>(var notices) -> throw new AssertionError(notices.toString());
        };
    }

    /** Past the part that every server does alike, to a line of our own that does what it is told. */
    private Post post(Line line) throws Exception {
        return Post.over(line.session(), here.resolve("sent.log"), CLOCK);
    }

    private static MailFile file(GreenMail to, MailFile.Security security) {
        int port = security == MailFile.Security.TLS ? to.getSmtps().getPort() : to.getSmtp().getPort();
        return new MailFile("Hafenstraße <plans@example.org>", Map.of(), "localhost", port, security, Optional.of(new MailFile.Login(MailServer.USER, MailServer.PASSWORD)),
                Optional.of(keys.resolve(MailServer.CERTIFICATE)), 600);
    }

    private static void assertNotice(Outcome<?> outcome, String id, String message, String hint) {
        var notice = assertInstanceOf(Outcome.Refused.class, outcome).notices().getFirst();
        assertTrue(notice.toString().contains("id=" + id) && notice.toString().contains(message) && notice.toString().contains(hint), notice.toString());
    }
}
