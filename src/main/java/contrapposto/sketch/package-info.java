/**
 * Stage 7a, sketch: a pose and the things around it → a drawn body, its equipment and its marks. Knows joints and
 * millimetres; knows no plan, no exercise and no page.
 *
 * <p>The scene is always looked at from the person's right, facing the right of the page. What works on the left is
 * mirrored, drawn like that, and mirrored back, so that left and right can differ in nothing but tone and letter.
 */
package contrapposto.sketch;
