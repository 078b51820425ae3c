/** Stage 7, illustrate: solved poses, findings and volumes → drawings. Geometry only; no words but measures, shares and side letters. */
package contrapposto.illustrate;
