/** Floor 9, cli: commands, options, progress and exit codes; the chain of all stages. The one door to picocli and the progress library. */
package contrapposto.cli;
