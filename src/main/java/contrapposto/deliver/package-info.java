/** Stage 10, deliver: finished bytes → files, whole or not at all; names, manifest, plan file. */
package contrapposto.deliver;
