package contrapposto.returns;

import contrapposto.check.CheckedSpec.SetUpWish;
import contrapposto.check.CheckedSpec.Test;
import contrapposto.quantity.Length;
import contrapposto.quantity.Side;
import contrapposto.quantity.UnitSystem;
import contrapposto.returns.Review.Alarm;
import contrapposto.returns.Review.Remeasured;
import contrapposto.returns.Review.SideReview;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** What the comments of the next spec say, and its new lines, in the client's units. For the coach who edits it: English. */
final class Remarks {
    private final Review review;
    private final UnitSystem units;

    Remarks(Review review) {
        this.review = review;
        units = review.plan().spec().client().units();
    }

    /** Above the spec: where it comes from, what was decided, what the coach must hear. */
    List<String> head() {
        var lines = new ArrayList<String>();
        lines.add("Written by `contrapposto next` from the log of \"" + review.plan().spec().title().replace('\n', ' ') + "\", which began on "
                + review.plan().spec().schedule().start() + ": " + review.weeksDone() + " of " + review.plan().weeks().size() + " weeks filled in.");
        lines.add("Read it, change what you know better, ask the screening questions again, then build it.");
        review.alarms().forEach(alarm -> lines.add("FOR THE COACH: " + of(alarm)));
        review.sides().forEach(side -> lines.add(name(side.exercise(), side.side()) + ": " + decision(side)));
        review.balances().forEach(balance -> lines.add(String.format(Locale.ROOT, "%s, %s: %.0f%s, %s", balance.exercise(),
                Review.EQUATION.words(), balance.now(), balance.before().isPresent()
                        ? String.format(Locale.ROOT, " (before: %.0f)", balance.before().getAsDouble()) : "",
                balance.weaker().map(side -> side.word() + " weaker").orElse("no farther apart than healthy sides"))));
        return lines.stream().map(line -> NextSpec.HEAD + line).toList();
    }

    private static String name(String exercise, Optional<Side> side) {
        return exercise + side.map(s -> " " + s.word()).orElse("");
    }

    private static String of(Alarm alarm) {
        String who = alarm.exercise().map(id -> name(id, alarm.side()) + ", ").orElse("");
        String when = "week " + alarm.week() + " " + Log.dayWord(alarm.day()) + ": ";
        return who + when + switch (alarm.why()) {
            case PAIN_TWICE, PAIN -> "pain " + alarm.pain() + " of 10, over the ceiling of " + Reviewer.PAIN_CEILING;
            case MORNING_PAIN -> "pain " + alarm.pain() + " of 10 the morning after, over the ceiling of " + Reviewer.PAIN_CEILING;
            case WORSE_TWICE -> "the second session in a row that was worse than asked";
            case FEW_SESSIONS, EASY_TWICE, NOTHING_MEASURED, FIRST_ESTIMATE, STRONGER, WEAKER, SAME -> "see there";
        };
    }

    private static String decision(SideReview side) {
        String done = side.done() + " of " + side.asked() + " sessions; ";
        return done + switch (side.why()) {
            case PAIN_TWICE -> "swap: pain over " + Reviewer.PAIN_CEILING + " more than once" + side.instead().map(id -> ", " + id
                    + " in its place").orElse("");
            case PAIN -> "back off: pain over " + Reviewer.PAIN_CEILING + " once";
            case WORSE_TWICE -> "back off: worse than asked twice in a row";
            case MORNING_PAIN -> "hold: pain over " + Reviewer.PAIN_CEILING + " the morning after one of its days";
            case FEW_SESSIONS -> "hold: fewer than half done";
            case EASY_TWICE -> "up by 5 %: twice in a row far more to spare than asked; a test near the limit would say more";
            case NOTHING_MEASURED -> "hold: no set says how strong this side is; repeats and reserve as printed";
            case FIRST_ESTIMATE -> "up: a weight in place of a start by effort";
            case STRONGER -> "up: " + percent(side) + " stronger";
            case WEAKER -> "back off: " + percent(side) + " weaker";
            case SAME -> "hold: as strong as before (" + percent(side) + ")";
        };
    }

    private static String percent(SideReview side) {
        double change = 100 * side.change().orElse(0);
        return String.format(Locale.ROOT, "%.1f %%", side.why() == Review.Why.WEAKER ? -change : change);
    }

    /** Beside a test. */
    String of(SideReview side) {
        var now = side.now().orElseThrow();
        boolean lowered = side.next().orElseThrow().capacity() < now.capacity() * (1 - 1e-9);
        return String.format(Locale.ROOT, "%s; from %d sets%s%s", decisionWord(side), now.sets(), side.change().isPresent()
                ? String.format(Locale.ROOT, ", %+.1f %% on the last block", 100 * side.change().getAsDouble()) : "",
                lowered ? ", taken lower than shown" : "");
    }

    private static String decisionWord(SideReview side) {
        return side.decision().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** A test as a line of the spec. */
    String test(Test test) {
        var parts = new ArrayList<String>();
        parts.add("exercise: " + test.exercise());
        test.side().ifPresent(side -> parts.add("side: " + side.word()));
        parts.add("load: " + mass(test.load().kilograms()));
        parts.add("reps: " + test.reps());
        parts.add("in-reserve: " + test.inReserve());
        setUp(test.setup()).ifPresent(words -> parts.add("setup: " + words));
        parts.add("date: " + test.date());
        test.error().ifPresent(error -> parts.add(String.format(Locale.ROOT, "error: %.3f", error)));
        return "{" + String.join(", ", parts) + "}";
    }

    private Optional<String> setUp(SetUpWish wish) {
        var parts = new ArrayList<String>();
        length(parts, "front-raise", wish.frontRaise());
        length(parts, "rear-raise", wish.rearRaise());
        length(parts, "heel-wedge", wish.heelWedge());
        length(parts, "stance", wish.stance());
        wish.loadHand().map(Side::word).or(() -> wish.bothHands() ? Optional.of("both") : Optional.empty())
                .ifPresent(hand -> parts.add("load-hand: " + hand));
        length(parts, "pulley", wish.pulley());
        if (wish.pulleyDistance().isPresent()) {
            length(parts, "pulley-distance", Optional.of(Length.ofMetres(wish.pulleyDistance().getAsDouble())));
        }
        return parts.isEmpty() ? Optional.empty() : Optional.of("{" + String.join(", ", parts) + "}");
    }

    private static void length(List<String> parts, String key, Optional<Length> length) {
        length.ifPresent(l -> parts.add(String.format(Locale.ROOT, "%s: %s cm", key, number(l.metres() * 100, 2))));
    }

    private String mass(double kilograms) {
        return switch (units) {
            case METRIC -> number(kilograms, 3) + " kg";
            case US -> number(contrapposto.quantity.Mass.ofKilograms(kilograms).pounds(), 3) + " lb";
        };
    }

    /** Without trailing zeros. */
    private static String number(double value, int places) {
        return java.math.BigDecimal.valueOf(value).setScale(places, java.math.RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
    }

    /** The measures with what was measured again in its place, and what was not kept. */
    List<String> measures() {
        var lines = new ArrayList<>(List.of("measures:"));
        review.measures().forEach(pair -> lines.add("  - " + pair(pair) + pair.before().map(b -> "   # before: " + number(b.left(), 1) + " and "
                + number(b.right(), 1)).orElse("   # new")));
        review.plan().spec().assessment().measures().stream()
                .filter(old -> review.measures().stream().noneMatch(pair -> pair.now().what().equals(old.what())))
                .forEach(old -> lines.add("  - " + pair(new Remeasured(Optional.empty(), old)) + "   # not measured again"));
        return lines;
    }

    private static String pair(Remeasured pair) {
        var now = pair.now();
        return "{what: " + NodeText.text(now.what()) + ", left: " + number(now.left(), 2) + " " + now.unit() + ", right: "
                + number(now.right(), 2) + " " + now.unit() + "}";
    }

    String starts() {
        return "the day after the last block; it began on " + review.plan().spec().schedule().start();
    }

    String stage() {
        return review.gate().map(gate -> gate.met() ? "the gate is met: " + gate.what() + " differs by " + number(gate.difference().getAsDouble(), 1)
                        : "the gate is " + known(gate.difference()) + ": as the last block began")
                .orElse("as the last block ended");
    }

    private static String known(OptionalDouble difference) {
        return difference.isPresent() ? "not met" : "not measured again";
    }

    String swapped(List<SideReview> swapped) {
        return swapped.stream().map(side -> name(side.exercise(), side.side())).collect(Collectors.joining(", "))
                + ": pain over " + Reviewer.PAIN_CEILING + " more than once";
    }
}
