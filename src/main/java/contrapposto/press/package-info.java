/**
 * Floor 9, press: the chain of all stages as one call, read → check → … → typeset, without files or console. What the
 * command line uses, and what another program may use: {@link contrapposto.press.Press}.
 */
package contrapposto.press;
