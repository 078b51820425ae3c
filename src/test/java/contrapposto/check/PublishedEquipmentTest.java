package contrapposto.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import contrapposto.catalogue.Implement;
import contrapposto.check.CheckedSpec.Equipment;
import contrapposto.quantity.Length;
import contrapposto.quantity.Mass;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is common or laid down about weights, bars, plates and boxes can be written down, and makes the loads that it makes. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PublishedEquipmentTest {
    private static Equipment with(String equipment) {
        String text = """
                format: 1
                client: {name: Ada Quill, height: 171 cm, mass: 64 kg}
                assessment: {pelvis: {turned: right}}
                schedule: {start: 2026-03-09, weeks: 8, days: [wed, mon], minutes: 50}
                equipment: {%s}
                """.formatted(equipment);
        return Quietly.value(Checks.check("specs/ada.yaml", text.getBytes(StandardCharsets.UTF_8), DemoSpecsTest.EXERCISES)).equipment();
    }

    private static List<Double> kilograms(List<Mass> masses) {
        return masses.stream().map(mass -> Math.rint(mass.kilograms() * 1e6) / 1e6).toList();
    }

    private static List<Double> pounds(List<Mass> masses) {
        return masses.stream().map(mass -> Math.rint(mass.pounds() * 1e6) / 1e6).toList();
    }

    /** NIST Handbook 44, appendix C (G1.1): one pound is 0.45359237 kg; computed examples of G1.2. */
    @ParameterizedTest
    @CsvSource({"1, 0.45359237", "45, 20.41165665", "2.5, 1.133980925"})
    void a_pound_is_what_the_agreement_of_1959_says(double pounds, double kilograms) {
        assertEquals(kilograms, Mass.ofPounds(pounds).kilograms(), 1e-12);
        assertEquals(44.0924524, Mass.ofKilograms(20).pounds(), 5e-8);
        assertEquals(2.7557783, Mass.ofKilograms(1.25).pounds(), 5e-8);
    }

    /** IPF technical rules (G1.3, G1.4, secondary): discs from 1.25 to 25 kg, bar and collars 25 kg. A pair of each on it is 182.5 kg in all. */
    @Test
    void the_discs_of_competition_lifting_make_every_load_by_steps_of_two_and_a_half() {
        var bars = kilograms(with("barbell: {bar: 25 kg, plates: {25 kg: 2, 20 kg: 2, 15 kg: 2, 10 kg: 2, 5 kg: 2, 2.5 kg: 2, 1.25 kg: 2}}").bars());
        assertEquals(25, bars.getFirst());
        assertEquals(25 + 2 * 78.75, bars.getLast());
        for (int i = 1; i < bars.size(); i++) {
            assertEquals(2.5, bars.get(i) - bars.get(i - 1), 1e-9, "the smallest jump is a pair of the smallest plates (G1.8)");
        }
    }

    /** Common practice, no source (G1.5, G1.6): plates from 0.25 kg; 2.5 to 45 lb. The jump is twice the smallest (G1.8, arithmetic). */
    @Test
    void small_plates_and_plates_in_pounds_make_their_own_steps() {
        assertEquals(List.of(20.0, 20.5, 21.0, 21.5, 22.0, 22.5, 23.0, 23.5),
                kilograms(with("barbell: {bar: 20 kg, plates: {1 kg: 2, 0.5 kg: 2, 0.25 kg: 2}}").bars()));
        var inPounds = pounds(with("barbell: {bar: 45 lb, plates: {45 lb: 2, 35 lb: 2, 25 lb: 2, 10 lb: 2, 5 lb: 2, 2.5 lb: 2}}").bars());
        assertEquals(List.of(45.0, 50.0, 55.0, 60.0, 65.0), inPounds.subList(0, 5));
        assertEquals(45 + 2 * 122.5, inPounds.getLast());
    }

    /** Common practice, no source (G1.7): bars of 7 to 30 kg are about; which one is there is an input. */
    @ParameterizedTest
    @ValueSource(strings = {"7 kg", "10 kg", "15 kg", "20 kg", "45 lb", "30 kg"})
    void a_bar_of_any_usual_mass_can_be_written(String bar) {
        assertEquals(2, with("barbell: {bar: " + bar + ", plates: {1.25 kg: 2}}").bars().size());
    }

    /** Common practice, no source (G1.9): dumbbells by 1 kg to 10, then by 2 or 2.5. A list says that; pairs are told apart from single ones. */
    @Test
    void dumbbells_with_uneven_steps_are_a_list() {
        assertEquals(List.of(8.0, 9.0, 10.0, 12.5, 15.0), kilograms(with("dumbbells: [8 kg, 9 kg, 10 kg, 12.5 kg, 15 kg]").dumbbells()));
        assertTrue(with("dumbbells: {weights: [8 kg, 9 kg], single: yes}").singleDumbbells());
    }

    /** Common practice, no source (G1.10): kettlebells by 4 kg. */
    @Test
    void kettlebells_go_by_four() {
        assertEquals(List.of(8.0, 12.0, 16.0, 20.0, 24.0), kilograms(with("kettlebells: {from: 8 kg, to: 24 kg, step: 4 kg}").kettlebells()));
    }

    /** Common practice, no source (G1.11): stacks by 5 kg or 10 lb, light columns by 2.5 kg. */
    @ParameterizedTest
    @CsvSource({"5 kg, 20 kg, 4", "10 lb, 100 lb, 10", "2.5 kg, 60 kg, 24"})
    void a_stack_goes_by_its_own_steps(String step, String to, int plates) {
        assertEquals(plates, with("cable: {step: " + step + ", to: " + to + "}").weights(Implement.CABLE).size());
    }

    /** Heights: benches of 42–45 cm (G1.14, from memory), blocks of 5 to 30 (G1.15), boxes of 30 to 75 and 10 + 5 (G1.17), stairs of 15–20 (G1.18), wedges of 1–5 (G1.19). */
    @Test
    void usual_heights_of_benches_blocks_boxes_stairs_and_wedges_can_be_written() {
        for (int bench = 42; bench <= 45; bench++) {
            assertEquals(Length.ofCentimetres(bench), with("bench: " + bench + " cm").bench().orElseThrow());
        }
        assertEquals(11, with("boxes: [5 cm, 10 cm, 15 cm, 18 cm, 20 cm, 30 cm, 45 cm, 60 cm, 75 cm, 12 in, 24 in]").boxes().size());
        assertEquals(5, with("wedges: [1 cm, 2 cm, 3 cm, 4 cm, 5 cm]").wedges().size());
    }

    /** Common practice, no source (G1.20): the pull of a band depends on its stretch; it is never turned into kilograms. */
    @Test
    void a_band_has_no_kilograms() {
        assertEquals(List.of(), with("also: [band]").weights(Implement.BAND));
    }
}
