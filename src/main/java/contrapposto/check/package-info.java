/**
 * Stage 2, check: the spec as written → {@link contrapposto.check.CheckedSpec}. The last place where raw strings live:
 * every problem of a file is found here, at once, in file order.
 */
package contrapposto.check;
