package contrapposto.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.quantity.Side;
import contrapposto.wording.Phrasebook;
import contrapposto.wording.Teller;
import java.util.Locale;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class BreachWordsTest {
    @ParameterizedTest
    @EnumSource(Breaches.Kind.class)
    void each_breach_has_its_sentence(Breaches.Kind kind) {
        assertTrue(Phrasebook.of("en").keys().contains("pose/" + kind.name().toLowerCase(Locale.ROOT).replace('_', '-')));
    }

    @Test
    void a_breach_says_side_value_and_limit_and_mirrors() {
        var breaches = new Breaches(1.7);
        breaches.atMost(Breaches.Kind.ANKLE, Side.LEFT, 34, 29);
        assertEquals("the left ankle would need 34° of forward bend, 29° is allowed", Teller.PLAIN.plain(breaches.worst().constraint()));
        assertEquals("the right ankle would need 34° of forward bend, 29° is allowed",
                Teller.PLAIN.plain(((PoseOutcome.Impossible) breaches.worst().mirrored()).constraint()));
    }
}
