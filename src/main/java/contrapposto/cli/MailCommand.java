package contrapposto.cli;

import contrapposto.catalogue.Catalogue;
import contrapposto.check.CheckedSpec;
import contrapposto.check.CheckedSpec.Edition;
import contrapposto.compose.Composer;
import contrapposto.compose.Cover;
import contrapposto.compose.Templates;
import contrapposto.deliver.Delivery;
import contrapposto.deliver.FileNames;
import contrapposto.mail.MailFile;
import contrapposto.mail.Message;
import contrapposto.mail.Post;
import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Span;
import contrapposto.press.Press;
import contrapposto.press.Wanted;
import contrapposto.typeset.Typesetter;
import java.nio.file.Path;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "mail", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Makes one message a client, the client edition attached: as draft files, or sent over SMTP.",
        footer = {"", "Example: contrapposto mail clients.csv --draft drafts --config mail.yaml"})
final class MailCommand implements Callable<Integer> {
    private final Streams streams;

    @Parameters(paramLabel = "SPEC", arity = "1..*", description = "Spec files, folders of them, packs, or rosters (.csv).")
    private List<Path> specs = List.of();

    @ArgGroup(exclusive = true, multiplicity = "1")
    private final Way way = new Way();

    @Option(names = "--config", paramLabel = "FILE", defaultValue = "mail.yaml", description = "Who writes, which server, whose address (default: ${DEFAULT-VALUE}).")
    private Path config = Path.of("mail.yaml");

    @Option(names = "--log", paramLabel = "FILE", defaultValue = "mail-sent.log", description = "Where it is noted what was sent, so that nothing goes twice (default: ${DEFAULT-VALUE}).")
    private Path log = Path.of("mail-sent.log");

    @Option(names = "--dry-run", description = "With --send: say what would go to whom; connect to nothing, write nothing.")
    private boolean dryRun;

    @Mixin
    private final Secrecy secrecy = new Secrecy();

    @Mixin
    private final House house = new House();

    @Mixin
    private final Voice voice = new Voice();

    MailCommand(Streams streams) {
        this.streams = streams;
    }

    /** Drafts or sending, one of the two. */
    static final class Way {
        @Option(names = "--draft", paramLabel = "DIR", description = "Write one message (.eml) a client into this folder.")
        private Optional<Path> draft = Optional.empty();

        @Option(names = "--send", description = "Send over the server of the mail file.")
        private boolean send;
    }

    @Override
    public Integer call() {
        return streams.with(house.open(streams).then(catalogue -> MailFile.read(config, streams.path(config)).map(file -> new Desk(catalogue, file))), this::mail);
    }

    private record Desk(Catalogue catalogue, MailFile file) { }

    private int mail(Desk desk) {
        var inputs = Inputs.of(specs, streams, desk.catalogue());
        if (!inputs.anyThere()) {
            inputs.forEach(input -> streams.notices(input.spec().notices()));
            return Console.NOTHING;
        }
        if (way.draft.isPresent()) {
            var delivery = new Delivery(streams.path(way.draft.get()));
            return each(inputs, desk, addressed -> delivery.deliver(new Delivery.Parcel(Delivery.ROOT, Map.of(addressed.fileName(), addressed.draft()), List.of()))
                    .map(paths -> "drafted " + way.draft.get().resolve(addressed.fileName())));
        }
        if (dryRun) {
            return each(inputs, desk, addressed -> Outcome.done("would go to " + addressed.message().to() + ": " + addressed.message().subject()));
        }
        return switch (Post.open(desk.file(), streams.path(log), InstantSource.system())) {
            case Outcome.Refused<Post>(var notices) -> {
                streams.notices(notices);
                yield Console.PARTLY;
            }
            case Outcome.Done<Post>(var post, var none) -> {
                try (post) {
                    yield each(inputs, desk, addressed -> post.send(addressed.message()).map(result -> switch (result) {
                        case SENT -> "sent to " + addressed.message().to();
                        case SENT_BEFORE -> "left out, for this edition has gone to " + addressed.message().to() + " before";
                    }));
                }
            }
        };
    }

    /** A message and, for drafts, its bytes. */
    private record Addressed(Message message, String fileName, byte[] draft) { }

    private int each(Inputs inputs, Desk desk, Function<Addressed, Outcome<String>> post) {
        var press = new Press(desk.catalogue(), new Composer(Templates.own()), new Wanted(List.of(Edition.CLIENT), Optional.empty(), Optional.empty(), false, Optional.empty(), secrecy.attach()));
        var password = secrecy.password(streams);
        int code = Console.DONE;
        for (var input : inputs) {
            var outcome = input.spec().then(spec -> addressed(spec, desk, press, password)).then(post);
            streams.notices(outcome.notices());
            switch (outcome) {
                case Outcome.Refused<String> refused -> code = Console.PARTLY;
                case Outcome.Done<String>(var said, var none) -> {
                    if (!voice.quiet()) {
                        streams.err().println(input.name() + ": " + said);
                    }
                }
            }
        }
        return code;
    }

    private static Outcome<Addressed> addressed(CheckedSpec spec, Desk desk, Press press, Optional<String> password) {
        String client = FileNames.folder(spec);
        var address = Optional.ofNullable(desk.file().addresses().get(client.toLowerCase(Locale.ROOT)));
        if (address.isEmpty()) {
            return refused(client, "mail-no-address", "the mail file has no address of `" + client + "`", "add `" + client + ": name@example.org` to its `addresses`");
        }
        return press.press(spec).then(pressed -> {
            if (pressed.plan().withheld()) {
                return refused(client, "mail-withheld", "the program is withheld, and a referral is not sent by mail", "hand the referral page over in person");
            }
            var file = pressed.files().getFirst();
            return Cover.of(Templates.own(), pressed.plan(), password.isPresent()).then(cover -> {
                var message = new Message(client, desk.file().from(), address.get(), cover.subject(), cover.lines(), FileNames.file(spec, file.ending()),
                        password.map(word -> Typesetter.locked(file.bytes(), word)).orElse(file.bytes()), file.bytes());
                var day = spec.assessment().date().atStartOfDay(ZoneOffset.UTC).toInstant();
                return message.draft(day).map(draft -> new Addressed(message, client + "-" + FileNames.file(spec, "client.eml"), draft));
            });
        });
    }

    private static <T> Outcome<T> refused(String client, String id, String message, String hint) {
        return new Outcome.Refused<>(List.of(Notice.error(id, Span.whole(client), message, hint)));
    }
}
