package contrapposto.check;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The facts a new spec is begun with, in the order they are asked. What they accept is said by {@link ProgramKeys}, as for any spec. */
public enum FirstFact {
    NAME("client.name", "name", Form.TEXT, "Client's name (leave empty to go by a code)"),
    CODE("client.code", "code", Form.TEXT, "Code for file names and footers, such as AB-0001 (empty: the name stands there)"),
    AGE("client.age", "age", Form.TEXT, "Age in years (empty: unknown, with the cautions for 65 and over)"),
    SEX("client.sex", "sex", Form.TEXT, "Sex: female, male or unstated"),
    HEIGHT("client.height", "height", Form.TEXT, "Height, such as 171 cm or 5 ft 7 in"),
    MASS("client.mass", "mass", Form.TEXT, "Body mass, such as 64 kg or 141 lb"),
    TRAINED("client.training-years", "training-years", Form.TEXT, "Years of regular training with weights"),
    UNITS("client.units", "units", Form.TEXT, "Units on the handout: metric or us"),
    ASSESSED("assessment.date", "assessed", Form.TEXT, "Day of the assessment, such as 2026-11-30"),
    TURNED("assessment.pelvis.turned", "turned", Form.TEXT, "Pelvis turned: left, right or square"),
    DEGREE("assessment.pelvis.degree", "degree", Form.TEXT, "How far: mild, clear or marked"),
    DUMBBELLS("equipment.dumbbells", "dumbbells", Form.LIST, "Pairs of dumbbells, such as 4 kg, 6 kg, 8 kg (empty: none)"),
    BOXES("equipment.boxes", "boxes", Form.LIST, "Boxes and steps to stand on, such as 10 cm, 15 cm (empty: none)"),
    BENCH("equipment.bench", "bench", Form.TEXT, "Height of the bench, such as 43 cm (empty: none)"),
    ALSO("equipment.also", "also", Form.LIST, "Also there, of mat, wall, band, chair, rail"),
    START("schedule.start", "start", Form.TEXT, "First day of the program, such as 2026-12-07"),
    WEEKS("schedule.weeks", "weeks", Form.TEXT, "Weeks"),
    DAYS("schedule.days", "days", Form.LIST, "Training days, such as mon, wed, fri"),
    MINUTES("schedule.minutes", "minutes", Form.TEXT, "Minutes a session");

    /** How an answer is written into the file. */
    enum Form { TEXT, LIST }

    private final String path;
    private final String option;
    private final Form form;
    private final String question;

    FirstFact(String path, String option, Form form, String question) {
        this.path = path;
        this.option = option;
        this.form = form;
        this.question = question;
    }

    /** Dotted path of its key. */
    public String path() {
        return path;
    }

    /** What it is called where it is given by name rather than asked. */
    public String option() {
        return option;
    }

    /** One line that asks for it. */
    public String question() {
        return question;
    }

    /** The values in {@code answer}: itself, or the parts between commas. */
    List<String> values(String answer) {
        return switch (form) {
            case TEXT -> List.of(answer.strip());
            case LIST -> Arrays.stream(answer.split(",")).map(String::strip).filter(part -> !part.isEmpty()).toList();
        };
    }

    boolean list() {
        return form == Form.LIST;
    }

    /** The fact given by {@code option}, without its dashes. */
    public static Optional<FirstFact> called(String option) {
        return Arrays.stream(values()).filter(fact -> fact.option.equals(option)).findFirst();
    }
}
