package contrapposto.compose;

import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Span;
import freemarker.cache.ClassTemplateLoader;
import freemarker.cache.FileTemplateLoader;
import freemarker.cache.MultiTemplateLoader;
import freemarker.cache.TemplateLoader;
import freemarker.core.ParseException;
import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.SimpleObjectWrapper;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateNotFoundException;
import freemarker.template.Version;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TimeZone;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Runs templates. They see finished words only, can make no object, call no method of one and read no file but other
 * templates; they have a limit of time and of output, and what runs over it is stopped.
 */
public final class Templates {
    private static final Version VERSION = Configuration.VERSION_2_3_34;
    private static final Duration LIMIT = Duration.ofSeconds(20);

    /** After this many the thread of a template that cannot be stopped is not joined by another. */
    private static final int MOST_OVERRUNS = 3;

    private final Configuration configuration;
    private final Duration limit;
    private final Optional<Logo> logo;
    private final Map<String, Integer> overruns = new ConcurrentHashMap<>();

    private Templates(TemplateLoader loader, Optional<Logo> logo) {
        this(configuration(loader), LIMIT, logo);
    }

    private Templates(Configuration configuration, Duration limit, Optional<Logo> logo) {
        this.configuration = configuration;
        this.limit = limit;
        this.logo = logo;
    }

    /** The practice's logo, if its folder holds one. */
    Optional<Logo> logo() {
        return logo;
    }

    /** The same templates with another limit of time. */
    Templates within(Duration time) {
        return new Templates(configuration, time, logo);
    }

    private static Configuration configuration(TemplateLoader loader) {
        var configuration = new Interruptible(VERSION);
        configuration.setTemplateLoader(new MarkingLoader(loader));
        configuration.setDefaultEncoding("UTF-8");
        configuration.setLocale(Locale.ROOT);
        configuration.setTimeZone(TimeZone.getTimeZone("UTC"));
        configuration.setLocalizedLookup(false);
        configuration.setRecognizeStandardFileExtensions(true);
        configuration.setObjectWrapper(new SimpleObjectWrapper(VERSION));
        configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
        configuration.setAPIBuiltinEnabled(false);
        configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        configuration.setLogTemplateExceptions(false);
        configuration.setWrapUncheckedExceptions(true);
        configuration.setTemplateUpdateDelayMilliseconds(Long.MAX_VALUE);
        return configuration;
    }

    /** The templates that come with the program. */
    public static Templates own() {
        return new Templates(ownLoader(), Optional.empty());
    }

    /** A practice's templates and logo in {@code folder}; what it does not hold comes from {@link #own()}. @throws IOException if there is no such folder */
    public static Templates over(Path folder) throws IOException {
        return new Templates(new MultiTemplateLoader(new TemplateLoader[] {new FileTemplateLoader(folder.toFile()), ownLoader()}), Logo.in(folder));
    }

    private static TemplateLoader ownLoader() {
        return new ClassTemplateLoader(Templates.class.getClassLoader(), "contrapposto/templates");
    }

    /** What the template {@code name} writes for {@code model}, a map of {@link Values}; one that has often run over its time is not begun again. */
    Outcome<String> run(String name, Map<String, Object> model) {
        if (overruns.getOrDefault(name, 0) >= MOST_OVERRUNS) {
            return tooLong(name);
        }
        var task = new FutureTask<>(() -> process(name, model));
        var thread = new Thread(task, "template");
        thread.setDaemon(true);
        thread.start();
        try {
            return task.get(limit.toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
            task.cancel(true);
            overruns.merge(name, 1, Integer::sum);
            return tooLong(name);
        } catch (ExecutionException e) {
            return e.getCause() instanceof StackOverflowError
                    ? slip(whole(name), "a macro calls itself without an end", "give it a case in which it stops")
                    : slip(whole(name), "the template failed: " + firstLine(e.getCause().toString()), "compare it with the one that comes with the program");
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return slip(whole(name), "the run was interrupted", "run it again");
        }
    }

    private Outcome<String> tooLong(String name) {
        return slip(whole(name), "the template runs for more than " + limit.toMillis() + " ms", "look for a list or macro without an end");
    }

    private Outcome<String> process(String name, Map<String, Object> model) throws IOException {
        var out = new BoundedWriter();
        try {
            configuration.getTemplate(name).process(model, out);
            return Outcome.done(out.text());
        } catch (ParseException e) {
            return slip(place(e.getTemplateName(), e.getLineNumber(), e.getColumnNumber()), firstLine(e.getEditorMessage()),
                    "see the FreeMarker manual on the directive named");
        } catch (TemplateNotFoundException e) {
            return slip(whole(e.getTemplateName()), "there is no template `" + e.getTemplateName() + "`", "check the name and the language");
        } catch (Unbounded e) {
            return slip(whole(e.template()), e.what(), e.hint());
        } catch (TemplateException e) {
            if (e.getCause() instanceof Unbounded unbounded) {
                return slip(whole(unbounded.template()), unbounded.what(), unbounded.hint());
            }
            return slip(place(Optional.ofNullable(e.getTemplateSourceName()).orElse(name), orZero(e.getLineNumber()), orZero(e.getColumnNumber())),
                    firstLine(e.getMessageWithoutStackTop()), "the words a template may use are listed in templates/README.md");
        } catch (BoundedWriter.Full e) {
            return slip(whole(name), "the template writes more than " + BoundedWriter.LIMIT + " characters", "look for a list or macro without an end");
        }
    }

    private static int orZero(Integer number) {
        return number == null ? 0 : number;      // FreeMarker's word for "not known"
    }

    private static Outcome<String> slip(Span span, String message, String hint) {
        return new Outcome.Refused<>(List.of(Notice.error("template-slip", span, message, hint)));
    }

    private static Span whole(String name) {
        return Span.whole("templates/" + name);
    }

    private static Span place(String name, int line, int column) {
        return line < 1 ? whole(name) : new Span("templates/" + name, line, Math.max(1, column), 1, "");
    }

    private static String firstLine(String message) {
        String line = message.lines().map(String::strip).filter(l -> !l.isEmpty()).findFirst().orElse("unknown");
        return (Character.toLowerCase(line.charAt(0)) + line.substring(1)).replaceAll("[.:]$", "");
    }
}
