package contrapposto.cli;

import contrapposto.check.CheckedSpec;
import contrapposto.deliver.Delivery;
import contrapposto.deliver.FileNames;
import contrapposto.deliver.Manifest;
import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Span;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * One run over many clients, several at once. What it reports comes in the order of the inputs, and what goes wrong with
 * one client costs no other theirs.
 */
final class Run {
    private static final double SECOND = 1e9;
    /** Every ending that some outcome of a spec may leave. */
    private static final List<String> ALL_ENDINGS = List.of("client.pdf", "coach.pdf", "client.html", "coach.html");
    private static final List<String> REFERRAL_ENDINGS = List.of("referral.pdf", "referral.html");

    private final Press press;
    private final Delivery delivery;
    private final Path shown;
    private final Streams streams;
    private final Voice voice;

    /** @param shown the folder written to, as the user named it */
    Run(Press press, Path root, Path shown, Streams streams, Voice voice) {
        this.press = press;
        this.delivery = new Delivery(root);
        this.shown = shown;
        this.streams = streams;
        this.voice = voice;
    }

    private record Ended(Manifest.Entry entry, List<Notice> notices) { }

    /** Works on all inputs, says what became of each and returns the manifest of the run. */
    Manifest all(List<Inputs.Input> inputs, int atOnce) {
        var claimed = claims(inputs);
        var entries = new ArrayList<Manifest.Entry>();
        ExecutorService workers = Executors.newFixedThreadPool(Math.min(atOnce, Math.max(1, inputs.size())));
        try (var progress = Progress.over(inputs.size(), streams, voice)) {
            var running = new ArrayList<Future<Ended>>();
            for (var input : inputs) {
                running.add(workers.submit(() -> one(input, claimed)));
            }
            for (var future : running) {
                Ended ended = ended(future);
                progress.step();
                report(ended);
                entries.add(ended.entry());
            }
        } finally {
            workers.shutdownNow();
        }
        return new Manifest(entries);
    }

    private static Ended ended(Future<Ended> future) {
        try {
            return future.get();
        } catch (InterruptedException | ExecutionException e) {
            throw new IllegalStateException("A worker died.", e);
        }
    }

    /** Which input may write which file names: the first that asks for them. */
    private static Map<String, Inputs.Input> claims(List<Inputs.Input> inputs) {
        var claimed = new LinkedHashMap<String, Inputs.Input>();
        for (var input : inputs) {
            if (input.spec() instanceof Outcome.Done<CheckedSpec>(var spec, var notices)) {
                claimed.putIfAbsent(claim(spec), input);
            }
        }
        return claimed;
    }

    private static String claim(CheckedSpec spec) {
        return (FileNames.folder(spec) + "/" + FileNames.file(spec, "")).toLowerCase(Locale.ROOT);
    }

    private Ended one(Inputs.Input input, Map<String, Inputs.Input> claimed) {
        long start = System.nanoTime();
        Outcome<Manifest.Entry> outcome;
        try {
            outcome = input.spec().then(spec -> unclaimed(spec, input, claimed)).then(press::press).then(pressed -> delivered(input, pressed));
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError bug) {
            outcome = new Outcome.Refused<>(List.of(fault(input, bug)));
        }
        double seconds = (System.nanoTime() - start) / SECOND;
        return switch (outcome) {
            case Outcome.Done<Manifest.Entry>(var entry, var notices) ->
                    new Ended(new Manifest.Entry(entry.spec(), entry.result(), entry.files(), seconds), notices);
            case Outcome.Refused<Manifest.Entry>(var notices) ->
                    new Ended(new Manifest.Entry(input.name(), Manifest.Result.FAILED, List.of(), seconds), notices);
        };
    }

    private static Outcome<CheckedSpec> unclaimed(CheckedSpec spec, Inputs.Input input, Map<String, Inputs.Input> claimed) {
        var first = claimed.get(claim(spec));
        return first == input ? Outcome.done(spec) : new Outcome.Refused<>(List.of(Notice.error("same-files", Span.whole(input.name()),
                "`" + first.name() + "` of this run writes the same files, `" + FileNames.folder(spec) + "/" + FileNames.file(spec, "") + "…`",
                "give one of the two specs another file name, or its client another `code`")));
    }

    private Outcome<Manifest.Entry> delivered(Inputs.Input input, Press.Pressed pressed) {
        CheckedSpec spec = pressed.plan().spec();
        var files = new LinkedHashMap<String, byte[]>();
        pressed.files().forEach(file -> files.put(FileNames.file(spec, file.ending()), file.bytes()));
        boolean withheld = pressed.plan().withheld();
        var stale = (withheld ? ALL_ENDINGS : REFERRAL_ENDINGS).stream().map(ending -> FileNames.file(spec, ending)).toList();
        return delivery.deliver(new Delivery.Parcel(FileNames.folder(spec), files, stale)).map(paths -> {
            var facts = new ArrayList<Manifest.FileFact>();
            for (int i = 0; i < paths.size(); i++) {
                var file = pressed.files().get(i);
                facts.add(Manifest.FileFact.of(paths.get(i), file.bytes(), file.pages()));
            }
            return new Manifest.Entry(input.name(), withheld ? Manifest.Result.WITHHELD : Manifest.Result.DONE, facts, 0);
        });
    }

    private Notice fault(Inputs.Input input, Throwable bug) {
        var trace = new StringWriter();
        bug.printStackTrace(new PrintWriter(trace));
        String detail = voice.verbose() ? trace.toString().replace("\t", "  ") : bug.toString();
        return Notice.error("program-fault", Span.whole(input.name()), "this is a fault of the program, not of your file: " + detail,
                "please report it with the spec; `--verbose` shows more");
    }

    private void report(Ended ended) {
        ended.notices().stream().filter(n -> !voice.quiet() || n.severity() == contrapposto.notice.Severity.ERROR)
                .forEach(n -> streams.notices(List.of(n)));
        if (voice.quiet()) {
            return;
        }
        var entry = ended.entry();
        String end = switch (entry.result()) {
            case DONE -> "done";
            case WITHHELD -> "withheld: screening asks for a clinician first";
            case FAILED -> "failed, nothing written";
        };
        streams.err().println(entry.spec() + ": " + end);
        entry.files().forEach(file -> streams.err().println("  " + shown.resolve(file.path())
                + (file.pages() > 0 ? " (" + file.pages() + (file.pages() == 1 ? " page)" : " pages)") : "")));
        if (voice.verbose()) {
            streams.err().println(String.format(Locale.ROOT, "  %.1f s", entry.seconds()));
        }
    }
}
