package org.benchleaf.read;

import java.util.EnumMap;
import java.util.Map;
import org.benchleaf.model.ClassWork;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.QuantityReader;

/** Reads how long the bench work of a class usually takes. */
public final class ClassWorkReader {

    private static final String FILE = "/reference/class-work.yaml";

    private ClassWorkReader() {
    }

    /**
     * The usual time of every kind of work.
     *
     * @throws IllegalStateException if our own table lacks one
     */
    public static Map<ClassWork, Quantity> usual() {
        Map<ClassWork, Quantity> usual = new EnumMap<>(ClassWork.class);
        for (OwnYaml row : OwnYaml.list(FILE)) {
            row.text("source");
            usual.put(ClassWork.of(row.text("name")).orElseThrow(),
                    QuantityReader.read(row.text("takes"), Dimension.TIME).quantity().orElseThrow());
        }
        if (usual.size() < ClassWork.values().length) {
            throw new IllegalStateException(FILE + " has no time for some work: " + usual.keySet());
        }
        return usual;
    }
}
