package contrapposto.cli;

import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** A thin shell: hands streams and the working folder in, and exits with what comes out. */
public final class Main {
    private Main() { }

    public static void main(String[] args) {
        System.setProperty("jdk.console", "java.base");      // the console that is absent when no person is there
        var out = stream(FileDescriptor.out);
        var err = stream(FileDescriptor.err);
        var in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        int code = new Console(new Streams(in, out, err, Path.of(""), System.console() != null)).run(args);
        out.flush();
        err.flush();
        System.exit(code);
    }

    private static PrintStream stream(FileDescriptor descriptor) {
        return new PrintStream(new FileOutputStream(descriptor), true, StandardCharsets.UTF_8);
    }
}
