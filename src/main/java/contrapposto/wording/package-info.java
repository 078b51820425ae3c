/** Words by key and language: what is to be said ({@link contrapposto.wording.Said}), how each language says it ({@link contrapposto.wording.Phrasebook}), numbers and units in it. */
package contrapposto.wording;
