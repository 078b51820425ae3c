package contrapposto.assess;

import contrapposto.assess.Reason.Source;
import contrapposto.body.Segments;
import contrapposto.check.CheckedSpec.Client;
import contrapposto.wording.Said;
import java.util.ArrayList;
import java.util.List;

/** Which body the poses are solved for: the published table, and each length that was measured instead. */
final class Bodies {
    private Bodies() { }

    static List<Reason> of(Client client) {
        var reasons = new ArrayList<Reason>();
        reasons.add(switch (client.body().table()) {
            case WINTER -> new Reason("body", Said.of("body/winter"), Source.PUBLISHED, "C2");
            case DE_LEVA_MALE -> new Reason("body", Said.of("body/de-leva-male"), Source.PUBLISHED, "C4");
            case DE_LEVA_FEMALE -> new Reason("body", Said.of("body/de-leva-female"), Source.PUBLISHED, "C5");
        });
        var usual = Segments.of(client.height().metres(), client.sex());
        client.body().measured().forEach((segment, length) -> reasons.add(Reason.of("body", Said.of("body/measured")
                .word("segment", segment.word()).length("value", length.metres()).length("usual", usual.of(segment)), Source.COACH)));
        return List.copyOf(reasons);
    }
}
