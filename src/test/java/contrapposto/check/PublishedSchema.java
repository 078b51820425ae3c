package contrapposto.check;

import static contrapposto.spec.SchemaTree.anyOf;
import static contrapposto.spec.SchemaTree.firstMarked;
import static contrapposto.spec.SchemaTree.list;
import static contrapposto.spec.SchemaTree.map;
import static contrapposto.spec.SchemaTree.node;
import static contrapposto.spec.SchemaTree.optional;
import static contrapposto.spec.SchemaTree.pairs;
import static contrapposto.spec.SchemaTree.required;
import static contrapposto.spec.SchemaTree.text;
import static contrapposto.spec.SchemaTree.whole;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import contrapposto.catalogue.CatalogueSchemas;
import contrapposto.spec.JsonSchema;
import contrapposto.spec.KeyPaths;
import contrapposto.spec.SchemaTree;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/**
 * The one schema of every file a practice may write: spec, return, pack, house rules, family and its words. A key that only
 * one kind has tells the file's kind; a file without any is a spec. Validated by a library over a YAML 1.2 parser, neither of them ours.
 */
public final class PublishedSchema {
    public static final Path FILE = Path.of("docs/program.schema.json");
    private static final List<String> MARKS = List.of("pack", "bands", "levers", "mistakes", "families", "log", "days");

    private PublishedSchema() { }

    /** As the readers' tables and words make it. */
    static Map<String, Object> made(List<String> exercises) {
        var schema = node("$schema", "https://json-schema.org/draft/2020-12/schema", "title", "Contrapposto: spec, return, pack, house rules, family, words");
        schema.putAll(firstMarked(List.of("pack", "house-rules", "family", "words", "index", "return", "return", "spec"), MARKS));
        var kinds = new LinkedHashMap<String, Object>();
        kinds.put("spec", JsonSchema.of(ProgramKeys.TABLE, exercises));
        kinds.put("return", JsonSchema.of(ReturnKeys.TABLE, exercises));
        kinds.put("pack", pack());
        kinds.put("house-rules", CatalogueSchemas.houseRules());
        kinds.put("family", CatalogueSchemas.family());
        kinds.put("words", CatalogueSchemas.familyWords());
        kinds.put("index", map(required("families", list(text()), "ids in the order of the catalogue"), required("languages", list(text()), "the first is spoken by all")));
        schema.put("$defs", kinds);
        return schema;
    }

    private static Map<String, Object> pack() {
        var paths = new LinkedHashSet<String>();
        for (var path : KeyPaths.all(ProgramKeys.TABLE)) {
            for (int dot = path.indexOf('.'); dot > 0; dot = path.indexOf('.', dot + 1)) {
                paths.add(path.substring(0, dot));
            }
            paths.add(path);
        }
        var changes = map(paths.stream().map(path -> optional(path, node("$ref", "#/$defs/spec/properties/" + path.replace(".", "/properties/")),
                "instead of the spec's")).toArray(SchemaTree.Entry[]::new));
        changes.put("minProperties", 1);
        return map(required("pack", node("const", 1), "the version of this file format"), optional("title", text(), "what the set is called"),
                optional("number", anyOf(List.of(text(PackReader.NUMBER.pattern()), whole())), "how the numbers of the handouts begin"),
                required("spec", text(), "the file to start from, beside the pack"),
                required("vary", pairs(node("type", "string"), pairs(node("type", "string"), changes)), "axis, value, changes: every combination becomes a handout"));
    }

    /** What an editor would say about {@code text} by the published schema. */
    public static List<String> refusals(String text) {
        var tree = new ObjectMapper().<JsonNode>valueToTree(new Load(LoadSettings.builder().build()).loadFromString(text));
        return Validator.SCHEMA.validate(tree, context -> context.getExecutionConfig().setFormatAssertionsEnabled(true)).stream()
                .map(said -> said.getInstanceLocation() + " " + said.getMessage()).toList();
    }

    /** Read once, when first asked. */
    private static final class Validator {
        static final com.networknt.schema.JsonSchema SCHEMA = read();

        private static com.networknt.schema.JsonSchema read() {
            try {
                return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(Files.readString(FILE));
            } catch (IOException unreadable) {
                throw new java.io.UncheckedIOException(unreadable);
            }
        }
    }
}
