/** Stage 9, html: {@link contrapposto.document.Document} → one self-contained HTML page, drawings as SVG, for phone and mail. */
package contrapposto.html;
