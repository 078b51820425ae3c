package contrapposto.check;

import static contrapposto.spec.Key.optional;
import static contrapposto.spec.Key.required;

import contrapposto.catalogue.RestrictionTag;
import contrapposto.catalogue.Stage;
import contrapposto.spec.Dimension;
import contrapposto.spec.Key;
import contrapposto.spec.Value;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The table of keys of a program spec: the one place that says which keys there are, what they accept, in which units
 * and limits, and what holds without them. The reader, its suggestions and the JSON Schema all come from here.
 * Limits without another word are common practice, no source: wide enough for anyone, tight enough to catch a slip.
 */
public final class ProgramKeys {
    static final int NAME = 120;
    static final int NOTE = 1000;
    static final double LEAST_AGE = 12;
    static final double MOST_AGE = 110;
    static final List<String> DAYS = List.of("mon", "tue", "wed", "thu", "fri", "sat", "sun");
    static final String DEFAULT_TITLE = "Exercise program";
    private static final String CHECK_UNIT = "check the number and its unit";

    private static final Value NAMED = new Value.Text(NAME, false);
    private static final Value NOTED = new Value.Text(NOTE, true);
    private static final Value SIDE = words("left", "right");
    private static final Value SIDES = words("left", "right", "both");
    private static final Value FAMILY = new Value.Exercise(List.of());
    private static final Value TRUTH = new Value.Truth();
    private static final Value DAY = new Value.Day();
    private static final Value WEIGHT = mass(0.1, 300);
    private static final Value ANY_MEASURE = new Value.AnyAmount(List.of(Dimension.ANGLE, Dimension.TIME, Dimension.LENGTH));

    private ProgramKeys() { }

    /** The whole table. */
    public static final Value.Fields TABLE = fields(
            required("format", number(1, 1, true, "this version reads format 1"), "the version of this file format"),
            optional("title", NAMED, "what the handout is called", DEFAULT_TITLE),
            required("client", client(), "who the program is for"),
            optional("practice", fields(
                    optional("name", NAMED, "of the practice"), optional("prepared-by", NAMED, "who made the program"),
                    optional("contact", NAMED, "whom the client calls"),
                    optional("emergency", NAMED, "the number to call for urgent help", "the local emergency number, in words"),
                    optional("qualification", NAMED, "of who made the program, printed for the coach", "a box to fill"),
                    optional("setting", NAMED, "where the program is done, printed for the coach", "a box to fill"),
                    optional("colour", new Value.Colour(), "of heads and rules, dark enough for white paper", "black")),
                    "who made the program"),
            required("assessment", assessment(), "what the coach found"),
            optional("screening", screening(), "answers on health; printed as unanswered where missing", "unanswered"),
            optional("clearance", fields(
                    required("by", NAMED, "who cleared the client"), required("date", DAY, "when"),
                    optional("limits", NOTED, "what the clinician limits", "none")), "a clinician's clearance", "none"),
            optional("restrictions", many(restriction(), 40), "what to keep away from", "none"),
            optional("equipment", equipment(), "what the client has", "floor and wall"),
            required("schedule", schedule(), "when the program runs"),
            optional("aims", distinct(words("side-to-side movement", "strength"), 2), "in order of weight",
                    "[side-to-side movement, strength]"),
            optional("choose", choose(), "the coach's hand on the wheel", "all left to the solver"),
            optional("handout", fields(
                    optional("paper", words("a4", "letter"), "the sheet", "a4"),
                    optional("editions", distinct(words("client", "coach", "pocket"), 3), "which to print", "[client, coach]"),
                    optional("print", words("plain", "large"), "size of the letters", "plain"),
                    optional("log", TRUTH, "whether to print a log", "yes")), "how it is printed"));

    private static Value client() {
        return new Value.Fields(List.of(
                optional("name", NAMED, "the client's name; this or a code is needed"),
                optional("code", new Value.Code(), "used in file names and page footers instead of the name"),
                optional("age", number(LEAST_AGE, MOST_AGE, true, "check the age, in years"), "in years, on the day of the assessment",
                        "unknown: an adult, with the cautions for 65 and over"),
                optional("born", DAY, "date of birth, instead of the age"),
                optional("sex", words("female", "male", "unstated"), "for the breadths between hips and between shoulders", "unstated"),
                required("height", length(1.20, 2.30, "the body tables are for adults; " + CHECK_UNIT), "standing height, such as 171 cm or 5 ft 7 in"),
                required("mass", mass(30, 300), "body mass, such as 64 kg or 141 lb"),
                optional("training-years", number(0, 80, false, "give years, such as `0.5`"),
                        "years of regular resistance training", "0"),
                optional("language", words("en", "es", "de"), "of the handout", "en"),
                optional("units", words("metric", "us"), "what the handout prints", "metric"),
                optional("segments", BodySection.keys(), "the body's lengths and masses, where the tables' are not wanted", "all from height and mass")),
                List.of(new Value.Between.AtLeastOne(List.of("name", "code")), new Value.Between.NotBoth("age", "born")));
    }

    private static Value assessment() {
        var test = fields(required("exercise", FAMILY, "which exercise"), optional("side", SIDES, "which side worked", "both"),
                required("load", mass(0, 500), "the weight, as loaded"),
                required("reps", number(1, 10, true, "estimates hold up to 10 repetitions (Reynolds 2006); test with a heavier weight"),
                        "repetitions done"),
                optional("in-reserve", number(0, 5, true,
                        "the count of repetitions left is out by more than 2 beyond 5 left (Hackett 2017); test closer to your limit"),
                        "repetitions that would still have gone", "0: done to the limit"),
                optional("setup", setUp(), "the arrangement of the test", "flat feet, load in both hands"),
                optional("date", DAY, "of the test", "the day of the assessment"),
                optional("error", number(0.01, 0.5, false, "give a share, such as `0.08`"),
                        "how far off the estimate may be, as a share; `next` writes it", "what is published for a single set"));
        return fields(
                optional("date", DAY, "of the assessment", "the start of the program"),
                required("pelvis", pelvis(), "the finding, such as {turned: right, degree: clear}"),
                optional("weight-habit", SIDE, "the leg the client likes to stand on"),
                optional("low-shoulder", SIDE, "the shoulder that sits lower"),
                optional("measures", measures(), "left and right pairs", "none"),
                optional("tests", many(test, 60), "sets done to a known effort", "none"),
                optional("bilateral-index", number(-40, 40, false, "give percent: 100 × both ÷ (left + right) − 100, such as `-10`"),
                        "percent; splits tests of both legs at once for work of one leg", "such tests say nothing about one leg"));
    }

    static Value pelvis() {
        return fields(required("turned", words("left", "right", "square"), "left, right or square"),
                optional("degree", words("mild", "clear", "marked"), "how far", "clear"));
    }

    static Value measures() {
        return many(fields(required("what", new Value.Word(MeasureKind.words()), "what was measured"),
                required("left", ANY_MEASURE, "on the left"), required("right", ANY_MEASURE, "on the right")), 40);
    }

    private static Value.Fields setUp() {
        var raise = length(0, 1.2, CHECK_UNIT);
        return fields(
                optional("front-raise", raise, "height under the front foot"),
                optional("rear-raise", raise, "height under the rear foot"),
                optional("heel-wedge", length(0, 0.15, CHECK_UNIT), "height under the heel"),
                optional("stance", length(0, 2, CHECK_UNIT), "from the front heel to the rear toe"),
                optional("load-hand", SIDES, "the hand that holds the weight"),
                optional("pulley", length(0, 3, CHECK_UNIT), "height of the pulley"),
                optional("pulley-distance", length(0, 5, CHECK_UNIT), "from the pulley to the client"));
    }

    private static Value screening() {
        var keys = new ArrayList<Key>();
        ScreeningQuestion.inOrder().forEach(q -> keys.add(optional(q.word(), TRUTH, q.about(), "unanswered")));
        keys.add(optional("resting-blood-pressure", new Value.Pressure(), "systolic over diastolic, mmHg", "not measured"));
        keys.add(optional("conditions", many(fields(required("what", new Value.Word(Condition.Kind.words()), "what it is"),
                optional("date", DAY, "of the operation or birth; of a pregnancy the day it is due", "not known"),
                optional("where", new Value.Word(Condition.Where.words()), "the part of the body, for an operation or a new joint"),
                optional("side", SIDES, "of that part", "both")), 20), "what has rules of its own", "none"));
        return new Value.Fields(keys);
    }

    private static Value restriction() {
        var side = optional("side", SIDES, "which side it concerns", "both");
        var until = optional("until", DAY, "the last day it holds", "for good");
        var because = optional("because", NOTED, "why");
        return new Value.OneOf(List.of(
                fields(required("avoid", new Value.Exercise(RestrictionTag.words()), "a position, demand, joint or exercise"), side, until, because),
                fields(required("limit", words("hand-load"), "the weight in a hand"),
                        required("to", mass(0, 200), "per hand"), until, because),
                fields(required("limit", words("knee-flexion", "dorsiflexion", "hip-flexion"), "a range of movement"),
                        required("to", new Value.Amount(Dimension.ANGLE, new Value.Range(0, 160, CHECK_UNIT)), "the most, in degrees"),
                        side, until, because)));
    }

    private static Value equipment() {
        var single = optional("single", TRUTH, "whether there is only one of each", "no: pairs");
        var list = distinct(WEIGHT, 100);
        var run = List.of(required("from", WEIGHT, "the lightest"), required("to", WEIGHT, "the heaviest"),
                required("step", WEIGHT, "from one to the next"), single);
        var weights = new Value.ListOrMap(list, new Value.OneOf(List.of(
                new Value.Fields(run), fields(required("weights", list, "a list"), single))));
        return fields(
                optional("dumbbells", weights, "a list, or from, to and step", "none"),
                optional("kettlebells", weights, "a list, or from, to and step", "none"),
                optional("barbell", fields(
                        required("bar", mass(1, 60), "the bare bar"),
                        required("plates", new Value.Pairs(WEIGHT, number(1, 40, true, "count the plates of this size"),
                                "plates and how many there are, such as `{10 kg: 2}`"), "how many of each")), "bar and plates", "none"),
                optional("cable", fields(
                        required("step", WEIGHT, "from one weight of the stack to the next"), required("to", WEIGHT, "the whole stack"),
                        optional("from", WEIGHT, "the lightest", "one step"),
                        optional("ratio", number(1, 8, false, "the ratio is stack weight over felt weight"), "of the pulleys", "1"),
                        optional("pulley", fields(
                                required("from", length(0, 3, CHECK_UNIT), "the lowest"),
                                required("to", length(0, 3, CHECK_UNIT), "the highest")),
                                "heights of the pulley", "from 20 cm to 200 cm")), "a cable column", "none"),
                optional("boxes", distinct(length(0.01, 1.2, CHECK_UNIT), 30), "heights to step or rest on", "none"),
                optional("bench", length(0.2, 0.8, CHECK_UNIT), "its height", "none"),
                optional("wedges", distinct(length(0.005, 0.15, CHECK_UNIT), 20), "heights at the thick end", "none"),
                optional("bands", many(fields(required("name", NAMED, "what it is called, such as a colour"), optional("measured", fields(
                        required("pull", mass(0.1, 100), "what a spring scale shows"), required("at", length(0.1, 5, CHECK_UNIT), "how long the band then is")),
                        "its pull, printed as it is and never counted as a load", "not measured")), 12), "elastic bands, from light to strong", "none with a name"),
                optional("also", distinct(words("mat", "wall", "band", "chair", "rail"), 5),
                        "chair: a hand support, never a foot raise", "[wall]"));
    }

    private static Value schedule() {
        return fields(
                required("start", DAY, "the first day"),
                required("weeks", number(1, 52, true, "plan up to a year; a new block follows a re-check"), "how many"),
                required("days", distinct(new Value.Word(DAYS), 7), "such as [mon, wed, fri]"),
                required("minutes", number(5, 240, true, "give the minutes of one session"), "of one session"),
                optional("start-stage", new Value.Word(Arrays.stream(Stage.values()).map(Stage::word).toList()),
                        "where the client begins", "floor"),
                optional("progression", words("double", "wave"), "repeats, then the weight; or waves of three weeks, lighter with more to heavier with fewer repeats", "double"),
                optional("easy-week-every", number(0, 12, true, "give weeks, 0 for no easy week"), "weeks from one easy week to the next", "as the house rules have it"),
                optional("gate", fields(
                        required("what", new Value.Word(MeasureKind.words()), "the measure that decides"),
                        required("difference-under", ANY_MEASURE, "between the sides")),
                        "what must be met before the next stage", "stages go by weeks"));
    }

    private static Value choose() {
        return fields(
                optional("include", distinct(FAMILY, 60), "exercises that must be in", "none"),
                optional("exclude", distinct(FAMILY, 200), "exercises that must not", "none"),
                optional("setup", new Value.Pairs(FAMILY, fields(
                        optional("left", setUp(), "the left side's"), optional("right", setUp(), "the right side's")),
                        "exercises, each with left or right"), "set-ups the coach has tried", "as solved"),
                optional("own-words", new Value.Pairs(FAMILY, NOTED, "exercises, each with a line of text"), "one more line on the card", "none"));
    }

    private static Value.Fields fields(Key... keys) {
        return new Value.Fields(List.of(keys));
    }

    private static Value words(String... words) {
        return new Value.Word(List.of(words));
    }

    private static Value number(double low, double high, boolean whole, String wayOut) {
        return new Value.Number(new Value.Range(low, high, wayOut), whole);
    }

    private static Value mass(double low, double high) {
        return new Value.Amount(Dimension.MASS, new Value.Range(low, high, CHECK_UNIT));
    }

    private static Value length(double low, double high, String wayOut) {
        return new Value.Amount(Dimension.LENGTH, new Value.Range(low, high, wayOut));
    }

    private static Value.Many many(Value item, int most) {
        return new Value.Many(item, most, false);
    }

    private static Value.Many distinct(Value item, int most) {
        return new Value.Many(item, most, true);
    }
}
