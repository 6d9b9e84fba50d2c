package org.benchleaf.json;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** A JSON Schema by which values are judged. Source: JSON Schema, draft 2020-12. */
public final class JsonSchema {

    /** One for all schemas, so that what JSON Schema is made of is read once. */
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    private final Schema schema;

    /** Makes a schema of its description. */
    public JsonSchema(JsonTree description) {
        schema = REGISTRY.getSchema(description.node());
    }

    /** Everything in a value that does not fit; empty if it fits. */
    public List<Misfit> misfits(JsonTree value) {
        return schema.validate(value.node()).stream().map(JsonSchema::misfit).toList();
    }

    private static Misfit misfit(Error error) {
        List<String> way = IntStream.range(0, error.getInstanceLocation().getNameCount())
                .mapToObj(at -> error.getInstanceLocation().getElement(at).toString()).toList();
        return new Misfit(error.getKeyword(), way, Optional.ofNullable(error.getProperty()),
                Optional.ofNullable(error.getInstanceNode()).map(JsonTree::new));
    }

    /**
     * One thing that does not fit.
     *
     * @param keyword the keyword of the schema that it breaks
     * @param way names and places that lead to the value
     * @param property the key that is meant, where it is about one
     * @param value what stands there
     */
    public record Misfit(String keyword, List<String> way, Optional<String> property, Optional<JsonTree> value) {
    }
}
