/** Floor 0, yaml: YAML text to nodes that keep their place, and plain trees back to YAML text. The one door to SnakeYAML. */
package contrapposto.yaml;
