/**
 * Floor 1, catalogue: exercise families and house rules as data. Families are YAML files under
 * {@code contrapposto/catalogue/} on the class path (one a file, words per language beside them); what a family says
 * here is what it can do, never which side does it: that is decided by {@code setup}.
 */
package contrapposto.catalogue;
