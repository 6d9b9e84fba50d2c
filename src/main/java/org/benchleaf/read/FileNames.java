package org.benchleaf.read;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Place;
import org.benchleaf.message.PortableName;
import org.benchleaf.message.ReadingMessages;

/** Looks at the names of the files of one folder: whether another machine can hold them, each and beside each other. */
final class FileNames {

    private FileNames() {
    }

    static void look(ContentFolder content, List<Path> files, Messages messages) {
        Map<String, String> folded = new HashMap<>();
        for (Path file : files) {
            String name = file.getFileName().toString();
            String other = folded.putIfAbsent(PortableName.folded(name), name);
            Optional.ofNullable(other).flatMap(earlier -> PortableName.fault(name, earlier)).or(() -> PortableName.fault(name))
                    .ifPresent(reason -> messages.add(ReadingMessages.FILE_NAME.at(Place.file(content.name(file)),
                    "name", name, "reason", reason, "most", PortableName.LONGEST)));
        }
    }
}
