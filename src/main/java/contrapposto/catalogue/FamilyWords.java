package contrapposto.catalogue;

import java.util.List;
import java.util.Map;

/**
 * What a family says to the client, in one language, for one role. Text may hold the placeholders {@code {side}},
 * {@code {other}} (the working and the other side's word), {@code {hand}} (the hand with the weight) and
 * {@code {front}}, {@code {rear}}; they are filled per side with the stem of its word, the ending follows in the text
 * ({@code {side}en}), so that cues stay right when mirrored. A {@link Clause} is said only where it holds.
 *
 * @param name      of the family
 * @param heading   of the card half, by arrangement key: {@code ahead} (working foot or foot of the working side in
 *                  front), {@code behind}, {@code each} (no foot ahead), {@code both} (a symmetric set-up)
 * @param cues      three or four; one on breathing, one on a foot or hand contact
 * @param feel      what to feel, after "You should feel"
 * @param mistakes  two usual mistakes and their fixes
 * @param easier    by link change key
 * @param harder    by link change key
 * @param arrow     the movement the first cue asks for, in words, for the figure's alternative text
 * @param cautions  for this family, beside the usual ones
 * @param purpose   one sentence for the coach
 */
public record FamilyWords(String id, String name, Map<String, String> heading, ByRole cues, Map<RoleKey, String> feel,
                          List<Mistake> mistakes, Map<String, String> easier, Map<String, String> harder,
                          Map<RoleKey, String> arrow, String purpose, List<String> cautions) {
    /** Which of the three kinds of duty a side has. */
    public enum RoleKey { LANDING, DRIVE, BOTH }

    public record ByRole(List<String> landing, List<String> drive, List<String> both) {
        public List<String> of(RoleKey role) {
            return switch (role) {
                case LANDING -> landing;
                case DRIVE -> drive;
                case BOTH -> both;
            };
        }
    }

    public record Mistake(String what, String fix) { }
}
