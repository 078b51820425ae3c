package contrapposto.setup;

import contrapposto.assess.Assessed.Limit;
import contrapposto.catalogue.Family.BaseKind;
import contrapposto.catalogue.Family.FootPlace;
import contrapposto.catalogue.Family.LoadHand;
import contrapposto.catalogue.Family.Works;
import contrapposto.catalogue.Implement;
import contrapposto.quantity.Length;
import contrapposto.quantity.Side;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Lists every discrete choice that this client's equipment allows for one family and side, in the fixed order that
 * breaks ties: relative to the working side, so that the other side gets the mirror image. Distances (stance, pulley)
 * are left open; {@link Fitting} finds them. What the coach has fixed is not varied.
 */
final class Candidates {
    private final Question q;
    private final Gear gear;

    private Candidates(Question q) {
        this.q = q;
        this.gear = Gear.of(q);
    }

    static List<SetUp> of(Question question) {
        return new Candidates(question).all();
    }

    /** One way to hold a weight, or none. */
    private record Hold(Implement implement, Optional<LoadHand> hand) { }

    private List<SetUp> all() {
        var found = new ArrayList<SetUp>();
        for (var place : places()) {
            for (var hold : holds()) {
                for (var raises : footRaises()) {
                    for (var raise : raises()) {
                        for (var wedge : wedges(place)) {
                            for (var support : supports(hold)) {
                                found.add(setUp(place, hold, raises, raise, wedge, support));
                            }
                        }
                    }
                }
            }
        }
        return found;
    }

    private SetUp setUp(Optional<FootPlace> place, Hold hold, List<Length> raises, Length raise, Length wedge,
                        SetUp.Support support) {
        boolean leg = q.family().works() == Works.LEG;
        var side = q.side();
        Optional<Side> hand = hold.hand().flatMap(h -> switch (h) {
            case SAME -> Optional.of(side);
            case OPPOSITE -> Optional.of(side.other());
            case BOTH, EACH -> Optional.empty();
        });
        boolean each = hold.hand().equals(Optional.of(LoadHand.EACH));
        boolean shift = q.family().levers().hipShift() && q.target().turnTo().equals(Optional.of(side));
        return new SetUp(leg && !q.symmetric() ? Optional.of(side) : Optional.empty(),
                q.family().works() == Works.ARM && !q.symmetric() ? Optional.of(side) : Optional.empty(),
                place.map(p -> p == FootPlace.BEHIND ? side.other() : side), raises.getFirst(), raises.getLast(), raise,
                wedge, wedge.metres() > 0 ? Optional.of(side) : Optional.empty(), Double.NaN, Posing.width(q), hand,
                hold.hand().equals(Optional.of(LoadHand.BOTH)), each, shift, support, Length.ZERO, Double.NaN,
                hold.implement(), hold.hand().isEmpty() ? 0 : each ? 2 : 1);
    }

    /** Where the foot of the working side stands; empty where neither foot is ahead. */
    private List<Optional<FootPlace>> places() {
        if (q.family().base() != BaseKind.SPLIT && !q.staggered()) {
            return List.of(Optional.empty());
        }
        var places = q.family().levers().workingFoot().stream().filter(p -> p != FootPlace.LEVEL).sorted()
                .map(Optional::of).toList();
        return places.isEmpty() ? List.of(Optional.of(FootPlace.AHEAD)) : places;
    }

    /** For each hand that may hold the weight, the implement the family likes best among those there are; then none. */
    private List<Hold> holds() {
        var levers = q.family().levers();
        var holds = new ArrayList<Hold>();
        for (var hand : hands()) {
            levers.implement().stream().filter(i -> gear.loads(i, hand, q.restraints().handLoad())).findFirst()
                    .ifPresent(i -> holds.add(new Hold(i, Optional.of(hand))));
        }
        if (levers.implement().contains(Implement.BODY_WEIGHT) || levers.implement().isEmpty()) {
            holds.add(new Hold(Implement.BODY_WEIGHT, Optional.empty()));
        }
        return holds;
    }

    private Set<LoadHand> hands() {
        var wish = q.wish();
        if (wish.bothHands()) {
            return EnumSet.of(LoadHand.BOTH);
        }
        if (wish.loadHand().isPresent()) {
            return EnumSet.of(wish.loadHand().get() == q.side() ? LoadHand.SAME : LoadHand.OPPOSITE);
        }
        var hands = EnumSet.noneOf(LoadHand.class);
        hands.addAll(q.family().levers().loadHands());
        return hands;
    }

    /** Pairs of front and rear height; never both feet raised unless the coach says so. */
    private List<List<Length>> footRaises() {
        var wish = q.wish();
        if (wish.frontRaise().isPresent() || wish.rearRaise().isPresent()) {
            return List.of(List.of(wish.frontRaise().orElse(Length.ZERO), wish.rearRaise().orElse(Length.ZERO)));
        }
        var raises = new ArrayList<List<Length>>();
        raises.add(List.of(Length.ZERO, Length.ZERO));
        if (q.family().levers().frontRaise()) {
            gear.frontRaises().forEach(h -> raises.add(List.of(h, Length.ZERO)));
        }
        if (q.family().levers().rearRaise()) {
            gear.rearRaises().forEach(h -> raises.add(List.of(Length.ZERO, h)));
        }
        return raises;
    }

    private List<Length> raises() {
        var raise = q.family().levers().raise();
        var raises = new ArrayList<Length>();
        if (raise.from() <= 0) {
            raises.add(Length.ZERO);
        }
        if (raise.to() > 0) {
            raises.addAll(gear.raises(q.family()));
        }
        return raises;
    }

    /** Under the working heel; in a staggered stance only where the working foot is the one behind. */
    private List<Length> wedges(Optional<FootPlace> place) {
        if (q.wish().heelWedge().isPresent()) {
            return List.of(q.wish().heelWedge().get());
        }
        var wedges = new ArrayList<>(List.of(Length.ZERO));
        boolean fits = q.family().base() != BaseKind.STAGGERED || place.equals(Optional.of(FootPlace.BEHIND));
        if (q.family().levers().heelWedge() && fits) {
            wedges.addAll(q.equipment().wedges());
        }
        return wedges;
    }

    /** Something to hold on to is offered to those who need it, and only while a hand is free. */
    private List<SetUp.Support> supports(Hold hold) {
        boolean needed = q.assessed().cautious() || q.restraints().verdict().contains(Limit.HAND_SUPPORT_FOR_REAR_RAISE);
        boolean free = q.family().works() == Works.LEG
                && hold.hand().filter(h -> h == LoadHand.BOTH || h == LoadHand.EACH).isEmpty();
        return q.family().levers().handSupport() && needed && free && gear.support() != SetUp.Support.NONE
                ? List.of(gear.support(), SetUp.Support.NONE) : List.of(SetUp.Support.NONE);
    }
}
