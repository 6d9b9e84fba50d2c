package org.benchleaf.publish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.xmp.XmpDirectory;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.plugins.tiff.TIFFDirectory;
import javax.imageio.plugins.tiff.TIFFField;
import javax.imageio.plugins.tiff.TIFFTag;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.benchleaf.message.Message;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Place;
import org.benchleaf.model.Picture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PictureMakerTest {

    @TempDir
    private Path folder;

    private final Messages messages = new Messages();

    @ParameterizedTest
    @CsvSource({"2400, 480 960 1600", "1600, 480 960 1600", "1000, 480 1000", "700, 480 700", "500, 500", "120, 120"})
    void a_picture_comes_in_the_widths_needed_and_is_never_made_wider(int own, String widths) throws IOException {
        List<PictureFile> files = made(jpeg(plain(own, own / 2, Color.GRAY)));

        assertThat(files).extracting(PictureFile::width)
                .containsExactly(Arrays.stream(widths.split(" ")).map(Integer::valueOf).toArray(Integer[]::new));
        assertThat(files).allSatisfy(file -> {
            BufferedImage image = ImageIO.read(new ByteArrayInputStream(file.file().bytes()));
            assertThat(image.getWidth()).isEqualTo(file.width());
            assertThat(image.getHeight()).isEqualTo(file.height()).isCloseTo(file.width() / 2, within(1));
            assertThat(file.file().path()).isEqualTo("cases/tide/pictures/before-" + file.width() + ".jpg");
        });
    }

    /** The sides on which row 0 and column 0 lie: Exif 2.32 (JEITA CP-3451E), tag 274. */
    @ParameterizedTest
    @CsvSource({"1, top, left", "2, top, right", "3, bottom, right", "4, bottom, left", "5, left, top",
        "6, right, top", "7, right, bottom", "8, left, bottom"})
    void a_picture_is_turned_as_the_camera_says(int orientation, String firstRow, String firstColumn)
            throws IOException {
        BufferedImage stored = plain(400, 200, Color.WHITE);
        Graphics2D pen = stored.createGraphics();
        pen.setColor(Color.RED);
        pen.fillRect(0, 0, 400, 60);
        pen.setColor(Color.BLUE);
        pen.fillRect(0, 100, 100, 100);
        pen.dispose();

        BufferedImage upright = only(made(HiddenData.exif(jpeg(stored), orientation, "a", "b", "c")));

        boolean onItsSide = orientation >= 5;
        assertThat(upright.getWidth()).isEqualTo(onItsSide ? 200 : 400);
        // The red band lies along the first row, the blue patch at the first column and away from the first row.
        assertThat(dot(upright, firstRow, 0.1, opposite(firstColumn), 0.1)).isEqualTo("red");
        assertThat(dot(upright, firstRow, 0.1, firstColumn, 0.1)).isEqualTo("red");
        assertThat(dot(upright, opposite(firstRow), 0.2, firstColumn, 0.1)).isEqualTo("blue");
        assertThat(dot(upright, opposite(firstRow), 0.2, opposite(firstColumn), 0.3)).isEqualTo("white");
    }

    /** Half of the light is 188 of 255 on a screen: IEC 61966-2-1, 1.055 · 0.5^(1/2.4) − 0.055 = 0.7354. */
    @ParameterizedTest
    @ValueSource(strings = {"jpeg", "png", "tiff"})
    void colours_of_another_profile_become_those_of_a_screen(String format) throws IOException {
        byte[] linear = ICC_Profile.getInstance(ColorSpace.CS_LINEAR_RGB).getData();
        BufferedImage half = plain(64, 64, new Color(128, 128, 128));
        byte[] file = switch (format) {
            case "jpeg" -> HiddenData.profile(jpeg(half), linear);
            case "png" -> HiddenData.chunk(encoded(half, "png"), "iCCP", HiddenData.packed("linear", linear));
            default -> tiffWithProfile(half, linear);
        };

        int grey = only(made(file)).getRGB(32, 32) & 0xFF;

        assertThat(grey).isCloseTo(188, within(3));
    }

    @Test
    void what_is_transparent_becomes_white() throws IOException {
        BufferedImage clear = new BufferedImage(50, 50, BufferedImage.TYPE_INT_ARGB);

        assertThat(only(made(encoded(clear, "png"))).getRGB(25, 25) & 0xFF).isGreaterThan(250);
    }

    @Test
    void a_tiff_and_both_kinds_of_webp_are_read_by_what_they_hold() throws IOException {
        assertThat(made(encoded(plain(60, 40, Color.GREEN), "tiff"))).hasSize(1);
        // The one-dot files with which browsers are asked whether they know WebP, from memory.
        assertThat(made(Base64.getDecoder().decode("UklGRiIAAABXRUJQVlA4IBYAAAAwAQCdASoBAAEADsD+JaQAA3AAAAAA")))
                .hasSize(1);
        assertThat(made(Base64.getDecoder().decode("UklGRhoAAABXRUJQVlA4TA0AAAAvAAAAEAcQERGIiP4HAA==")))
                .hasSize(1);
        assertThat(messages.all()).isEmpty();
    }

    @Test
    void nothing_but_credit_and_licence_is_left_in_the_file() throws Exception {
        byte[] full = HiddenData.comment(HiddenData.iptc(HiddenData.xmp(HiddenData.exif(jpeg(plain(600, 400,
                Color.ORANGE)), 1, "An Artist", "SN-4711", "Bay 7"), "<dc:creator>An Artist</dc:creator>"), 80,
                "An Artist"), "An Artist");
        assertThat(ImageMetadataReader.readMetadata(new ByteArrayInputStream(full)).getDirectories())
                .extracting(Directory::getName).contains("Exif IFD0", "XMP", "IPTC", "JpegComment");

        for (PictureFile file : made(full)) {
            Metadata metadata = ImageMetadataReader.readMetadata(new ByteArrayInputStream(file.file().bytes()));

            assertThat(metadata.getDirectories()).extracting(Directory::getName)
                    .containsExactlyInAnyOrder("JPEG", "JFIF", "XMP", "Huffman", "File Type");
            assertThat(metadata.getFirstDirectoryOfType(XmpDirectory.class).getXmpProperties().values())
                    .contains("Drawn by \"A & B\" <demo>", "CC0-1.0");
            assertThat(new String(file.file().bytes(), StandardCharsets.ISO_8859_1))
                    .doesNotContain("Artist", "4711", "Bay");
        }
    }

    /** Chunks of text and of a camera's data: Portable Network Graphics, third edition (W3C 2025), 11.3. */
    @Test
    void a_png_of_sixteen_bits_a_colour_is_read_and_its_texts_stay_behind() throws Exception {
        BufferedImage deep = new BufferedImage(300, 200, BufferedImage.TYPE_USHORT_GRAY);
        for (int i = 0; i < 300 * 200; i++) {
            deep.getRaster().setSample(i % 300, i / 300, 0, 0x8080);
        }
        byte[] png = encoded(deep, "png");
        assertThat(png[24]).as("bits a sample").isEqualTo((byte) 16);
        byte[] exif = HiddenData.exif(jpeg(plain(9, 9, Color.RED)), 1, "An Artist", "SN-4711", "Bay 7");
        byte[] full = HiddenData.chunk(HiddenData.chunk(HiddenData.chunk(png, "tEXt", "Author\0An Artist".getBytes(
                StandardCharsets.ISO_8859_1)), "iTXt", "XML:com.adobe.xmp\0\0\0\0\0SN-4711".getBytes(
                StandardCharsets.ISO_8859_1)), "eXIf", Arrays.copyOfRange(exif, 12, 200));

        for (PictureFile file : made(full)) {
            assertThat(ImageMetadataReader.readMetadata(new ByteArrayInputStream(file.file().bytes())).getDirectories())
                    .extracting(Directory::getName).containsExactlyInAnyOrder("JPEG", "JFIF", "XMP", "Huffman", "File Type");
            assertThat(new String(file.file().bytes(), StandardCharsets.ISO_8859_1))
                    .doesNotContain("Artist", "4711", "Bay");
        }
        // 0x8080 of 65535 is 128 of 255: without a profile the samples are those of a screen.
        assertThat(only(made(full)).getRGB(150, 100) & 0xFF).isCloseTo(128, within(2));
    }

    @Test
    void the_same_picture_gives_the_same_bytes() throws IOException {
        byte[] noisy = jpeg(noise(900, 700, 3));

        List<PictureFile> once = made(noisy);
        List<PictureFile> again = made(HiddenData.comment(noisy, "copied on another day"));

        assertThat(again).hasSameSizeAs(once);
        for (int i = 0; i < once.size(); i++) {
            assertThat(again.get(i).file().bytes()).isEqualTo(once.get(i).file().bytes());
        }
    }

    @Test
    void a_picture_stays_below_the_budget_or_the_author_is_told() throws IOException {
        List<PictureFile> files = made(jpeg(noise(1600, 1600, 5)));

        boolean over = files.stream().anyMatch(file -> file.file().bytes().length > 250_000);
        assertThat(messages.all().stream().anyMatch(said -> said.code().equals("PICT-006"))).isEqualTo(over).isTrue();
        assertThat(made(jpeg(plain(1600, 1200, Color.PINK)))).allMatch(file -> file.file().bytes().length < 250_000);
    }

    @ParameterizedTest
    @CsvSource({"'<?xml version=\"1.0\"?><svg xmlns=\"http://www.w3.org/2000/svg\"/>', SVG", "%PDF-1.7, PDF",
        "GIF89a, GIF", "'', nothing", "just words, no picture"})
    void a_file_that_holds_no_such_picture_is_refused_whatever_its_name(String content, String found)
            throws IOException {
        assertThat(made(content.getBytes(StandardCharsets.UTF_8))).isEmpty();
        assertThat(messages.all()).singleElement().satisfies(said -> {
            assertThat(said.code()).isEqualTo("PICT-003");
            assertThat(said.what()).contains(found);
        });
    }

    @Test
    void a_claim_of_too_many_dots_is_refused_before_anything_is_decoded() throws IOException {
        byte[] png = encoded(plain(4, 4, Color.RED), "png");
        byte[] claim = HiddenData.chunk(png, "tEXt", new byte[0]);
        System.arraycopy(new byte[] {0, 0, (byte) 0xC3, 0x50, 0, 0, (byte) 0xC3, 0x50}, 0, claim, 16, 8);

        assertThat(made(claim)).isEmpty();
        assertThat(messages.all()).singleElement().satisfies(said -> {
            assertThat(said.code()).isEqualTo("PICT-004");
            assertThat(said.what()).contains("50000 × 50000");
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"jpeg", "png"})
    void a_file_cut_short_anywhere_is_a_message_and_never_an_exception(String format) throws IOException {
        byte[] whole = encoded(noise(200, 150, 9), format);
        Random random = new Random(11);
        for (int round = 0; round < 60; round++) {
            Messages told = new Messages();
            int length = 16 + random.nextInt(whole.length - 64);
            Files.write(folder.resolve("cut"), Arrays.copyOf(whole, length));

            assertThat(PictureMaker.make("tide", folder, picture("cut"), told)).as("cut at %d", length).isEmpty();
            assertThat(told.all()).extracting(Message::code).containsExactly("PICT-005");
        }
    }

    @Test
    void a_file_with_damaged_bytes_gives_files_or_a_message() throws IOException {
        byte[] whole = encoded(noise(120, 90, 2), "tiff");
        Random random = new Random(12);
        for (int round = 0; round < 200; round++) {
            byte[] damaged = whole.clone();
            for (int i = 0; i < 4; i++) {
                damaged[random.nextInt(Math.min(damaged.length, 400))] = (byte) random.nextInt();
            }
            Files.write(folder.resolve("damaged"), damaged);
            Messages told = new Messages();

            boolean made = !PictureMaker.make("tide", folder, picture("damaged"), told).isEmpty();
            assertThat(made || told.hasErrors()).isTrue();
        }
    }

    @Test
    void links_paths_and_missing_files_are_refused() throws IOException {
        Path secret = Files.write(folder.resolve("secret.jpg"), jpeg(plain(9, 9, Color.RED)));
        Path pictures = Files.createDirectory(folder.resolve("pictures"));
        Files.createSymbolicLink(pictures.resolve("link.jpg"), secret);
        Files.createDirectory(pictures.resolve("folder.jpg"));

        assertThat(codes(pictures, "link.jpg")).containsExactly("PICT-002");
        assertThat(codes(pictures, "../secret.jpg")).containsExactly("PICT-002");
        assertThat(codes(pictures, secret.toString())).containsExactly("PICT-002");
        assertThat(codes(pictures, "..\\secret.jpg")).containsExactly("PICT-002");
        assertThat(codes(pictures, "folder.jpg")).containsExactly("PICT-002");
        assertThat(codes(pictures, "nowhere.jpg")).containsExactly("PICT-001");
    }

    @Test
    void a_look_at_the_head_says_the_same_without_decoding() throws IOException {
        Files.write(folder.resolve("good"), jpeg(plain(30, 20, Color.BLUE)));
        Files.writeString(folder.resolve("bad"), "%PDF-1.4");

        assertThat(PictureMaker.look(folder, picture("good"), messages)).isTrue();
        assertThat(messages.isEmpty()).isTrue();
        assertThat(PictureMaker.look(folder, picture("bad"), messages)).isFalse();
        assertThat(messages.hasErrors()).isTrue();
    }

    private List<String> codes(Path pictures, String name) {
        Messages told = new Messages();
        assertThat(PictureMaker.make("tide", pictures, picture(name), told)).isEmpty();
        return told.all().stream().map(Message::code).toList();
    }

    private List<PictureFile> made(byte[] content) throws IOException {
        // A name that says nothing true about what the file holds.
        Files.write(folder.resolve("file.bmp"), content);
        return PictureMaker.make("tide", folder, picture("file.bmp"), messages);
    }

    private static BufferedImage only(List<PictureFile> files) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(files.get(files.size() - 1).file().bytes()));
    }

    private static Picture picture(String file) {
        return new Picture("before", file, "before", "recto", "normal", "A sheet.", "Before.",
                "Drawn by \"A & B\" <demo>", "CC0-1.0", Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Place.file("case.md"));
    }

    private static String opposite(String side) {
        return switch (side) {
            case "top" -> "bottom";
            case "bottom" -> "top";
            case "left" -> "right";
            default -> "left";
        };
    }

    private static String dot(BufferedImage image, String side, double in, String otherSide, double otherIn) {
        double[] at = new double[2];
        for (Object[] pair : new Object[][] {{side, in}, {otherSide, otherIn}}) {
            double share = (double) pair[1];
            switch ((String) pair[0]) {
                case "top" -> at[1] = share;
                case "bottom" -> at[1] = 1 - share;
                case "left" -> at[0] = share;
                default -> at[0] = 1 - share;
            }
        }
        Color color = new Color(image.getRGB((int) (at[0] * image.getWidth()), (int) (at[1] * image.getHeight())));
        if (color.getRed() > 200 && color.getBlue() > 200) {
            return "white";
        }
        return color.getRed() > color.getBlue() ? "red" : "blue";
    }

    private static BufferedImage plain(int width, int height, Color color) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(color);
        pen.fillRect(0, 0, width, height);
        pen.dispose();
        return image;
    }

    /** A TIFF with a profile in its field 34675 (TIFF/EP, ISO 12234-2). */
    private static byte[] tiffWithProfile(BufferedImage image, byte[] profile) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("tiff").next();
        TIFFDirectory directory = TIFFDirectory.createFromMetadata(
                writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(image), writer.getDefaultWriteParam()));
        directory.addTIFFField(new TIFFField(new TIFFTag("ICC Profile", 34675, 1 << TIFFTag.TIFF_UNDEFINED),
                TIFFTag.TIFF_UNDEFINED, profile.length, profile));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream stream = new MemoryCacheImageOutputStream(out)) {
            writer.setOutput(stream);
            writer.write(null, new IIOImage(image, null, directory.getAsMetadata()), writer.getDefaultWriteParam());
        }
        return out.toByteArray();
    }

    private static BufferedImage noise(int width, int height, long seed) {
        Random random = new Random(seed);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < width * height; i++) {
            image.setRGB(i % width, i / width, random.nextInt(0x1000000));
        }
        return image;
    }

    private static byte[] jpeg(BufferedImage image) throws IOException {
        return encoded(image, "jpeg");
    }

    private static byte[] encoded(BufferedImage image, String format) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertThat(ImageIO.write(image, format, out)).isTrue();
        return out.toByteArray();
    }
}
