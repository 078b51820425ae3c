/** Floor 1, spec: the file as written, with a place for each value. */
package contrapposto.spec;
