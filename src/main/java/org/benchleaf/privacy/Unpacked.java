package org.benchleaf.privacy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.zip.GZIPInputStream;
import java.util.zip.InflaterInputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/** What lies packed inside a file: the entries of an archive, the compressed texts of a picture, the pictures in a page. */
final class Unpacked {

    private static final int MOST = 50_000_000;

    /** One packed thing: its name and what it holds. */
    record Inner(String name, byte[] bytes) {
    }

    private Unpacked() {
    }

    /** The packed things of a file, not those packed once more inside them; empty for most files. */
    static List<Inner> of(byte[] bytes) {
        try {
            if (starts(bytes, 'P', 'K', 3, 4)) {
                return archive(bytes);
            }
            if (starts(bytes, 0x1F, 0x8B)) {
                return List.of(new Inner("", read(new GZIPInputStream(new ByteArrayInputStream(bytes)))));
            }
            if (starts(bytes, 0x89, 'P', 'N', 'G')) {
                return texts(bytes);
            }
            return PictureData.of(bytes).stream().map(picture -> new Inner("", picture)).toList();
        } catch (IOException broken) {
            // What cannot be unpacked is still searched as it stands.
            return List.of();
        }
    }

    private static List<Inner> archive(byte[] bytes) throws IOException {
        List<Inner> inner = new ArrayList<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                inner.add(new Inner(entry.getName(), read(zip)));
            }
        }
        return inner;
    }

    private static List<Inner> texts(byte[] bytes) throws IOException {
        List<Inner> inner = new ArrayList<>();
        for (PictureBlocks.Block block : PictureBlocks.of(bytes)) {
            byte[] body = Arrays.copyOfRange(bytes, block.from(), block.to());
            int start = block.name().equals("zTXt") ? indexOfZero(body, 0) + 2
                    : block.name().equals("iTXt") ? afterLanguage(body) : -1;
            if (start > 0 && start < body.length) {
                inner.add(new Inner(block.name(),
                        read(new InflaterInputStream(new ByteArrayInputStream(body, start, body.length - start)))));
            }
        }
        return inner;
    }

    /** The start of the compressed text of an iTXt block; -1 if it is not compressed. */
    private static int afterLanguage(byte[] body) {
        int keyword = indexOfZero(body, 0);
        if (keyword < 0 || keyword + 3 >= body.length || body[keyword + 1] != 1) {
            return -1;
        }
        return indexOfZero(body, indexOfZero(body, keyword + 3) + 1) + 1;
    }

    private static int indexOfZero(byte[] body, int from) {
        for (int at = Math.max(0, from); at < body.length; at++) {
            if (body[at] == 0) {
                return at;
            }
        }
        return body.length;
    }

    private static byte[] read(InputStream stream) throws IOException {
        return stream.readNBytes(MOST);
    }

    private static boolean starts(byte[] bytes, int... head) {
        for (int at = 0; at < head.length; at++) {
            if (bytes.length <= at || (bytes[at] & 0xFF) != head[at]) {
                return false;
            }
        }
        return true;
    }
}
