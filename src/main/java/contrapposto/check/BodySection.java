package contrapposto.check;

import static contrapposto.spec.Key.optional;

import contrapposto.body.Segment;
import contrapposto.body.SegmentTable;
import contrapposto.body.Segments;
import contrapposto.check.CheckedSpec.Body;
import contrapposto.notice.Notice;
import contrapposto.quantity.Length;
import contrapposto.quantity.Sex;
import contrapposto.spec.Digits;
import contrapposto.spec.Dimension;
import contrapposto.spec.Key;
import contrapposto.spec.Value;
import contrapposto.spec.Written;
import java.util.ArrayList;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** The client's own segment lengths and the body tables: keys, rules, record. */
final class BodySection {
    /** Farther than this from the table's length, as a share of it, a measure is more likely a slip than a body (house). */
    private static final double IMPOSSIBLE = 0.3;
    /** About three standard deviations of a length among people of one stature (house, after the spreads of ANSUR II). */
    private static final double UNUSUAL = 0.12;
    /** A sum of measured and table lengths this far from the stature, as a share, is told (house). */
    private static final double APART = 0.04;
    private static final String JOINTS = "measure from joint to joint";

    private BodySection() { }

    /** The keys of {@code client.segments}. */
    static Value.Fields keys() {
        var keys = new ArrayList<Key>();
        keys.add(optional("model", new Value.Word(SegmentTable.words()),
                "masses and mass centres: Winter (Dempster), or de Leva's women or men", SegmentTable.WINTER.word()));
        for (var segment : Segment.values()) {
            keys.add(optional(segment.word(), new Value.Amount(Dimension.LENGTH, new Value.Range(0.03, 1.2, JOINTS)), about(segment),
                    "from the height"));
        }
        return new Value.Fields(keys);
    }

    private static String about(Segment segment) {
        return switch (segment) {
            case THIGH -> "hip joint to knee joint";
            case SHANK -> "knee joint to ankle; not the knee's height above the floor";
            case ANKLE_HEIGHT -> "ankle above the sole";
            case FOOT -> "heel to toe";
            case TRUNK -> "between the hips to between the shoulders";
            case NECK_AND_HEAD -> "between the shoulders to the top of the head";
            case UPPER_ARM -> "shoulder joint to elbow";
            case FOREARM -> "elbow to wrist";
            case HAND -> "wrist to fingertip";
            case HIP_SPACING -> "between the hip joints";
            case SHOULDER_SPACING -> "between the shoulder joints";
        };
    }

    static void segmentsFitTheHeight(Written.Fields spec, Consumer<Notice> found) {
        var client = spec.fields("client");
        client.amount("height").ifPresent(height -> {
            var table = Segments.of(height.standard(), sex(client));
            given(client).forEach(segment -> client.fields("segments").amount(segment.word()).ifPresent(length -> {
                double usual = table.of(segment);
                double off = length.standard() / usual - 1;
                String told = "a measured `" + segment.word() + "` of " + Digits.of(length.standard(), length.unit()) + " is "
                        + Digits.of(Math.rint(100 * Math.abs(off))) + " % " + (off > 0 ? "more" : "less") + " than the " + Digits.of(usual, length.unit())
                        + " usual at this height";
                if (Math.abs(off) > IMPOSSIBLE) {
                    found.accept(Notice.error("impossible-segment", length.span(),
                            told + "; up to " + Digits.of(100 * IMPOSSIBLE) + " % are taken", wayOut(segment)));
                } else if (Math.abs(off) > UNUSUAL) {
                    found.accept(Notice.warning("unusual-segment", length.span(), told, wayOut(segment)));
                }
            }));
        });
    }

    private static String wayOut(Segment segment) {
        return JOINTS + " again: " + about(segment);
    }

    static void segmentsAddUp(Written.Fields spec, Consumer<Notice> found) {
        var client = spec.fields("client");
        client.amount("height").filter(height -> given(client).findAny().isPresent()).ifPresent(height -> {
            var lengths = Segments.of(height.standard(), sex(client));
            for (var segment : given(client).toList()) {
                lengths = lengths.with(segment, client.fields("segments").amount(segment.word()).orElseThrow().standard());
            }
            double sum = lengths.standing();
            if (Math.abs(sum / height.standard() - 1) > APART) {
                found.accept(Notice.warning("segments-against-height", ClientSection.span(client, "segments"),
                        "ankle height, shank, thigh, trunk, neck and head add up to " + Digits.of(sum, height.unit()) + ", but the height is "
                                + Digits.of(height.standard(), height.unit()), "measure the ones that are missing too, or check the height"));
            }
        });
    }

    static Body body(Written.Fields client) {
        var segments = client.fields("segments");
        var measured = new TreeMap<Segment, Length>();
        given(client).forEach(segment -> measured.put(segment, Length.ofMetres(segments.amount(segment.word()).orElseThrow().standard())));
        return new Body(segments.text("model").map(ClientSection::upper).map(SegmentTable::valueOf).orElse(SegmentTable.WINTER), measured);
    }

    private static Stream<Segment> given(Written.Fields client) {
        return Stream.of(Segment.values()).filter(segment -> client.fields("segments").amount(segment.word()).isPresent());
    }

    private static Sex sex(Written.Fields client) {
        return client.text("sex").map(ClientSection::upper).map(Sex::valueOf).orElse(Sex.UNSTATED);
    }
}
