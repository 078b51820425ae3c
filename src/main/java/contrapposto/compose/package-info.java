/** Stage 8, compose: plan, drawings and templates → {@link contrapposto.document.Document}. The one door to FreeMarker. Numbers go into templates as finished words. */
package contrapposto.compose;
