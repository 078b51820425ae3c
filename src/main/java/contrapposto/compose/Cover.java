package contrapposto.compose;

import contrapposto.notice.Outcome;
import contrapposto.prescribe.Plan;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The few words of a message that carries a handout, from {@code mail.ftlx}. Templates see who writes to whom, nothing
 * of the plan, so that no health fact can get in.
 */
public record Cover(String subject, List<String> lines) {
    public Cover {
        lines = List.copyOf(lines);
    }

    /** In the client's language. @param locked whether the handout has a password, which comes by another way */
    public static Outcome<Cover> of(Templates templates, Plan plan, boolean locked) {
        var words = PlanWords.of(plan);
        String template = words.language() + "/mail.ftlx";
        var practice = plan.spec().practice();
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("name", plan.spec().client().name());
        model.put("practice", practice.name());
        model.put("preparedBy", practice.preparedBy());
        model.put("contact", practice.contact());
        model.put("locked", locked);
        return templates.run(template, model).then(xml -> MarkupParser.parse(xml, template)).then(root -> {
            var slips = new Slips();
            slips.allow(root, "subject");
            var cover = new Cover(slips.required(root, "subject"), root.elements("line").stream().map(line -> InlineReader.text(line, slips).strip())
                    .filter(line -> !line.isEmpty()).toList());
            return Outcome.of(cover, slips.found());
        });
    }
}
