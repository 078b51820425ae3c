package contrapposto.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.util.TreeMap;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** Asks veraPDF, the reference validator of PDF/A and PDF/UA. */
public final class Proof {
    static {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private Proof() { }

    /** @param flavour {@code ua1}, {@code 2a}, {@code 3a} */
    public static void passes(String flavour, byte[] pdf) {
        var wanted = PDFAFlavour.fromString(flavour);
        var failures = new TreeMap<String, Integer>();
        try (var parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), wanted);
                var validator = Foundries.defaultInstance().createValidator(wanted, false)) {
            var result = validator.validate(parser);
            for (var assertion : result.getTestAssertions()) {
                if (assertion.getStatus() == TestAssertion.Status.FAILED) {
                    failures.merge(assertion.getRuleId().getClause() + "-" + assertion.getRuleId().getTestNumber()
                            + " " + assertion.getMessage() + " " + assertion.getErrorMessage() + " at "
                            + assertion.getLocation().getContext(), 1, Integer::sum);
                }
            }
            assertEquals("{} compliant", failures + (result.isCompliant() ? " compliant" : " not compliant"));
        } catch (Exception e) {
            throw new AssertionError(e);
        }
    }
}
