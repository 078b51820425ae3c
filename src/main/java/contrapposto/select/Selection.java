package contrapposto.select;

import contrapposto.assess.Reason;
import contrapposto.setup.SetUps;
import contrapposto.setup.SolvedSetUp;
import contrapposto.quantity.Sided;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Map;

/**
 * What is done on which day. An exercise keeps one number and one set-up per side over all days.
 *
 * @param exercises in the order they are numbered, from 1
 * @param days      in week order; numbers of exercises in training order
 * @param leftOut   family id → why it is not in the plan, in catalogue order
 */
public record Selection(SetUps setUps, List<Chosen> exercises, List<Day> days, Map<String, List<Reason>> leftOut) {
    /**
     * @param sets per side and session at the start
     * @param insteadId the best replacement if it hurts or the place is taken: a family id in or out of the plan, or empty
     */
    public record Chosen(int number, String id, Sided<SolvedSetUp> sides, int sets, String insteadId,
                         List<Reason> reasons) { }

    /** @param numbers of the exercises, in training order */
    public record Day(DayOfWeek day, List<Integer> numbers) { }
}
