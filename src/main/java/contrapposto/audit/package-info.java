/**
 * Holds finished documents against published lists of what such a page must have: the consensus on reporting exercise, the
 * assessment of printed patient material, the index of clear communication; and measures how hard the words are to read. It
 * says what a machine can prove, what is missing, and what only a person can judge.
 */
package contrapposto.audit;
