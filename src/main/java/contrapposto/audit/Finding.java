package contrapposto.audit;

/**
 * One item of a list, judged.
 *
 * @param item  its number in the list
 * @param words in our own short words
 * @param place on the page that meets it, or where a person has to look; empty where it is not met
 */
public record Finding(String item, String words, Verdict verdict, String place) {
    /** What a machine can say. */
    public enum Verdict { MET, NOT_MET, NEEDS_A_PERSON }
}
