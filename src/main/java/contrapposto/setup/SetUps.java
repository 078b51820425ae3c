package contrapposto.setup;

import contrapposto.assess.Assessed;
import contrapposto.assess.Reason;
import contrapposto.catalogue.Catalogue;
import contrapposto.quantity.Side;
import contrapposto.quantity.Sided;
import java.util.List;
import java.util.Map;

/**
 * Every family that this person can do, with its chosen set-up per side, and the families that fell away.
 *
 * @param usable  family id → chosen set-ups, in catalogue order (a map that keeps its order)
 * @param leftOut family id → why, in catalogue order
 * @param refused of the usable families, the side that is not set up and why: family id → side → reasons
 */
public record SetUps(Assessed assessed, Catalogue catalogue, Map<String, Sided<SolvedSetUp>> usable,
                     Map<String, List<Reason>> leftOut, Map<String, Map<Side, List<Reason>>> refused) { }
