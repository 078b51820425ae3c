package contrapposto.launch;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.Paths;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Starts the program on a Java that is new enough. Compiled for Java 11, so that an older default {@code java} can
 * still run it: it then starts again on a newer one from JAVA_HOME, PATH or the usual folders, or says plainly that
 * none was found.
 */
public final class Launch {
    /** The oldest Java the rest of the program runs on. */
    private static final int NEEDED = 21;
    private static final String MAIN = "contrapposto.cli.Main";

    private Launch() { }

    /** Runs the command line {@code args}; exits with its code, or with 2 when no Java of at least 21 is here. */
    public static void main(String[] args) throws Exception {
        if (Runtime.version().feature() >= NEEDED) {
            Class.forName(MAIN).getMethod("main", String[].class).invoke(null, (Object) args);
            return;
        }
        for (Path java : candidates()) {
            if (featureOf(java) >= NEEDED) {
                System.exit(startOn(java, args));
            }
        }
        System.err.println("contrapposto needs Java " + NEEDED + " or newer, but this is Java "
                + Runtime.version().feature() + " and no newer one was found.");
        System.err.println("Install one, for example the package openjdk-21-jre, or set JAVA_HOME to its folder.");
        System.exit(2);
    }

    private static int startOn(Path java, String[] args) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(java.toString(), "-cp", System.getProperty("java.class.path"), MAIN));
        command.addAll(Arrays.asList(args));
        return new ProcessBuilder(command).inheritIO().start().waitFor();
    }

    private static List<Path> candidates() {
        List<Path> found = new ArrayList<>();
        String home = System.getenv("JAVA_HOME");
        if (home != null && !home.isEmpty()) {
            found.add(Paths.get(home));
        }
        for (String folder : List.of("/usr/lib/jvm", "/Library/Java/JavaVirtualMachines", "/opt",
                System.getProperty("user.home") + "/.sdkman/candidates/java", "C:\\Program Files\\Java",
                "C:\\Program Files\\Eclipse Adoptium")) {
            found.addAll(foldersIn(Paths.get(folder)));
        }
        List<Path> javas = new ArrayList<>();
        for (Path folder : found) {
            for (String place : List.of("bin/java", "Contents/Home/bin/java", "bin/java.exe")) {
                if (Files.isExecutable(folder.resolve(place))) {
                    javas.add(folder.resolve(place));
                }
            }
        }
        return javas;
    }

    private static List<Path> foldersIn(Path folder) {
        List<Path> inside = new ArrayList<>();
        if (Files.isDirectory(folder)) {
            try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder)) {
                entries.forEach(inside::add);
            } catch (IOException unreadable) {
                return inside;
            }
        }
        inside.sort(java.util.Comparator.reverseOrder());
        return inside;
    }

    /** The feature number a Java's own {@code release} file gives, or 0. */
    private static int featureOf(Path java) {
        Path release = java.getParent().getParent().resolve("release");
        try {
            for (String line : Files.readAllLines(release)) {
                if (line.startsWith("JAVA_VERSION=")) {
                    return Integer.parseInt(line.replaceAll("[^0-9.]", "").split("\\.")[0]);
                }
            }
        } catch (IOException | NumberFormatException unknown) {
            return 0;
        }
        return 0;
    }
}
