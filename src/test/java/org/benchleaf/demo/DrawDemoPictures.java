package org.benchleaf.demo;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/** Writes every drawn picture of the demo into its case's folder: {@code mvn -q test-compile exec:java -Pdrawings}. */
public final class DrawDemoPictures {
    private static final int LONG_SIDE = 1600;
    private static final int LARGEST_FILE = 340_000;

    private DrawDemoPictures() {
    }

    /** Draws all pictures, or only those whose folder or name contains the first argument. */
    public static void main(String[] args) throws IOException {
        System.setProperty("java.awt.headless", "true");
        Path cases = Path.of("content", "cases");
        for (Picture picture : all()) {
            String id = picture.caseFolder() + "/" + picture.name();
            if (args.length == 0 || id.contains(args[0])) {
                Path folder = cases.resolve(picture.caseFolder()).resolve("pictures");
                Files.createDirectories(folder);
                byte[] jpeg = jpeg(picture.drawn(LONG_SIDE));
                Files.write(folder.resolve(picture.name() + ".jpg"), jpeg);
                System.out.println(id + ".jpg, " + jpeg.length / 1000 + " kB");
            }
        }
    }

    static List<Picture> all() {
        return Stream.of(TideTable.pictures(), FerryLetter.pictures(), LockPlan.pictures(), ParishMap.pictures(),
                FloodPoster.pictures()).flatMap(List::stream).toList();
    }

    /** Gives the JPEG bytes, at the best quality that keeps a page light. */
    private static byte[] jpeg(BufferedImage image) throws IOException {
        byte[] bytes = jpeg(image, 0.88f);
        for (float quality = 0.85f; bytes.length > LARGEST_FILE; quality -= 0.03f) {
            bytes = jpeg(image, quality);
        }
        return bytes;
    }

    private static byte[] jpeg(BufferedImage image, float quality) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
            writer.setOutput(out);
            ImageWriteParam how = writer.getDefaultWriteParam();
            how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            how.setCompressionQuality(quality);
            writer.write(null, new IIOImage(image, null, null), how);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
