package contrapposto.assess;

import contrapposto.check.CheckedSpec.Restriction;

/**
 * A restriction that binds the plan: the coach's own, or one that follows from a condition.
 *
 * @param why what is printed where it removes an exercise or a set-up
 */
public record Restrained(Restriction restriction, Reason why) { }
