/** Floor 0, figure: points, outlines, marks and figures. Pure geometry in millimetres, comparable as text. */
package contrapposto.figure;
