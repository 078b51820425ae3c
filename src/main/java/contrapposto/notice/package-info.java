/** Floor 0, notice: what the tool says about an input, as values. */
package contrapposto.notice;
