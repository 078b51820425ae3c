package contrapposto.cli;

import contrapposto.assess.Assessor;
import contrapposto.catalogue.Catalogue;
import contrapposto.catalogue.Family;
import contrapposto.check.CheckedSpec;
import contrapposto.check.Checks;
import contrapposto.compose.Composer;
import contrapposto.notice.Notice;
import contrapposto.notice.Outcome;
import contrapposto.notice.Span;
import contrapposto.prescribe.Prescriber;
import contrapposto.select.Selector;
import contrapposto.setup.SetUpChooser;
import contrapposto.typeset.Typesetter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;

/** The straight line for one exercise: set up for a person, drawn on a card and typeset, without a choice among others. */
final class CardPress {
    private static final String NOBODY = "card-person.yaml";

    private final Catalogue catalogue;
    private final Composer composer;

    CardPress(Catalogue catalogue, Composer composer) {
        this.catalogue = catalogue;
        this.composer = composer;
    }

    /** The person a card is drawn for when nobody is named: invented, with a square pelvis, in a furnished room. */
    Outcome<CheckedSpec> anyone() {
        try (var in = CardPress.class.getResourceAsStream("/contrapposto/cli/" + NOBODY)) {
            return Checks.check(NOBODY, in.readAllBytes(), catalogue);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The card as PDF; refused where screening withholds, or where no set-up of the family serves this person. */
    Outcome<byte[]> press(CheckedSpec person, Family family) {
        var assessed = new Assessor().assess(person, catalogue.rules());
        if (assessed.verdict().withheld()) {
            return refused(person, "screening withholds exercises from `" + person.client().label() + "`", "build the spec for the referral page");
        }
        var setUps = new SetUpChooser().inParallel().choose(assessed, catalogue);       // all of them: what stands in is on the card
        if (!setUps.usable().containsKey(family.id())) {
            return refused(person, "`" + family.id() + "` cannot be set up for `" + person.client().label() + "`: "
                    + String.join("; ", setUps.leftOut().get(family.id()).stream().map(r -> r.because()).toList()),
                    "`contrapposto exercises` lists others");
        }
        var plan = new Prescriber().prescribe(Selector.alone(setUps, family.id()));
        var handout = person.handout();
        return composer.cards(plan, new Composer.Order(CheckedSpec.Edition.CLIENT, handout.paper(), handout.print(), false, Optional.empty())).then(new Typesetter()::set).map(pages -> pages.bytes());
    }

    private static <T> Outcome<T> refused(CheckedSpec person, String message, String hint) {
        return new Outcome.Refused<>(List.of(Notice.error("no-card", Span.whole(person.fileName()), message, hint)));
    }
}
