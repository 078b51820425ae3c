package contrapposto.audit;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** The items of the three lists by their numbers, in our own short words. */
final class Items {
    /** The consensus on reporting exercise: Slade et al. 2016, Br J Sports Med 50:1428 (reference F1). */
    static final Map<String, String> REPORTING = ordered(
            "1", "equipment type",
            "2", "provider's qualification and training",
            "3", "alone or in a group",
            "4", "supervised or not, how delivered",
            "5", "how adherence is measured",
            "6", "motivation strategies",
            "7a", "rule for deciding to progress",
            "7b", "how the programme progressed",
            "8", "each exercise described for replication (pictures)",
            "9", "home part",
            "10", "non-exercise parts",
            "11", "adverse events: type and number",
            "12", "setting",
            "13", "dose: sets, reps, duration, intensity",
            "14a", "generic or tailored",
            "14b", "how tailored",
            "15", "rule for starting level",
            "16a", "how fidelity is assessed",
            "16b", "how far delivered as planned");

    /** PEMAT-P for printed material: AHRQ 14-0002-EF (reference F3); 1 to 19 understandable, 20 to 26 can be acted on. */
    static final Map<String, String> PATIENT_MATERIAL = ordered(
            "1", "purpose completely evident",
            "2", "nothing that distracts from the purpose",
            "3", "everyday words",
            "4", "medical terms only to teach them, and defined",
            "5", "active voice",
            "6", "numbers clear, easy (NA if none)",
            "7", "no calculations expected",
            "8", "information chunked (NA if very short)",
            "9", "informative headers (NA if very short)",
            "10", "logical sequence",
            "11", "summary (NA if very short)",
            "12", "visual cues draw attention",
            "15", "visual aids wherever they help",
            "16", "visual aids reinforce, not distract (NA)",
            "17", "visual aids have clear titles or captions (NA)",
            "18", "pictures clear and uncluttered (NA)",
            "19", "tables simple, short headings (NA)",
            "20", "at least one action named",
            "21", "speaks to the user directly",
            "22", "actions broken into explicit steps",
            "23", "tangible tool (checklist, planner) where useful",
            "24", "simple instructions or examples for calculations (NA)",
            "25", "explains how to use charts, graphs, tables, diagrams to act (NA)",
            "26", "visual aids used where they make acting easier");

    /** The CDC Clear Communication Index (reference F4). */
    static final Map<String, String> CLEAR_COMMUNICATION = ordered(
            "1", "one main message statement",
            "2", "main message at top / beginning (if 1 = no, items 2-4 score 0)",
            "3", "main message emphasised with visual cues",
            "4", "a visual that conveys the main message (needs caption; people shown must do the behaviour)",
            "5", "one or more calls to action for the primary audience",
            "6", "main message and call to action in active voice",
            "7", "always words the audience uses",
            "8", "bulleted or numbered lists (over 7 items must be split)",
            "9", "chunks with headings",
            "10", "most important information summarised in first section",
            "11", "says what experts know and do not know",
            "12", "behavioural recommendation present",
            "13", "why it matters to the audience",
            "14", "specific directions how to do it",
            "15", "numbers the audience uses (whole numbers)",
            "16", "explains what the numbers mean",
            "17", "audience must NOT calculate (No scores 1)",
            "18", "explains the nature of the risk",
            "19", "both risks and benefits (NA allowed)",
            "20", "numeric probability also in words or visual (NA allowed)");

    private Items() { }

    private static Map<String, String> ordered(String... pairs) {
        var map = new LinkedHashMap<String, String>();
        for (int i = 0; i < pairs.length; i += 2) {
            map.put(pairs[i], pairs[i + 1]);
        }
        return Collections.unmodifiableMap(map);
    }
}
