/**
 * Returns: what came back (a filled form, a log as CSV or YAML) → what each side did and can do → the next block's spec.
 * Nothing is guessed: a box that cannot be read is a notice, an empty one says nothing.
 */
package contrapposto.returns;
