package contrapposto.select;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** A remembered answer is the answer; anything else about the question makes it another. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SearchesTest {
    @Test
    void the_same_question_is_searched_once_and_another_one_again() {
        var random = new Random(5);
        var frame = SearchTest.frame(random);
        var items = SearchTest.items(random, 9);
        var scale = Scale.of(frame.aims());
        var searches = new Searches();
        var first = searches.best(frame, scale, items);
        assertSame(first, searches.best(frame, scale, List.copyOf(items)));
        assertEquals(Search.best(frame, scale, items).chosen(), first.chosen());
        var fewer = items.subList(0, 8);
        assertNotSame(first, searches.best(frame, scale, fewer));
        assertEquals(Search.best(frame, scale, fewer).chosen(), searches.best(frame, scale, fewer).chosen());
        var longer = frame.roomFor(frame.perSession() + 1);
        assertEquals(Search.best(longer, scale, items).chosen(), searches.best(longer, scale, items).chosen());
    }

    @Test
    void a_hundred_questions_are_answered_as_the_search_answers_them() {
        var random = new Random(6);
        var searches = new Searches();
        for (int i = 0; i < 100; i++) {
            var frame = SearchTest.frame(random);
            var items = SearchTest.items(random, 6);
            var found = Search.best(frame, Scale.of(frame.aims()), items);
            assertEquals(found.chosen(), searches.best(frame, Scale.of(frame.aims()), items).chosen());
            assertEquals(found.score(), searches.best(frame, Scale.of(frame.aims()), items).score());
        }
    }
}
