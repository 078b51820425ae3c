/**
 * Floor 1, body: segments, skeleton, pose solving and statics. Pure mechanics in SI units that knows no exercise by
 * name. Axes: x the way the person faces, y to the person's left, z up; the origin is on the floor.
 */
package contrapposto.body;
