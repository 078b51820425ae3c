package contrapposto.setup;

import contrapposto.assess.Reason;
import contrapposto.assess.Reason.Source;
import contrapposto.body.SolvedPose.Mechanics;
import contrapposto.catalogue.Family.Toward;
import contrapposto.catalogue.Muscle;
import contrapposto.catalogue.Phase;
import contrapposto.quantity.Side;
import contrapposto.wording.Said;
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
    /** Metres by which two stances must differ for their printed lengths to differ in either system of units. */
    private static final double SEEN = 0.015;

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
            reasons.add(Reason.of("coach-set-up", Said.of("coach-set-up/solved"), Source.COACH));
        }
        raise(best, field).ifPresent(reasons::add);
        if (setUp.heelWedge().metres() > 0) {
            reasons.add(Reason.of("heel-wedge", Said.of("heel-wedge").length("height", setUp.heelWedge().metres()).side("side", q.side()),
                    Source.PRACTICE));
        }
        if (q.staggered() && setUp.frontFoot().map(Side::other).equals(q.target().turnTo()) && setUp.frontFoot().isPresent()) {
            var ahead = setUp.frontFoot().get();
            reasons.add(Reason.of("stagger", Said.of("stagger").side("ahead", ahead).side("turn", ahead.other()), Source.PRACTICE));
        }
        if (setUp.hipShift()) {
            reasons.add(Reason.of("hip-shift", Said.of("hip-shift").side("side", q.side()), Source.PRACTICE));
        }
        if (setUp.handSupport() != SetUp.Support.NONE) {
            reasons.add(Reason.of("hand-support", Said.of("hand-support/first").word("support", word(setUp.handSupport())), Source.PRACTICE));
        }
        muscles(best).ifPresent(reasons::add);
        if (q.symmetric()) {
            reasons.add(Reason.of("symmetric", Said.of("symmetric"), Source.PRACTICE));
        } else if (q.target().turnTo().isEmpty()) {
            reasons.add(Reason.of("square", Said.of("square"), Source.PRACTICE));
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
            reasons.add(Reason.of("line-of-pull", Said.of("line-of-pull").degrees("slope", held.mechanics().lineOfPull())
                    .degrees("from", q.family().levers().slopeFrom()).degrees("to", q.family().levers().slopeTo())
                    .length("pulley", held.setUp().pulley().metres()).length("away", held.setUp().pulleyDistance()), Source.SOLVED));
        }
        return List.copyOf(reasons);
    }

    private Optional<Reason> phase(Mechanics m) {
        return judge.phase(m).map(phase -> {
            boolean shared = !Double.isNaN(m.leftShare());
            var shin = Said.of(shared ? "stance-phase/found-and-share" : "stance-phase/found").side("side", q.side())
                    .signedDegrees("working", m.shinWorking(), 0).signedDegrees("start", m.shinStart(), 0);
            var found = shared ? shin.percent("share", workingShare(m), 0) : shin;
            return Reason.of("stance-phase", q.target().phases().size() != 1
                    ? Said.of("stance-phase/square").said("found", found).word("phase", word(phase))
                    : shortOf(m, Said.of("stance-phase/wanted").side("side", q.side()).word("phase", word(q.target().phases().getFirst()))
                    .said("wanted", wantedShin()).said("found", found)), Source.SOLVED);
        });
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private Said wantedShin() {
        double vertical = q.rules().shinVertical();
        if (q.hinges()) {
            return Said.of("shin/hinge").word("zone", word(Posing.zone(q)));
        }
        return switch (q.target().phases().getFirst()) {
            case EARLY_TO_MID -> Said.of("shin/vertical").degrees("within", vertical);
            case MID_TO_LATE -> Said.of("shin/forward").degrees("over", 2 * vertical);
        };
    }

    /** The statement, with how far the shin is off what is wanted where it is. */
    private Said shortOf(Mechanics m, Said said) {
        double vertical = q.rules().shinVertical();
        double off = q.hinges() ? 0 : switch (q.target().phases().getFirst()) {
            case EARLY_TO_MID -> Math.abs(m.shinWorking()) - vertical;
            case MID_TO_LATE -> 2 * vertical - m.shinWorking();
        };
        return off <= 0 ? said : Said.of("stance-phase/short").said("said", said).degrees("off", off);
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
        var flat = field.stream().filter(t -> t.setUp().frontRaise().metres() == 0 && t.setUp().rearRaise().metres() == 0
                && t.setUp().loadHand().equals(s.loadHand()) && t.setUp().handSupport() == s.handSupport()
                && t.setUp().implement() == s.implement()).findFirst();
        var said = flat.map(f -> Said.of("raise/effect").signedDegrees("shin-flat", f.mechanics().shinWorking(), 0)
                .signedDegrees("shin", best.mechanics().shinWorking(), 0).percent("share-flat", workingShare(f.mechanics()), 0)
                .percent("share", workingShare(best.mechanics()), 0).mass("load", best.held().load())).orElse(Said.of("raise/best"))
                .length("height", front ? s.frontRaise().metres() : s.rearRaise().metres()).word("foot", front ? "front" : "rear");
        return Optional.of(new Reason(front ? "front-raise" : "rear-raise", said, Source.SOLVED, front ? "" : "D3.1"));
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
            return Optional.of(new Reason("load-hand", Said.of(turned == q.target().turnTo().get() ? "load-hand/toward" : "load-hand/expected")
                    .mass("load", held.load()).side("hand", hand.get()).side("turn", turned).moment("moment", moment)
                    .degrees("lean", held.mechanics().trunkLean()), Source.EXPECTED, "D3.12"));
        }
        return Optional.of(Reason.of("load-hand", Said.of("load-hand/against").side("turn", turned).moment("moment", moment)
                .mass("load", held.load()).side("against", q.target().turnTo().get()), Source.SOLVED));
    }

    /** The price of a weight on the working side, said openly. */
    private Optional<Reason> sameSide(Trial.Held held) {
        if (!q.standsOnALeg() || !held.setUp().loadHand().equals(Optional.of(q.side())) || held.load() == 0) {
            return Optional.empty();
        }
        double spared = held.load() * GRAVITY * q.person().segments().shoulderSpacing() / 2;
        return Optional.of(new Reason("same-side-weight", Said.of("same-side-weight").moment("moment", spared), Source.EXPECTED, "H1.9"));
    }

    private Optional<Reason> muscles(Tried best) {
        var trained = TrainedMuscles.of(q.family().muscles(), judge.phase(best.mechanics()));
        var wanted = q.target().muscles().stream().filter(trained::containsKey).map(Muscle::word).toList();
        return wanted.isEmpty() || q.symmetric() ? Optional.empty()
                : Optional.of(Reason.of("muscles", Said.of("muscles").side("side", q.side()).words("muscles", wanted), Source.PRACTICE));
    }

    SolvedSetUp.RunnerUp runnerUp(Tried best, Tried next) {
        var lostOn = next.judgement().decidedBy(best.judgement());
        return new SolvedSetUp.RunnerUp(next.setUp(), describe(next), lost(lostOn, best, next));
    }

    /** The criterion that decided, with the two values where they tell something. */
    private Said lost(Criterion criterion, Tried best, Tried next) {
        var plain = Said.of("lost-on/" + word(criterion));
        return switch (criterion) {
            case PHASE -> {
                int places = apart(next.mechanics().shinWorking(), best.mechanics().shinWorking(), 1);
                yield plain.signedDegrees("next", next.mechanics().shinWorking(), places).signedDegrees("best", best.mechanics().shinWorking(), places);
            }
            case WEIGHT -> {
                int places = apart(100 * workingShare(next.mechanics()), 100 * workingShare(best.mechanics()), 0);
                yield plain.percent("next", workingShare(next.mechanics()), places).percent("best", workingShare(best.mechanics()), places);
            }
            case TURN -> next.mechanics().turnMoment() * best.mechanics().turnMoment() < 0
                    ? Said.of("lost-on/turn-other-way").moment("moment", next.mechanics().turnMoment()) : plain;
            case LINE -> plain.degrees("slope", next.mechanics().lineOfPull());
            case THINGS -> plain.count("next", next.setUp().things()).count("best", best.setUp().things());
            case STEADINESS -> !(Math.abs(next.setUp().stance() - best.setUp().stance()) > SEEN) ? plain : Said.of("lost-on/steadiness-stance")
                    .length("next", next.setUp().stance()).length("best", best.setUp().stance());
            case SAFETY, PRESSURE, MUSCLES, LOAD, ORDER -> plain;
        };
    }

    /** The decimal places, from {@code least} to two more, that tell the two numbers apart on paper: "80 %, not 80 %" tells nothing. */
    static int apart(double one, double other, int least) {
        int places = least;
        while (places < least + 2 && Math.round(one * StrictMath.pow(10, places)) == Math.round(other * StrictMath.pow(10, places))) {
            places++;
        }
        return places;
    }

    /** A set-up in a few words. */
    private static Said describe(Tried tried) {
        var s = tried.setUp();
        var words = new ArrayList<Said>();
        if (s.frontRaise().metres() > 0) {
            words.add(Said.of("set-up/front-raise").length("height", s.frontRaise().metres()));
        }
        if (s.rearRaise().metres() > 0) {
            words.add(Said.of("set-up/rear-raise").length("height", s.rearRaise().metres()));
        }
        if (s.raise().metres() > 0) {
            words.add(Said.of("set-up/raise").length("height", s.raise().metres()));
        }
        if (words.isEmpty() && s.frontFoot().isPresent()) {
            words.add(Said.of("set-up/flat").side("ahead", s.frontFoot().get()));
        }
        s.wedgeFoot().ifPresent(foot -> words.add(Said.of("set-up/wedge").length("height", s.heelWedge().metres()).side("side", foot)));
        words.add(s.count() == 0 ? Said.of("set-up/no-weight") : s.loadHand().map(h -> Said.of("set-up/one-hand").side("hand", h))
                .orElse(Said.of(s.eachHand() ? "set-up/each-hand" : "set-up/both-hands")));
        if (s.handSupport() != SetUp.Support.NONE) {
            words.add(Said.of("set-up/support").word("support", word(s.handSupport())));
        }
        if (s.pulley().metres() > 0) {
            words.add(Said.of("set-up/pulley").length("height", s.pulley().metres()));
        }
        return Said.of("set-up/parts").listed("parts", words);
    }

    /** What a thing that is missing would do for this person. */
    Said lack(Said thing, Tried best, Tried richer, Criterion decisive) {
        var gain = switch (decisive) {
            case PHASE -> Said.of("lack/phase").signedDegrees("from", best.mechanics().shinWorking(), 0)
                    .signedDegrees("to", richer.mechanics().shinWorking(), 0);
            case WEIGHT -> Said.of("lack/weight").percent("from", workingShare(best.mechanics()), 0)
                    .percent("to", workingShare(richer.mechanics()), 0);
            case TURN, PRESSURE, LOAD, SAFETY -> Said.of("lack/" + word(decisive));
            case LINE, MUSCLES, STEADINESS, THINGS, ORDER -> Said.of("lack/better");
        };
        return gain.said("thing", thing);
    }
}
