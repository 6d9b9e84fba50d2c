package org.benchleaf.publish;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.exif.ExifIFD0Directory;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.awt.image.ColorConvertOp;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.WritableRaster;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.InflaterInputStream;
import javax.imageio.IIOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.event.IIOReadWarningListener;
import javax.imageio.stream.ImageInputStream;
import org.benchleaf.message.Messages;
import org.benchleaf.message.PictureMessages;
import org.benchleaf.model.Picture;

/** Opens the file of a picture: looks at its head first, and decodes it only if it is what it should be. */
final class PictureReader {

    static final long MOST_BYTES = 200_000_000;
    static final long MOST_DOTS = 100_000_000;
    /** So many dots are kept in memory; more are thinned out while decoding. */
    private static final long DOTS_IN_MEMORY = 30_000_000;
    private static final int HEAD = 512;

    /**
     * What the head of a file says.
     *
     * @param file where it is
     * @param kind what it holds
     * @param width in dots as stored
     * @param height in dots as stored
     * @param orientation how it must be turned, 1 to 8 (Exif 2.32, table of tag 274)
     */
    record Head(Path file, PictureKind kind, int width, int height, int orientation) {

        /** Whether width and height change places when it is turned. */
        boolean isOnItsSide() {
            return orientation >= 5;
        }
    }

    private PictureReader() {
    }

    /** The head of a picture's file; empty, with a message, if it cannot be used. */
    static Optional<Head> head(Path folder, Picture picture, int widest, Messages messages) {
        try {
            Optional<Path> file = file(folder, picture, messages);
            if (file.isEmpty()) {
                return Optional.empty();
            }
            long bytes = Files.size(file.get());
            if (bytes > MOST_BYTES) {
                messages.add(PictureMessages.TOO_LARGE.at(picture.place(), "file", picture.file(), "picture",
                        picture.id(), "size", bytes / 1_000_000 + " MB", "widest", widest));
                return Optional.empty();
            }
            PictureKind kind = kind(file.get());
            if (!kind.isReadable()) {
                messages.add(PictureMessages.NOT_A_PICTURE.at(picture.place(), "file", picture.file(), "picture",
                        picture.id(), "found", kind.words()));
                return Optional.empty();
            }
            Optional<String> labour = PictureLabour.found(file.get(), kind);
            if (labour.isPresent()) {
                messages.add(PictureMessages.TOO_LABORIOUS.at(picture.place(), "file", picture.file(), "picture",
                        picture.id(), "found", labour.get()));
                return Optional.empty();
            }
            return measured(file.get(), kind, picture, widest, messages);
        } catch (IOException broken) {
            throw new UncheckedIOException("the picture " + folder.resolve(picture.file()) + " cannot be read", broken);
        }
    }

    /** The picture's dots, thinned out if there are very many, in the colours of a screen; empty with a message if broken. */
    static Optional<BufferedImage> dots(Head head, Picture picture, Messages messages) {
        List<String> warnings = new ArrayList<>();
        try (ImageInputStream stream = ImageIO.createImageInputStream(head.file().toFile())) {
            ImageReader reader = reader(head.kind());
            try {
                reader.setInput(stream, true, true);
                reader.addIIOReadWarningListener((IIOReadWarningListener) (source, warning) -> warnings.add(warning));
                ImageReadParam param = reader.getDefaultReadParam();
                int step = step(head);
                param.setSourceSubsampling(step, step, 0, 0);
                BufferedImage image = reader.read(0, param);
                if (warnings.stream().anyMatch(PictureReader::isLoss)) {
                    return broken(picture, "its end is missing or damaged", messages);
                }
                return isOfInks(image) ? colours(picture, messages) : Optional.of(inScreenColours(image, head));
            } finally {
                reader.dispose();
            }
        } catch (IIOException unreadable) {
            if (String.valueOf(unreadable.getMessage()).contains("Unsupported Image Type")) {
                return colours(picture, messages);
            }
            return broken(picture, "its dots cannot be decoded", messages);
        } catch (IOException | RuntimeException unreadable) {
            // Decoders throw all sorts of things at damaged files; whatever it is, the file is at fault.
            return broken(picture, "its dots cannot be decoded", messages);
        }
    }

    private static Optional<Path> file(Path folder, Picture picture, Messages messages) throws IOException {
        String name = picture.file();
        if (name.isBlank() || name.startsWith(".") || name.matches("(?s).*[/\\\\:\\x00].*")) {
            messages.add(PictureMessages.FILE_ELSEWHERE.at(picture.place(), "picture", picture.id(), "file", name));
            return Optional.empty();
        }
        Path file = folder.resolve(name);
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            messages.add(PictureMessages.FILE_MISSING.at(picture.place(), "picture", picture.id(), "file", name));
            return Optional.empty();
        }
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) || leadsOut(folder)) {
            messages.add(PictureMessages.FILE_ELSEWHERE.at(picture.place(), "picture", picture.id(), "file", name));
            return Optional.empty();
        }
        return Optional.of(file);
    }

    /** Whether the folder of pictures is a link to a place outside the folder of its case. */
    private static boolean leadsOut(Path folder) throws IOException {
        Path real = folder.toRealPath();
        return !real.startsWith(folder.toAbsolutePath().getParent().toRealPath());
    }

    private static PictureKind kind(Path file) throws IOException {
        try (InputStream stream = Files.newInputStream(file)) {
            return PictureKind.of(stream.readNBytes(HEAD));
        }
    }

    private static Optional<Head> measured(Path file, PictureKind kind, Picture picture, int widest,
            Messages messages) {
        try (ImageInputStream stream = ImageIO.createImageInputStream(file.toFile())) {
            ImageReader reader = reader(kind);
            try {
                reader.setInput(stream, true, true);
                int width = reader.getWidth(0);
                int height = reader.getHeight(0);
                if (width < 1 || height < 1) {
                    broken(picture, "it says that it has no dots", messages);
                    return Optional.empty();
                }
                if ((long) width * height > MOST_DOTS) {
                    messages.add(PictureMessages.TOO_LARGE.at(picture.place(), "file", picture.file(), "picture",
                            picture.id(), "size", width + " × " + height + " dots", "widest", widest));
                    return Optional.empty();
                }
                return Optional.of(new Head(file, kind, width, height, orientation(file)));
            } finally {
                reader.dispose();
            }
        } catch (IOException | RuntimeException unreadable) {
            broken(picture, "its head cannot be read", messages);
            return Optional.empty();
        }
    }

    private static Optional<BufferedImage> broken(Picture picture, String problem, Messages messages) {
        messages.add(PictureMessages.BROKEN.at(picture.place(), "file", picture.file(), "picture", picture.id(),
                "problem", problem));
        return Optional.empty();
    }

    private static Optional<BufferedImage> colours(Picture picture, Messages messages) {
        messages.add(PictureMessages.COLOURS_UNKNOWN.at(picture.place(), "file", picture.file(), "picture",
                picture.id()));
        return Optional.empty();
    }

    /** Whether the dots are four inks without a profile: Java would guess at their colours, and often invert them. */
    private static boolean isOfInks(BufferedImage image) {
        ColorSpace colours = image.getColorModel().getColorSpace();
        return colours.getNumComponents() == 4 && !(colours instanceof ICC_ColorSpace);
    }

    private static ImageReader reader(PictureKind kind) {
        return ImageIO.getImageReadersByFormatName(kind.format()).next();
    }

    private static int orientation(Path file) {
        try {
            Optional<ExifIFD0Directory> exif = Optional.ofNullable(
                    ImageMetadataReader.readMetadata(file.toFile()).getFirstDirectoryOfType(ExifIFD0Directory.class));
            return exif.map(directory -> directory.getInteger(ExifIFD0Directory.TAG_ORIENTATION))
                    .filter(turn -> turn >= 1 && turn <= 8).orElse(1);
        } catch (ImageProcessingException | IOException | RuntimeException unreadable) {
            return 1;
        }
    }

    private static int step(Head head) {
        int step = 1;
        while ((long) (head.width() / step) * (head.height() / step) > DOTS_IN_MEMORY) {
            step++;
        }
        return step;
    }

    /** Warnings that mean lost dots; others speak of harmless oddities. */
    private static boolean isLoss(String warning) {
        return warning.contains("Premature end") || warning.contains("Corrupt") || warning.contains("runcated");
    }

    /** The JPEG, TIFF and WebP readers heed a profile by themselves; that of PNG does not. */
    private static BufferedImage inScreenColours(BufferedImage image, Head head) throws IOException {
        if (head.kind() != PictureKind.PNG || image.getColorModel().getNumColorComponents() != 3) {
            return image;
        }
        Optional<ICC_Profile> profile = profile(head.file());
        if (profile.isEmpty() || profile.get().getNumComponents() != 3) {
            return image;
        }
        return converted(image, new ICC_ColorSpace(profile.get()));
    }

    private static BufferedImage converted(BufferedImage image, ColorSpace from) {
        boolean alpha = image.getColorModel().hasAlpha();
        ComponentColorModel model = new ComponentColorModel(from, alpha, false,
                alpha ? java.awt.Transparency.TRANSLUCENT : java.awt.Transparency.OPAQUE, DataBuffer.TYPE_BYTE);
        WritableRaster raster = model.createCompatibleWritableRaster(image.getWidth(), image.getHeight());
        int[] row = new int[image.getWidth()];
        byte[] samples = new byte[row.length * raster.getNumBands()];
        for (int y = 0; y < image.getHeight(); y++) {
            image.getRGB(0, y, row.length, 1, row, 0, row.length);
            int at = 0;
            for (int dot : row) {
                samples[at++] = (byte) (dot >> 16);
                samples[at++] = (byte) (dot >> 8);
                samples[at++] = (byte) dot;
                if (alpha) {
                    samples[at++] = (byte) (dot >> 24);
                }
            }
            raster.setDataElements(0, y, row.length, 1, samples);
        }
        BufferedImage tagged = new BufferedImage(model, raster, false, null);
        BufferedImage screen = new BufferedImage(image.getWidth(), image.getHeight(),
                alpha ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB);
        return new ColorConvertOp(null).filter(tagged, screen);
    }

    private static Optional<ICC_Profile> profile(Path png) throws IOException {
        try (InputStream stream = Files.newInputStream(png)) {
            stream.skipNBytes(8);
            while (true) {
                byte[] head = stream.readNBytes(8);
                if (head.length < 8) {
                    return Optional.empty();
                }
                int length = (head[0] & 0x7F) << 24 | (head[1] & 0xFF) << 16 | (head[2] & 0xFF) << 8 | head[3] & 0xFF;
                String name = new String(head, 4, 4, StandardCharsets.ISO_8859_1);
                if (name.equals("iCCP")) {
                    return inflated(stream.readNBytes(length));
                }
                if (name.equals("IDAT") || name.equals("IEND")) {
                    return Optional.empty();
                }
                stream.skipNBytes(length + 4L);
            }
        }
    }

    private static Optional<ICC_Profile> inflated(byte[] body) throws IOException {
        int name = 0;
        while (name < body.length && body[name] != 0) {
            name++;
        }
        if (name + 2 >= body.length) {
            return Optional.empty();
        }
        try (InputStream stream = new InflaterInputStream(
                new ByteArrayInputStream(body, name + 2, body.length - name - 2))) {
            return Optional.of(ICC_Profile.getInstance(stream.readNBytes(4_000_000)));
        } catch (IllegalArgumentException unusable) {
            return Optional.empty();
        }
    }
}
