package contrapposto.cli;

import contrapposto.check.CheckedSpec;
import contrapposto.deliver.Delivery;
import contrapposto.deliver.FileNames;
import contrapposto.deliver.Ledger;
import contrapposto.deliver.Manifest;
import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Severity;
import contrapposto.notice.Span;
import contrapposto.press.Press;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayDeque;
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
 * One run over many clients, several at once and never many in memory. What it reports comes in the order of the inputs,
 * and what goes wrong with one client costs no other theirs. A client whose files stand there from the same inputs is
 * left as it is, so that a run that was cut off goes on where it stopped.
 */
final class Run {
    private static final double SECOND = 1e9;
    /** Clients waiting for each worker: enough to keep it busy, few enough to stay small. */
    private static final int AHEAD = 4;
    /** Every ending that some outcome of a spec may leave. */
    private static final List<String> ALL_ENDINGS = List.of("client.pdf", "coach.pdf", "client.html", "coach.html");
    private static final List<String> REFERRAL_ENDINGS = List.of("referral.pdf", "referral.html");

    private final Job job;
    private final Path root;
    private final Delivery delivery;
    private final Path shown;
    private final Streams streams;
    private final Voice voice;
    private final Map<String, String> claimed = new LinkedHashMap<>();

    /** @param fingerprint of all that decides the bytes besides the spec; {@code again} to make everything anew */
    record Job(Press press, String fingerprint, boolean again, int atOnce) { }

    /** @param shown the folder written to, as the user named it */
    Run(Job job, Path root, Path shown, Streams streams, Voice voice) {
        this.job = job;
        this.root = root;
        this.delivery = new Delivery(root);
        this.shown = shown;
        this.streams = streams;
        this.voice = voice;
    }

    private record Ended(Manifest.Entry entry, boolean unchanged, List<Notice> notices) { }

    /** Works on all inputs, says what became of each, and leaves the manifest of the run. */
    Tally all(Inputs inputs) {
        var tally = new Tally();
        var opened = Ledger.open(root).then(ledger -> Manifest.begin(root).map(manifest -> new Books(ledger, manifest)));
        switch (opened) {
            case Outcome.Refused<Books>(var notices) -> streams.notices(notices);
            case Outcome.Done<Books>(var books, var none) -> {
                try (var ledger = books.ledger(); var manifest = books.manifest()) {
                    var pages = new PackPages(job.press(), delivery, inputs.packs());
                    work(inputs, books, tally, pages);
                    inputs.packs().forEach(packed -> index(packed, pages, books, tally));
                    switch (manifest.finish()) {
                        case Outcome.Refused<Path>(var notices) -> streams.notices(notices);
                        case Outcome.Done<Path> done -> tally.manifestWritten();
                    }
                }
                if (inputs.size() > 1 && !voice.quiet()) {
                    tally.summary().forEach(streams.err()::println);
                }
            }
        }
        return tally;
    }

    private record Books(Ledger ledger, Manifest manifest) { }

    private void work(Inputs inputs, Books books, Tally tally, PackPages pages) {
        ExecutorService workers = Executors.newFixedThreadPool(Math.min(job.atOnce(), Math.max(1, inputs.size())));
        var running = new ArrayDeque<Future<Ended>>();
        try (var progress = Progress.over(inputs.size(), streams, voice)) {
            for (var input : inputs) {
                if (running.size() >= job.atOnce() * AHEAD) {
                    pages.note(settle(running.remove(), books, tally, progress));
                }
                var spec = input.spec().then(checked -> unclaimed(checked, input.name()));
                running.add(workers.submit(() -> one(input.name(), spec, books.ledger())));
            }
            while (!running.isEmpty()) {
                pages.note(settle(running.remove(), books, tally, progress));
            }
        } finally {
            workers.shutdownNow();
        }
    }

    /** The index page of a pack counts as no spec of its own unless it fails. */
    private void index(Inputs.Packed packed, PackPages pages, Books books, Tally tally) {
        long start = System.nanoTime();
        pages.print(packed, books.ledger(), job.fingerprint()).map(outcome -> ended(packed.file().toString(), outcome, start)).ifPresent(ended -> {
            report(ended);
            if (ended.entry().result() == Manifest.Result.FAILED) {
                tally.count(ended.entry(), false);
            }
            books.manifest().add(ended.entry());
        });
    }

    private Manifest.Entry settle(Future<Ended> future, Books books, Tally tally, Progress progress) {
        Ended ended = ended(future);
        progress.step();
        report(ended);
        tally.count(ended.entry(), ended.unchanged());
        books.manifest().add(ended.entry());
        return ended.entry();
    }

    private static Ended ended(Future<Ended> future) {
        try {
            return future.get();
        } catch (InterruptedException | ExecutionException e) {
            throw new IllegalStateException("A worker died.", e);
        }
    }

    private static String claim(CheckedSpec spec) {
        return (FileNames.folder(spec) + "/" + FileNames.file(spec, "")).toLowerCase(Locale.ROOT);
    }

    /** File names belong to the first input that asks for them. */
    private Outcome<CheckedSpec> unclaimed(CheckedSpec spec, String name) {
        String first = claimed.putIfAbsent(claim(spec), name);
        return first == null ? Outcome.done(spec) : new Outcome.Refused<>(List.of(Notice.error("same-files", Span.whole(name),
                "`" + first + "` of this run writes the same files, `" + FileNames.folder(spec) + "/" + FileNames.file(spec, "") + "…`",
                "give one of the two specs another file name, or its client another `code`")));
    }

    private Ended one(String name, Outcome<CheckedSpec> spec, Ledger ledger) {
        long start = System.nanoTime();
        return ended(name, spec.then(checked -> made(name, checked, ledger)), start);
    }

    private Ended ended(String name, Outcome<Result> outcome, long start) {
        double seconds = (System.nanoTime() - start) / SECOND;
        return switch (outcome) {
            case Outcome.Done<Result>(var result, var notices) -> new Ended(new Manifest.Entry(name, result.made().result(), result.made().files(), List.of(), seconds),
                    result.unchanged(), notices);
            case Outcome.Refused<Result>(var found) -> {
                var notices = GlyphPlaces.located(found, name, streams::path);
                yield new Ended(new Manifest.Entry(name, Manifest.Result.FAILED, List.of(), problems(notices), seconds), false, notices);
            }
        };
    }

    /** @param unchanged whether the files stood there already, from the same inputs */
    record Result(Ledger.Made made, boolean unchanged) { }

    private static List<String> problems(List<Notice> notices) {
        return notices.stream().filter(n -> n.severity() == Severity.ERROR).map(n -> n.span().file() + (n.span().line() > 0
                ? ":" + n.span().line() + ":" + n.span().column() : "") + ": " + n.message()).toList();
    }

    private Outcome<Result> made(String name, CheckedSpec spec, Ledger ledger) {
        String key = Fingerprint.key(job.fingerprint(), spec.sha256(), claim(spec));
        var there = job.again() ? java.util.Optional.<Ledger.Made>empty() : ledger.unchanged(claim(spec), key);
        if (there.isPresent()) {
            return Outcome.done(new Result(there.get(), true));
        }
        try {
            return job.press().press(spec).then(this::delivered).map(made -> {
                ledger.add(claim(spec), key, made);
                return new Result(made, false);
            });
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError bug) {
            return new Outcome.Refused<>(List.of(fault(name, bug)));
        }
    }

    private Outcome<Ledger.Made> delivered(Press.Pressed pressed) {
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
            return new Ledger.Made(withheld ? Manifest.Result.WITHHELD : Manifest.Result.DONE, facts);
        });
    }

    private Notice fault(String name, Throwable bug) {
        var trace = new StringWriter();
        bug.printStackTrace(new PrintWriter(trace));
        String detail = voice.verbose() ? trace.toString().replace("\t", "  ") : bug.toString();
        return Notice.error("program-fault", Span.whole(name), "this is a fault of the program, not of your file: " + detail,
                "please report it with the spec; `--verbose` shows more");
    }

    private void report(Ended ended) {
        ended.notices().stream().filter(n -> !voice.quiet() || n.severity() == Severity.ERROR).forEach(n -> streams.notices(List.of(n)));
        if (voice.quiet()) {
            return;
        }
        var entry = ended.entry();
        String end = switch (entry.result()) {
            case DONE -> ended.unchanged() ? "unchanged, left as it is" : "done";
            case WITHHELD -> "withheld: screening asks for a clinician first";
            case FAILED -> "failed, nothing written";
        };
        streams.err().println(entry.spec() + ": " + end);
        if (!ended.unchanged()) {
            entry.files().forEach(file -> streams.err().println("  " + shown.resolve(file.path())
                    + (file.pages() > 0 ? " (" + file.pages() + (file.pages() == 1 ? " page)" : " pages)") : "")));
        }
        if (voice.verbose()) {
            streams.err().println(String.format(Locale.ROOT, "  %.1f s", entry.seconds()));
        }
    }
}
