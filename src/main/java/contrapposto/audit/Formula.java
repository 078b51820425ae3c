package contrapposto.audit;

import java.util.Arrays;
import java.util.List;

/** Published formulas for how hard a text is to read, by language, the one that decides first. */
public enum Formula {
    /** Kincaid et al. 1975, Research Branch Report 8-75. */
    FLESCH_KINCAID("en", "Flesch-Kincaid", Scale.SCHOOL_YEARS, 1) {
        @Override
        double of(Counts c) {
            return 0.39 * c.wordsASentence() + 11.8 * c.syllablesAWord() - 15.59;
        }
    },
    /** McLaughlin 1969, J Reading 12:639; its sample is 30 sentences. */
    SMOG("en", "SMOG", Scale.SCHOOL_YEARS, 30) {
        @Override
        double of(Counts c) {
            return 1.0430 * StrictMath.sqrt(c.heavy() * 30.0 / Math.max(1, c.sentences())) + 3.1291;
        }
    },
    /** Crawford 1989, made from readers of the first six school years; beyond the sixth it is a guess. */
    CRAWFORD("es", "Crawford", Scale.SCHOOL_YEARS, 1) {
        @Override
        double of(Counts c) {
            return -0.205 * c.percent(c.sentences()) + 0.049 * c.percent(c.syllables()) - 3.407;
        }
    },
    /** Szigriszt Pazos 1993; over 55 is everyday text on the scale of Barrio-Cantalejo et al. 2008 (from memory). */
    SZIGRISZT_PAZOS("es", "Szigriszt-Pazos", Scale.EASE, 1) {
        @Override
        double of(Counts c) {
            return 206.835 - 62.3 * c.syllablesAWord() - c.wordsASentence();
        }
    },
    /** Bamberger and Vanecek 1984, the first of their formulas: from 4, very easy, to 15. */
    WIENER_1("de", "Wiener Sachtextformel 1", Scale.SCHOOL_YEARS, 1) {
        @Override
        double of(Counts c) {
            return 0.1935 * c.percent(c.heavy()) + 0.1672 * c.wordsASentence() + 0.1297 * c.percent(c.long7())
                    - 0.0327 * c.percent(c.single()) - 0.875;
        }
    },
    /** Amstad 1978: Flesch's ease for German. */
    AMSTAD("de", "Amstad", Scale.EASE, 1) {
        @Override
        double of(Counts c) {
            return 180 - c.wordsASentence() - 58.5 * c.syllablesAWord();
        }
    };

    /** What the number means. */
    public enum Scale {
        /** Years of school that the text asks for: lower is easier. */
        SCHOOL_YEARS,
        /** 0 to 100: higher is easier. */
        EASE
    }

    private final String language;
    private final String words;
    private final Scale scale;
    private final int enough;

    Formula(String language, String words, Scale scale, int enough) {
        this.language = language;
        this.words = words;
        this.scale = scale;
        this.enough = enough;
    }

    abstract double of(Counts counts);

    /** Its name in print. */
    public String words() {
        return words;
    }

    public Scale scale() {
        return scale;
    }

    /** Sentences from which its number is more than rough. */
    public int enough() {
        return enough;
    }

    /** Those made for {@code language}; none where none is known. */
    static List<Formula> in(String language) {
        return Arrays.stream(values()).filter(formula -> formula.language.equals(language)).toList();
    }
}
