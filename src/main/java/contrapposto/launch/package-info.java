/** Floor 9, launch: what {@code java -jar} meets first, on whatever Java it is; finds one that can run the rest. */
package contrapposto.launch;
