package contrapposto.audit;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** The items of the three lists by their numbers, in our own short words. */
final class Items {
    /** The consensus on reporting exercise: Slade et al. 2016, Br J Sports Med 50:1428 (reference F1). */
    static final Map<String, String> REPORTING = ordered(
            "1", "what equipment",
            "2", "who gives it, and how qualified",
            "3", "alone or in a group",
            "4", "supervised or not, and by what means",
            "5", "how keeping to it is recorded",
            "6", "what is to keep people going",
            "7a", "the rule for going up",
            "7b", "how it went up, week by week",
            "8", "each exercise so that it can be done again: words and pictures",
            "9", "the part done at home",
            "10", "parts that are no exercise",
            "11", "harm: its kinds, where it is counted",
            "12", "the setting",
            "13", "the dose: sets, repeats, load, time",
            "14a", "for one person or for all",
            "14b", "how it was fitted to the person",
            "15", "the rule for where to begin",
            "16a", "how doing it as meant is judged",
            "16b", "how far it was done as planned");

    /** PEMAT-P for printed material: AHRQ 14-0002-EF (reference F3); 1 to 19 understandable, 20 to 26 can be acted on; 13 and 14 are about sound and screens. */
    static final Map<String, String> PATIENT_MATERIAL = ordered(
            "1", "what it is for can be seen at once",
            "2", "nothing that leads away from that",
            "3", "everyday words",
            "4", "words of medicine only where they are taught",
            "5", "the active voice",
            "6", "numbers that are clear and easy",
            "7", "nothing to work out",
            "8", "cut into short sections",
            "9", "headings that say what follows",
            "10", "an order that makes sense",
            "11", "a summary",
            "12", "boxes, bold type or signs for the key points",
            "15", "a picture wherever one helps",
            "16", "pictures that help rather than distract",
            "17", "every picture with a title or caption",
            "18", "pictures that are clear and uncluttered",
            "19", "simple tables with short heads",
            "20", "at least one thing to do",
            "21", "speaks to the reader",
            "22", "what to do, step by step",
            "23", "something to hold and fill in, as a log",
            "24", "an example for whatever is to be worked out",
            "25", "how charts and tables are to be used",
            "26", "a picture wherever it makes doing easier");

    /** The CDC Clear Communication Index (reference F4). */
    static final Map<String, String> CLEAR_COMMUNICATION = ordered(
            "1", "one main message",
            "2", "the main message at the top",
            "3", "the main message stands out to the eye",
            "4", "a picture with a caption that carries the message",
            "5", "something the reader is asked to do",
            "6", "message and request in the active voice",
            "7", "words the reader uses",
            "8", "lists, none of more than seven points",
            "9", "sections with headings",
            "10", "the most important first",
            "11", "what is known and what is not",
            "12", "what to do, recommended",
            "13", "why it matters to the reader",
            "14", "how to do it, exactly",
            "15", "numbers the reader uses",
            "16", "what the numbers mean",
            "17", "nothing to work out",
            "18", "what the danger is",
            "19", "good and harm side by side",
            "20", "chances in words or a picture beside the number");

    private Items() { }

    private static Map<String, String> ordered(String... pairs) {
        var map = new LinkedHashMap<String, String>();
        for (int i = 0; i < pairs.length; i += 2) {
            map.put(pairs[i], pairs[i + 1]);
        }
        return Collections.unmodifiableMap(map);
    }
}
