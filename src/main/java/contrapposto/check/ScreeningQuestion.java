package contrapposto.check;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The screening questions, in the order in which they are asked. The wording is ours; no questionnaire is reproduced. */
public enum ScreeningQuestion {
    CHEST_PAIN("pain or pressure in chest, neck, jaw or arm"), BREATHLESS_AT_REST("breathless at rest or on mild effort"),
    FAINT_OR_DIZZY("fainting or dizziness"), PALPITATIONS("racing or uneven heartbeat"), ANKLE_SWELLING("swollen ankles"),
    CALF_PAIN("calf pain on walking"), HEART_METABOLIC_OR_KIDNEY_DISEASE("known disease of heart, metabolism or kidneys"),
    TOLD_NOT_TO_EXERCISE("told by a clinician not to exercise"), UNEXPLAINED_NIGHT_PAIN("night pain without known cause"),
    FEVER_OR_WEIGHT_LOSS("fever, or weight lost without trying"), CANCER_HISTORY("cancer now or before"),
    RECENT_TRAUMA("a fall, crash or blow of late"), SPREADING_WEAKNESS("weakness that spreads"),
    NUMB_SADDLE_OR_BLADDER_CHANGE("numb between the legs, or a change of bladder or bowel"),
    RECENT_SURGERY("surgery of late"), PREGNANT("pregnant"), ACTIVE_NOW("active three days a week for three months");

    private final String about;

    ScreeningQuestion(String about) {
        this.about = about;
    }

    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** What is asked, in a few words. */
    public String about() {
        return about;
    }

    public static List<ScreeningQuestion> inOrder() {
        return Arrays.asList(values());
    }
}
