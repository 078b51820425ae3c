package contrapposto.prescribe;

import contrapposto.assess.Reason;
import java.util.List;

/**
 * A side's tested strength, ready to be asked in one set-up.
 *
 * @param asking    share and load of the set-up that is to be loaded
 * @param joint     the one that binds at the estimated 1RM
 * @param moment    that it bears there, N·m
 * @param together  of hip and knee there, N·m; for an arm as {@code moment}
 * @param oneRepMax in the set-up of the test, kg of outside load per implement
 * @param error     how far off that may be, as a share
 * @param tests     how many sets it rests on
 * @param mostToBegin outside load, kg in all, that a first week may have: the heaviest lifted in a test
 */
record Strength(Asking asking, BindingJoint joint, double moment, double together, double oneRepMax, double error, int tests,
                double mostToBegin, List<Reason> reasons) { }
