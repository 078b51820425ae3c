package contrapposto.mail;

import jakarta.mail.Session;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Properties;

/** The smallest SMTP server (RFC 5321), on this machine only, that answers a recipient as the test says, or hangs up in the middle of a message. */
final class Line implements AutoCloseable {
    static final String HANG_UP = "hang up";

    private final ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
    private volatile String answer;

    Line(String answer) throws IOException {
        this.answer = answer;
        Thread.ofVirtual().start(this::serve);
    }

    void answer(String next) {
        answer = next;
    }

    Session session() {
        var properties = new Properties();
        properties.setProperty("mail.smtp.host", "127.0.0.1");
        properties.setProperty("mail.smtp.port", Integer.toString(socket.getLocalPort()));
        properties.setProperty("mail.smtp.timeout", "5000");
        return Session.getInstance(properties);
    }

    private void serve() {
        try (Socket client = socket.accept(); var in = new BufferedReader(new InputStreamReader(client.getInputStream(), StandardCharsets.US_ASCII))) {
            say(client, "220 localhost");
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                switch (line.substring(0, Math.min(4, line.length())).toUpperCase(java.util.Locale.ROOT)) {
                    case "RCPT" -> say(client, answer.equals(HANG_UP) ? "250 ok" : answer);
                    case "DATA" -> {
                        say(client, "354 go on");
                        if (answer.equals(HANG_UP)) {
                            in.readLine();
                            return;
                        }
                        while (!".".equals(in.readLine())) {
                            continue;
                        }
                        say(client, "250 taken");
                    }
                    case "QUIT" -> say(client, "221 bye");
                    default -> say(client, "250 localhost");
                }
            }
        } catch (IOException closed) {
            throw new UncheckedIOException(closed);
        }
    }

    private static void say(Socket client, String words) throws IOException {
        client.getOutputStream().write((words + "\r\n").getBytes(StandardCharsets.US_ASCII));
        client.getOutputStream().flush();
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}
