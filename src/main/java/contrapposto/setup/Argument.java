package contrapposto.setup;

import contrapposto.assess.Reason;
import contrapposto.assess.Reason.Source;
import contrapposto.body.SolvedPose.Mechanics;
import contrapposto.catalogue.Family.Toward;
import contrapposto.catalogue.Muscle;
import contrapposto.catalogue.Phase;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** The case for a set-up, in plain sentences for the coach with the numbers that were weighed. */
final class Argument {
    /** Rules whose sentences hold numbers of the pose: written anew when the pose is solved with another load. */
    static final Set<String> OF_POSE = Set.of("stance-phase", "load-hand", "same-side-weight", "line-of-pull", "weight-share");

    private static final double GRAVITY = 9.81;

    private final Question q;
    private final Judge judge;

    Argument(Question q, Judge judge) {
        this.q = q;
        this.judge = judge;
    }

    /** Why this and not another: levers, gear, hands. */
    List<Reason> ofChoice(Tried best, List<Tried> field) {
        var reasons = new ArrayList<Reason>();
        var setUp = best.setUp();
        if (q.fixedByCoach()) {
            reasons.add(Reason.of("coach-set-up", "the coach's own set-up, solved and checked like any other", Source.COACH));
        }
        raise(best, field).ifPresent(reasons::add);
        if (setUp.heelWedge().metres() > 0) {
            reasons.add(Reason.of("heel-wedge", Wording.cm(setUp.heelWedge().metres()) + " under the " + q.side().word()
                    + " heel to bring the pressure there: a rule of practice, not a solved effect", Source.PRACTICE));
        }
        if (q.staggered() && setUp.frontFoot().map(Side::other).equals(q.target().turnTo()) && setUp.frontFoot().isPresent()) {
            var ahead = setUp.frontFoot().get();
            reasons.add(Reason.of("stagger", "the " + ahead.word() + " foot ahead carries its half of the pelvis forward: the "
                    + "pelvis turns " + ahead.other().word() + ", as it is to learn", Source.PRACTICE));
        }
        if (setUp.hipShift()) {
            reasons.add(Reason.of("hip-shift", "the pelvis shifts forward and across over the " + q.side().word()
                    + " foot, which strengthens the turn to the " + q.side().word(), Source.PRACTICE));
        }
        if (setUp.handSupport() != SetUp.Support.NONE) {
            reasons.add(Reason.of("hand-support", "one hand on the " + setUp.handSupport().name()
                    .toLowerCase(Locale.ROOT) + ": balance comes first", Source.PRACTICE));
        }
        muscles(best).ifPresent(reasons::add);
        if (q.symmetric()) {
            reasons.add(Reason.of("symmetric", "one symmetric set-up serves both sides at once", Source.PRACTICE));
        } else if (q.target().turnTo().isEmpty()) {
            reasons.add(Reason.of("square", "the pelvis is square: both sides get the same set-up, mirrored", Source.PRACTICE));
        }
        return List.copyOf(reasons);
    }

    /** What the solved pose says; holds for the load it was solved with. */
    List<Reason> ofPose(Trial.Held held) {
        var reasons = new ArrayList<Reason>();
        phase(held.mechanics()).ifPresent(reasons::add);
        turn(held).ifPresent(reasons::add);
        sameSide(held).ifPresent(reasons::add);
        if (!Double.isNaN(held.mechanics().lineOfPull()) && q.family().levers().slopeTo() > 0) {
            reasons.add(Reason.of("line-of-pull", "the line of pull slopes down by "
                    + Math.round(held.mechanics().lineOfPull()) + "° (wanted "
                    + Math.round(q.family().levers().slopeFrom()) + " to " + Math.round(q.family().levers().slopeTo())
                    + "°) with the pulley at " + Wording.cm(held.setUp().pulley().metres()) + ", "
                    + Wording.cm(held.setUp().pulleyDistance()) + " away", Source.SOLVED));
        }
        return List.copyOf(reasons);
    }

    private Optional<Reason> phase(Mechanics m) {
        return judge.phase(m).map(phase -> {
            String found = "at the working depth the " + q.side().word() + " shin is at " + Wording.degrees(m.shinWorking())
                    + ", at the start at " + Wording.degrees(m.shinStart()) + share(m);
            String said = q.target().phases().size() != 1 ? found + ": " + words(phase)
                    + " stance; the pelvis is square, so either will do"
                    : "the " + q.side().word() + " side is to train " + words(q.target().phases().getFirst()) + " stance, "
                    + wantedShin() + ": " + found + fallsShort(m);
            return Reason.of("stance-phase", said, Source.SOLVED);
        });
    }

    private static String words(Phase phase) {
        return switch (phase) {
            case EARLY_TO_MID -> "early to mid";
            case MID_TO_LATE -> "mid to late";
        };
    }

    private String wantedShin() {
        long vertical = Math.round(q.rules().shinVertical());
        if (q.hinges()) {
            return "told in a hinge by the pressure, which is kept under the "
                    + Posing.zone(q).name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
        return switch (q.target().phases().getFirst()) {
            case EARLY_TO_MID -> "shin about vertical (within " + vertical + "°)";
            case MID_TO_LATE -> "shin tilted forward (over " + 2 * vertical + "°)";
        };
    }

    private String fallsShort(Mechanics m) {
        double vertical = q.rules().shinVertical();
        double off = q.hinges() ? 0 : switch (q.target().phases().getFirst()) {
            case EARLY_TO_MID -> Math.abs(m.shinWorking()) - vertical;
            case MID_TO_LATE -> 2 * vertical - m.shinWorking();
        };
        return off <= 0 ? "" : "; " + Wording.plainDegrees(off) + " off what is wanted";
    }

    private String share(Mechanics m) {
        return Double.isNaN(m.leftShare()) ? "" : ", and that leg takes " + Wording.percent(workingShare(m))
                + " of the weight on the feet";
    }

    private double workingShare(Mechanics m) {
        return q.side() == Side.LEFT ? m.leftShare() : 1 - m.leftShare();
    }

    /** What the raise does, against the same set-up on flat feet. */
    private Optional<Reason> raise(Tried best, List<Tried> field) {
        var s = best.setUp();
        boolean front = s.frontRaise().metres() > 0;
        if (!front && s.rearRaise().metres() == 0) {
            return Optional.empty();
        }
        String what = Wording.cm(front ? s.frontRaise().metres() : s.rearRaise().metres()) + " under the "
                + (front ? "front" : "rear") + " foot";
        var flat = field.stream().filter(t -> t.setUp().frontRaise().metres() == 0 && t.setUp().rearRaise().metres() == 0
                && t.setUp().loadHand().equals(s.loadHand()) && t.setUp().handSupport() == s.handSupport()
                && t.setUp().implement() == s.implement()).findFirst();
        String effect = flat.map(f -> " takes the shin from " + Wording.degrees(f.mechanics().shinWorking()) + " (best on flat feet) to "
                + Wording.degrees(best.mechanics().shinWorking()) + " and the weight on the working leg from "
                + Wording.percent(workingShare(f.mechanics())) + " to " + Wording.percent(workingShare(best.mechanics()))
                + ", solved with " + Wording.kg(best.held().load())).orElse(" is the best of the heights there are");
        return Optional.of(new Reason(front ? "front-raise" : "rear-raise", what + effect, Source.SOLVED,
                front ? "" : "D3.1"));
    }

    private Optional<Reason> turn(Trial.Held held) {
        double moment = held.mechanics().turnMoment();
        var hand = held.setUp().loadHand();
        if (hand.isEmpty() || q.target().turnTo().isEmpty() || q.family().turn().toward() == Toward.NONE
                || !(Math.abs(moment) >= Judge.TURNS)) {
            return Optional.empty();
        }
        Side turned = moment > 0 ? Side.LEFT : Side.RIGHT;
        if (q.family().turn().toward() == Toward.BY_LOAD_HAND || q.family().turn().carried()) {
            return Optional.of(new Reason("load-hand", Wording.kg(held.load()) + " in the " + hand.get().word()
                    + " hand is expected to turn the trunk " + turned.word() + " (" + Wording.moment(moment) + " about the trunk at "
                    + Math.round(held.mechanics().trunkLean()) + "° of lean)"
                    + (turned == q.target().turnTo().get() ? ", toward the landing side; expected, not proved" : ""),
                    Source.EXPECTED, "D3.12"));
        }
        return Optional.of(Reason.of("load-hand", "the pull turns the trunk " + turned.word() + " with "
                + Wording.moment(moment) + " at " + Wording.kg(held.load()) + "; turning " + q.target().turnTo().get().word()
                + " against it is the work", Source.SOLVED));
    }

    /** The price of a weight on the working side, said openly. */
    private Optional<Reason> sameSide(Trial.Held held) {
        if (!q.standsOnALeg() || !held.setUp().loadHand().equals(Optional.of(q.side())) || held.load() == 0) {
            return Optional.empty();
        }
        double spared = held.load() * GRAVITY * q.person().segments().shoulderSpacing() / 2;
        return Optional.of(new Reason("same-side-weight", "held on the working side it spares the side muscles of that hip about "
                + Wording.moment(spared) + ": a price, paid for the turn", Source.EXPECTED, "H1.9"));
    }

    private Optional<Reason> muscles(Tried best) {
        var trained = TrainedMuscles.of(q.family().muscles(), judge.phase(best.mechanics()));
        var wanted = q.target().muscles().stream().filter(trained::containsKey).map(Argument::plain).toList();
        return wanted.isEmpty() || q.symmetric() ? Optional.empty()
                : Optional.of(Reason.of("muscles", "of the muscles wanted on the " + q.side().word() + " side it trains "
                + String.join(", ", wanted), Source.PRACTICE));
    }

    private static String plain(Muscle muscle) {
        return muscle.word().replace('-', ' ');
    }

    SolvedSetUp.RunnerUp runnerUp(Tried best, Tried next) {
        var lostOn = next.judgement().decidedBy(best.judgement());
        return new SolvedSetUp.RunnerUp(next.setUp(), describe(next), lostOn.words() + detail(lostOn, best, next));
    }

    private String detail(Criterion criterion, Tried best, Tried next) {
        return switch (criterion) {
            case PHASE -> ": its shin would be at " + Wording.fineDegrees(next.mechanics().shinWorking()) + ", not "
                    + Wording.fineDegrees(best.mechanics().shinWorking());
            case WEIGHT -> ": the leg would take " + Wording.percent(workingShare(next.mechanics())) + ", not "
                    + Wording.percent(workingShare(best.mechanics()));
            case TURN -> next.mechanics().turnMoment() * best.mechanics().turnMoment() < 0
                    ? ": the weight would turn the trunk the other way (" + Wording.moment(next.mechanics().turnMoment()) + ")" : "";
            case LINE -> ": the line would slope by " + Math.round(next.mechanics().lineOfPull()) + "°";
            case THINGS -> ": " + next.setUp().things() + ", not " + best.setUp().things();
            case STEADINESS -> Double.isNaN(best.setUp().stance()) ? "" : ": it would need a stance of "
                    + Wording.cm(next.setUp().stance()) + ", not " + Wording.cm(best.setUp().stance());
            case SAFETY, PRESSURE, MUSCLES, LOAD, ORDER -> "";
        };
    }

    /** A set-up in a few words. */
    private String describe(Tried tried) {
        var s = tried.setUp();
        var words = new ArrayList<String>();
        if (s.frontRaise().metres() > 0) {
            words.add("front foot on " + Wording.cm(s.frontRaise().metres()));
        }
        if (s.rearRaise().metres() > 0) {
            words.add("rear foot on " + Wording.cm(s.rearRaise().metres()));
        }
        if (s.raise().metres() > 0) {
            words.add("raised by " + Wording.cm(s.raise().metres()));
        }
        if (words.isEmpty() && s.frontFoot().isPresent()) {
            words.add(s.frontFoot().get().word() + " foot ahead, flat");
        }
        s.wedgeFoot().ifPresent(foot -> words.add(Wording.cm(s.heelWedge().metres()) + " under the " + foot.word() + " heel"));
        words.add(s.count() == 0 ? "no weight" : s.loadHand().map(h -> "weight in the " + h.word() + " hand")
                .orElse(s.eachHand() ? "a weight in each hand" : "one weight in both hands"));
        if (s.handSupport() != SetUp.Support.NONE) {
            words.add("a hand on the " + s.handSupport().name().toLowerCase(Locale.ROOT));
        }
        if (s.pulley().metres() > 0) {
            words.add("pulley at " + Wording.cm(s.pulley().metres()));
        }
        return String.join(", ", words);
    }

    /** What a thing that is missing would do for this person. */
    String lack(String thing, Tried best, Tried richer, Criterion decisive) {
        String gain = switch (decisive) {
            case PHASE -> " would take the shin from " + Wording.degrees(best.mechanics().shinWorking()) + " to "
                    + Wording.degrees(richer.mechanics().shinWorking());
            case WEIGHT -> " would change the weight on the working leg from "
                    + Wording.percent(workingShare(best.mechanics())) + " to " + Wording.percent(workingShare(richer.mechanics()));
            case TURN -> " would help the turn";
            case PRESSURE -> " would bring the pressure to the heel";
            case LOAD -> " would load it";
            case SAFETY -> " would make it safer";
            case LINE, MUSCLES, STEADINESS, THINGS, ORDER -> " would make it better";
        };
        return thing + gain;
    }
}
