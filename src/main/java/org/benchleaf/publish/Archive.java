package org.benchleaf.publish;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Packs files into a zip archive: sorted and under one fixed time, so that the same files give the same bytes. */
final class Archive {

    /** Early in what the format can tell; at its very first moment Java would add a time that depends on the zone. */
    private static final LocalDateTime TIME = LocalDateTime.of(1980, 2, 1, 0, 0);

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final ZipOutputStream zip = new ZipOutputStream(bytes);

    private Archive() {
    }

    /** An archive of these files. */
    static byte[] of(List<SiteFile> files) {
        return new Archive().packed(files);
    }

    /** An archive that begins with a file as it is, by which programs tell what the archive is. */
    static byte[] of(SiteFile mark, List<SiteFile> files) {
        Archive archive = new Archive();
        ZipEntry entry = entry(mark);
        CRC32 sum = new CRC32();
        sum.update(mark.bytes());
        entry.setMethod(ZipEntry.STORED);
        entry.setSize(mark.bytes().length);
        entry.setCrc(sum.getValue());
        archive.put(entry, mark.bytes());
        return archive.packed(files);
    }

    private byte[] packed(List<SiteFile> files) {
        files.stream().sorted(Comparator.comparing(SiteFile::path)).forEach(file -> put(entry(file), file.bytes()));
        try {
            zip.close();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    private static ZipEntry entry(SiteFile file) {
        ZipEntry entry = new ZipEntry(file.path());
        entry.setTimeLocal(TIME);
        return entry;
    }

    private void put(ZipEntry entry, byte[] content) {
        try {
            zip.putNextEntry(entry);
            zip.write(content);
            zip.closeEntry();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }
}
