/** Stage 5, select: solved set-ups + aims + minutes + restrictions → exercises for each day, with reasons. Optimal, not first-fit. */
package contrapposto.select;
