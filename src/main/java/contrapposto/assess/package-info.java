/**
 * Stage 3, assess: checked spec → who lands and who drives, each side's target, whether the measures agree with the
 * finding, and the screening verdict. It never diagnoses.
 */
package contrapposto.assess;
