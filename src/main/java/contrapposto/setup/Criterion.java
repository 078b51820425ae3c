package contrapposto.setup;

/**
 * What set-ups are compared by, the weightiest first: the first on which two differ decides (lexicographic).
 * The words finish the sentence "it lost on …".
 */
enum Criterion {
    SAFETY("safety"),
    PHASE("the stance phase"),
    WEIGHT("how much of the weight the working leg takes"),
    LOAD("the weight the family is best loaded with"),
    TURN("the turn"),
    LINE("the line of pull"),
    PRESSURE("foot pressure"),
    MUSCLES("the wanted muscles"),
    STEADINESS("steadiness"),
    THINGS("the number of things to fetch"),
    ORDER("the house order among equals");

    private final String words;

    Criterion(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }
}
