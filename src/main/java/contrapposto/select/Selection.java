package contrapposto.select;

import contrapposto.assess.Reason;
import contrapposto.catalogue.Stage;
import contrapposto.setup.SetUps;
import contrapposto.setup.SolvedSetUp;
import contrapposto.quantity.Sided;
import contrapposto.wording.Said;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Map;

/**
 * What is done on which day and in which weeks. An exercise keeps one number and one set-up per side over all days.
 *
 * <p>Stages advance over the weeks from {@code schedule.start-stage}: {@link #stages} says which weeks each stage leads.
 * An exercise belongs to the weeks {@code firstWeek..lastWeek}: it comes in with its stage (a stage's first week) and may
 * stay when the next stage leads, as floor work does as one opener of a session; the last stage is standing or integrated,
 * under load. A plan of one week holds the start stage alone if it is standing, else start stage and standing together.
 *
 * @param exercises in the order they are numbered, from 1
 * @param days      in week order; numbers of exercises in training order
 * @param stages    the stage that leads each run of weeks, in order, without gaps from week 1 to the last
 * @param leftOut   family id → why it is not in the plan, in catalogue order
 * @param shortfalls what was asked for or needed and could not be had, each with the constraints that bind
 */
public record Selection(SetUps setUps, List<Chosen> exercises, List<Day> days, List<StageWeeks> stages,
                        Map<String, List<Reason>> leftOut, List<Said> shortfalls) {
    /** Both weeks included, from 1. */
    public record StageWeeks(Stage stage, int firstWeek, int lastWeek) { }

    /**
     * @param firstWeek of the plan in which it is done, from 1
     * @param lastWeek  the last such week, included
     * @param sets per side and session at the start
     * @param instead what to do on a day when its things are taken or it hurts
     */
    public record Chosen(int number, String id, Sided<SolvedSetUp> sides, int firstWeek, int lastWeek, int sets,
                         Instead instead, List<Reason> reasons) { }

    /** @param numbers of the exercises of all weeks, in training order; a week does those whose weeks hold it */
    public record Day(DayOfWeek day, List<Integer> numbers) { }
}
