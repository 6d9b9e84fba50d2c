package org.benchleaf.publish;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/** Puts into picture files what cameras and programs put there. */
public final class HiddenData {

    private HiddenData() {
    }

    /** The JPEG with a segment put in directly behind its start. */
    public static byte[] segment(byte[] jpeg, int marker, byte[] body) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(jpeg, 0, 2);
        out.write(0xFF);
        out.write(marker);
        out.write((body.length + 2) >> 8);
        out.write(body.length + 2);
        out.writeBytes(body);
        out.write(jpeg, 2, jpeg.length - 2);
        return out.toByteArray();
    }

    /** A JPEG comment. */
    public static byte[] comment(byte[] jpeg, String text) {
        return segment(jpeg, 0xFE, text.getBytes(StandardCharsets.UTF_8));
    }

    /** An XMP packet with these lines inside its description (ISO 16684-1). */
    public static byte[] xmp(byte[] jpeg, String inner) {
        return segment(jpeg, 0xE1, ("http://ns.adobe.com/xap/1.0/\0<x:xmpmeta xmlns:x='adobe:ns:meta/'><rdf:RDF "
                + "xmlns:rdf='http://www.w3.org/1999/02/22-rdf-syntax-ns#'><rdf:Description rdf:about=''>" + inner
                + "</rdf:Description></rdf:RDF></x:xmpmeta>").getBytes(StandardCharsets.UTF_8));
    }

    /** One IPTC dataset of record 2 (IPTC IIM 4.2), inside a Photoshop block. */
    public static byte[] iptc(byte[] jpeg, int dataset, String text) {
        byte[] value = text.getBytes(StandardCharsets.UTF_8);
        ByteBuffer iim = ByteBuffer.allocate(5 + value.length + value.length % 2);
        iim.put((byte) 0x1C).put((byte) 2).put((byte) dataset).putShort((short) value.length).put(value);
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        body.writeBytes("Photoshop 3.0\0008BIM\4\4\0\0".getBytes(StandardCharsets.ISO_8859_1));
        body.writeBytes(ByteBuffer.allocate(4).putInt(5 + value.length).array());
        body.writeBytes(iim.array());
        return segment(jpeg, 0xED, body.toByteArray());
    }

    /** One entry of the first Exif directory: orientation is tag 274, artist 315, body serial number lies in another. */
    public static byte[] exif(byte[] jpeg, int orientation, String artist, String serial, String place) {
        List<byte[]> entries = new ArrayList<>();
        ByteArrayOutputStream heap = new ByteArrayOutputStream();
        int heapAt = 8 + 2 + 4 * 12 + 4;
        entries.add(entry(270, place, heap, heapAt));
        entries.add(shortEntry(274, orientation));
        entries.add(entry(315, artist, heap, heapAt));
        entries.add(entry(42033, serial, heap, heapAt));
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        body.writeBytes("Exif\0\0MM\0*\0\0\0\10".getBytes(StandardCharsets.ISO_8859_1));
        body.writeBytes(new byte[] {0, 4});
        entries.forEach(body::writeBytes);
        body.writeBytes(new byte[4]);
        body.writeBytes(heap.toByteArray());
        return segment(jpeg, 0xE1, body.toByteArray());
    }

    private static byte[] shortEntry(int tag, int value) {
        return ByteBuffer.allocate(12).putShort((short) tag).putShort((short) 3).putInt(1).putShort((short) value).array();
    }

    private static byte[] entry(int tag, String text, ByteArrayOutputStream heap, int heapAt) {
        byte[] value = (text + "\0\0\0\0").getBytes(StandardCharsets.UTF_8);
        byte[] entry = ByteBuffer.allocate(12).putShort((short) tag).putShort((short) 2).putInt(value.length)
                .putInt(heapAt + heap.size()).array();
        heap.writeBytes(value);
        return entry;
    }

    /** An ICC profile in its JPEG segment (ICC.1:2010, annex B.4). */
    public static byte[] profile(byte[] jpeg, byte[] profile) {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        body.writeBytes("ICC_PROFILE\0\1\1".getBytes(StandardCharsets.ISO_8859_1));
        body.writeBytes(profile);
        return segment(jpeg, 0xE2, body.toByteArray());
    }

    /** The PNG with a chunk put in behind its head. */
    public static byte[] chunk(byte[] png, String name, byte[] body) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(png, 0, 33);
        out.writeBytes(ByteBuffer.allocate(4).putInt(body.length).array());
        byte[] typed = concat(name.getBytes(StandardCharsets.ISO_8859_1), body);
        out.writeBytes(typed);
        CRC32 crc = new CRC32();
        crc.update(typed);
        out.writeBytes(ByteBuffer.allocate(4).putInt((int) crc.getValue()).array());
        out.write(png, 33, png.length - 33);
        return out.toByteArray();
    }

    /** Bytes with a keyword before them, packed as in zTXt and iCCP chunks. */
    public static byte[] packed(String keyword, byte[] value) {
        Deflater deflater = new Deflater();
        deflater.setInput(value);
        deflater.finish();
        byte[] room = new byte[value.length + 100];
        int length = deflater.deflate(room);
        deflater.end();
        return concat((keyword + "\0\0").getBytes(StandardCharsets.ISO_8859_1), java.util.Arrays.copyOf(room, length));
    }

    private static byte[] concat(byte[] a, byte[] b) {
        return ByteBuffer.allocate(a.length + b.length).put(a).put(b).array();
    }
}
