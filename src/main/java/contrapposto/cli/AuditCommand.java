package contrapposto.cli;

import contrapposto.audit.Audit;
import contrapposto.audit.Finding;
import contrapposto.audit.Finding.Verdict;
import contrapposto.catalogue.Catalogue;
import contrapposto.check.CheckedSpec.Edition;
import contrapposto.compose.Composer;
import contrapposto.compose.Templates;
import contrapposto.document.Document;
import contrapposto.notice.Outcome;
import contrapposto.prescribe.Plan;
import contrapposto.press.Press;
import contrapposto.press.Wanted;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(name = "audit", mixinStandardHelpOptions = true, description = "Holds a client's handout against published lists of what such a page must have, "
        + "and measures how hard it reads.", footer = {"", "Example: contrapposto audit programs/newcomer-right.yaml"})
final class AuditCommand implements Callable<Integer> {
    private final Streams streams;

    @Parameters(paramLabel = "SPEC", description = "A spec file.")
    private Path spec = Path.of("");

    @Mixin
    private final House house = new House();

    AuditCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        var outcome = house.open(streams).then(this::audited);
        streams.notices(outcome.notices());
        return switch (outcome) {
            case Outcome.Refused<?> refused -> Console.NOTHING;
            case Outcome.Done<Audit>(var audit, var notices) -> {
                print(audit);
                yield Console.DONE;
            }
        };
    }

    private Outcome<Audit> audited(Catalogue catalogue) {
        var composer = new Composer(Templates.own());
        var press = new Press(catalogue, composer, Wanted.AS_THE_SPEC_SAYS);
        return Inputs.one(spec, streams, catalogue).spec().map(press::solve).then(plan -> {
            if (plan.withheld()) {
                throw new Console.Usage("screening withholds this program; there is no handout to audit");
            }
            return document(composer, plan, Edition.CLIENT).then(client -> document(composer, plan, Edition.COACH).map(coach -> new Audit(client, coach)));
        });
    }

    private static Outcome<Document> document(Composer composer, Plan plan, Edition edition) {
        var handout = plan.spec().handout();
        return composer.compose(plan, new Composer.Order(edition, handout.paper(), handout.print(), true));
    }

    private void print(Audit audit) {
        list("Reporting of exercise (Slade et al. 2016), coach edition", audit.reporting());
        list("Patient material, printed (PEMAT-P), client edition", audit.patientMaterial());
        list("Clear communication (CDC index), client edition", audit.clearCommunication());
        new WordingReport(audit.wording()).print(streams.out());
    }

    private void list(String title, List<Finding> findings) {
        long met = findings.stream().filter(f -> f.verdict() == Verdict.MET).count();
        long person = findings.stream().filter(f -> f.verdict() == Verdict.NEEDS_A_PERSON).count();
        streams.out().println(title + ": " + met + " met, " + (findings.size() - met - person) + " not met, " + person + " need a person");
        findings.forEach(f -> streams.out().println(String.format(Locale.ROOT, "  %-4s %-15s %s%s", f.item(),
                f.verdict().name().toLowerCase(Locale.ROOT).replace('_', ' '), f.words(), f.place().isEmpty() ? "" : " [" + f.place() + "]")));
    }
}
