/**
 * Floor 0, font: what the typesetter must know of a TrueType file to break lines — which characters it has, how wide
 * they are and which pairs are set closer. Read once, then immutable. It writes nothing.
 */
package contrapposto.font;
