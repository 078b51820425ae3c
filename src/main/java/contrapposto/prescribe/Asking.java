package contrapposto.prescribe;

import java.util.OptionalDouble;

/** What a set-up asks of a side's tested capacity at a load, and the other way round. Loads in kg per implement, shares 0–1. */
sealed interface Asking {
    /** The share of capacity that {@code load} asks; empty where no pose carries it. */
    OptionalDouble share(double load);

    /** The share that the joint which bound in the test bears by itself: never to pass the band either. */
    OptionalDouble bindingShare(double load);

    /** The heaviest load that asks at most {@code share}, to 0.1 kg: 0 when the body alone asks as much; empty when none is known. */
    OptionalDouble loadAt(double share);

    /**
     * Body and load together, as legs bear them.
     *
     * @param capacity the support moment at the estimated 1RM, N·m
     * @param joint    the one that binds there
     * @param moment   that it bears there, N·m
     */
    record BodyAndLoad(Demand demand, double capacity, BindingJoint joint, double moment) implements Asking {
        @Override
        public OptionalDouble share(double load) {
            var support = demand.support(load);
            return support.isPresent() ? OptionalDouble.of(support.getAsDouble() / capacity) : support;
        }

        @Override
        public OptionalDouble bindingShare(double load) {
            return demand.pose(load).isEmpty() ? OptionalDouble.empty()
                    : OptionalDouble.of(demand.moment(joint, load) / moment);
        }

        @Override
        public OptionalDouble loadAt(double share) {
            return demand.loadFor(share * capacity);
        }
    }

    /**
     * The outside load alone, as an arm bears it.
     *
     * @param oneRepMax kg in this very set-up
     */
    record LoadOnly(double oneRepMax) implements Asking {
        @Override
        public OptionalDouble share(double load) {
            return OptionalDouble.of(load / oneRepMax);
        }

        @Override
        public OptionalDouble bindingShare(double load) {
            return share(load);
        }

        @Override
        public OptionalDouble loadAt(double share) {
            return OptionalDouble.of(share * oneRepMax);
        }
    }
}
