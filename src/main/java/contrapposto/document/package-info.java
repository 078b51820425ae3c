/**
 * Floor 1, document: the paper's vocabulary. What a page can hold, as sealed blocks; compose writes it, typeset sets
 * it, and the two never see each other. No exercise, no plan and no arithmetic here.
 */
package contrapposto.document;
