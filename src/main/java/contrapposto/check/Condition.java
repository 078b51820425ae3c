package contrapposto.check;

import contrapposto.quantity.Side;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Something about a person's health that the screening found and that has rules of its own.
 *
 * @param date  of the operation or birth; of a pregnancy the day it is due; empty where it does not matter or is not known
 * @param where part of the body, for an operation or a new joint
 * @param sides of that part; both where none is named
 */
public record Condition(Kind kind, Optional<LocalDate> date, Optional<Where> where, Set<Side> sides) {
    /** What it is. */
    public enum Kind {
        PREGNANCY(Date.DUE), BIRTH(Date.PAST), CAESAREAN_BIRTH(Date.PAST), SURGERY(Date.PAST), JOINT_REPLACEMENT(Date.PAST),
        OSTEOPOROSIS(Date.NONE), HIGH_BLOOD_PRESSURE(Date.NONE);

        private final Date date;

        Kind(Date date) {
            this.date = date;
        }

        /** What its date means. */
        Date date() {
            return date;
        }

        /** Where on the body it may be; nowhere if it has no place. */
        Set<Where> places() {
            return switch (this) {
                case SURGERY -> EnumSet.allOf(Where.class);
                case JOINT_REPLACEMENT -> EnumSet.of(Where.HIP, Where.KNEE, Where.ANKLE, Where.SHOULDER, Where.ELBOW);
                case PREGNANCY, BIRTH, CAESAREAN_BIRTH, OSTEOPOROSIS, HIGH_BLOOD_PRESSURE -> EnumSet.noneOf(Where.class);
            };
        }

        public String word() {
            return Condition.word(this);
        }

        static List<String> words() {
            return Arrays.stream(values()).map(Kind::word).toList();
        }
    }

    /** Of a kind of condition: on or before the start, on or after the assessment and perhaps unknown, or without meaning. */
    enum Date { PAST, DUE, NONE }

    /** Parts of the body that an operation may be on. */
    public enum Where {
        ABDOMEN, BACK, NECK, HIP, KNEE, ANKLE, SHOULDER, ELBOW, WRIST, EYE, OTHER;

        public String word() {
            return Condition.word(this);
        }

        static List<String> words() {
            return Arrays.stream(values()).map(Where::word).toList();
        }
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
