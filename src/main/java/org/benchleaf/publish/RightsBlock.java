package org.benchleaf.publish;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;

/** Writes credit and licence into a JPEG file, as the only words that it carries. */
final class RightsBlock {

    private static final String HEAD = "http://ns.adobe.com/xap/1.0/\0";

    private RightsBlock() {
    }

    /** The same JPEG with a block of XMP (ISO 16684-1) behind its first block. */
    static byte[] into(byte[] jpeg, String credit, String licence) {
        byte[] packet = (HEAD + "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">"
                + "<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">"
                + "<rdf:Description rdf:about=\"\" xmlns:dc=\"http://purl.org/dc/elements/1.1/\""
                + " xmlns:photoshop=\"http://ns.adobe.com/photoshop/1.0/\">"
                + "<dc:rights><rdf:Alt><rdf:li xml:lang=\"x-default\">" + escaped(licence)
                + "</rdf:li></rdf:Alt></dc:rights>"
                + "<photoshop:Credit>" + escaped(credit) + "</photoshop:Credit>"
                + "</rdf:Description></rdf:RDF></x:xmpmeta>").getBytes(StandardCharsets.UTF_8);
        int after = 4 + ((jpeg[4] & 0xFF) << 8 | jpeg[5] & 0xFF);
        int length = packet.length + 2;
        ByteArrayOutputStream out = new ByteArrayOutputStream(jpeg.length + length + 2);
        out.write(jpeg, 0, after);
        out.write(0xFF);
        out.write(0xE1);
        out.write(length >> 8);
        out.write(length);
        out.writeBytes(packet);
        out.write(jpeg, after, jpeg.length - after);
        return out.toByteArray();
    }

    private static String escaped(String text) {
        String shortened = text.length() > 4000 ? text.substring(0, 4000) : text;
        return shortened.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")
                .replace("\"", "&quot;").replace("'", "&#39;");
    }
}
