package org.benchleaf.command;

import java.util.LinkedHashMap;
import java.util.Map;
import org.benchleaf.message.Message;

/** Puts a message into the keys under which {@code check --format json} prints it. */
final class MessageData {

    private MessageData() {
    }

    static Map<String, Object> of(Message message) {
        Map<String, Object> data = new LinkedHashMap<>();
        data.put("code", message.code());
        data.put("severity", message.severity().word());
        data.put("file", message.place().file());
        data.put("line", message.place().line());
        data.put("column", message.place().column());
        data.put("pointer", message.place().pointer());
        data.put("what", message.what());
        data.put("why", message.why());
        data.put("fix", message.fix());
        return data;
    }
}
