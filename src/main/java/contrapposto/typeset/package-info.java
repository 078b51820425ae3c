/** Stage 9, typeset: {@link contrapposto.document.Document} → tagged PDF. The one door to OpenPDF. */
package contrapposto.typeset;
