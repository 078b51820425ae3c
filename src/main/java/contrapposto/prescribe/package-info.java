/**
 * Stage 6, prescribe: tests and logs → capacity, demand, loads that exist, weeks, minutes, volume: the {@link
 * contrapposto.prescribe.Plan}. Loads round down, never up. Reads no files and knows nothing about paper.
 */
package contrapposto.prescribe;
