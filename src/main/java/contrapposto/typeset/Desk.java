package contrapposto.typeset;

import contrapposto.document.Document.Wording;
import contrapposto.figure.Tone;

/**
 * What every setter needs of the document in hand.
 *
 * @param folios pages of parts as the layout before found them
 * @param heads  the ink of heads and rules
 * @param large  whether this is the large print, which is arranged otherwise, not only larger
 * @param divisions where its language divides words
 */
record Desk(Fonts fonts, TypeScale type, Stock stock, Wording wording, Folios folios, boolean large, Misses misses, Divisions divisions, Tone heads) {
    /** A gap of the plain print, widened for this one. */
    double gap(double plain) {
        return plain * type.spacing();
    }

    /** Air inside rows: less where type is set close, never more. */
    double air(double plain) {
        return plain * Math.min(1, type.spacing());
    }

    /** The same for a sheet to fold, which is set closer. */
    Desk folded() {
        return new Desk(fonts, TypeScale.FOLDED, stock, wording, folios, large, misses, divisions, heads);
    }

    LineBreaker lines(Style style) {
        return new LineBreaker(this, style);
    }
}
