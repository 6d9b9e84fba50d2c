package org.benchleaf.publish;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import net.coobird.thumbnailator.Thumbnails;
import net.coobird.thumbnailator.resizers.configurations.ScalingMode;
import net.coobird.thumbnailator.util.exif.ExifFilterUtils;
import net.coobird.thumbnailator.util.exif.Orientation;
import org.benchleaf.message.Messages;
import org.benchleaf.message.PictureMessages;
import org.benchleaf.model.Picture;

/**
 * Makes the published files of a picture: turned upright, in the colours of a screen, in a few widths, and without
 * anything that a camera or a program wrote into it; only credit and licence are written back.
 *
 * <p>Few pictures are worked on at once, however many threads ask, so that memory stays bounded.
 */
public final class PictureMaker {

    private static final List<Integer> WIDTHS = List.of(480, 960, 1600);
    private static final int BUDGET = 250_000;
    private static final int PHONE_WIDTH = 1300;
    private static final int PHONE_BUDGET = 150_000;
    private static final float[] QUALITIES = {0.85f, 0.78f, 0.7f, 0.6f, 0.5f};
    /** One picture in work takes up to so much. */
    private static final long MEMORY_EACH = 200L << 20;
    private static final Semaphore IN_WORK = new Semaphore((int) Math.max(1,
            Math.min(Runtime.getRuntime().availableProcessors(), Runtime.getRuntime().maxMemory() / MEMORY_EACH)));

    private PictureMaker() {
    }

    /** Whether a picture's file can be used, told from its head alone; says why not. Quick enough for a check. */
    public static boolean look(Path folder, Picture picture, Messages messages) {
        return PictureReader.head(folder, picture, widest(), messages).isPresent();
    }

    /**
     * Makes the files of one picture, narrowest first.
     *
     * @param caseId the case's id, which is the folder of the files
     * @param folder the case's folder of pictures
     * @return the files; none, with a message, if the picture cannot be used
     */
    public static List<PictureFile> make(String caseId, Path folder, Picture picture, Messages messages) {
        IN_WORK.acquireUninterruptibly();
        try {
            return PictureReader.head(folder, picture, widest(), messages)
                    .map(head -> files(caseId, head, picture, messages)).orElse(List.of());
        } finally {
            IN_WORK.release();
        }
    }

    /**
     * The files that {@link #make} makes of one picture, told from its head alone; its dots are not looked at.
     *
     * @param caseId the case's id, which is the folder of the files
     * @param folder the case's folder of pictures
     * @return their paths and sizes, narrowest first; none, with a message, if the picture cannot be used
     */
    public static List<Rendition> sizes(String caseId, Path folder, Picture picture, Messages messages) {
        return PictureReader.head(folder, picture, widest(), messages).map(head -> {
            List<Rendition> sizes = new ArrayList<>();
            sizes(head).forEach(size -> sizes.add(0, new Rendition(path(caseId, picture, size.width), size.width, size.height)));
            return List.copyOf(sizes);
        }).orElse(List.of());
    }

    private static String path(String caseId, Picture picture, int width) {
        return "cases/" + caseId + "/pictures/" + picture.id() + "-" + width + ".jpg";
    }

    private static List<PictureFile> files(String caseId, PictureReader.Head head, Picture picture,
            Messages messages) {
        Optional<BufferedImage> dots = PictureReader.dots(head, picture, messages);
        if (dots.isEmpty()) {
            return List.of();
        }
        List<PictureFile> files = new ArrayList<>();
        BufferedImage from = dots.get();
        boolean upright = false;
        for (Dimension size : sizes(head)) {
            from = upright ? flat(resized(from, size.width, size.height)) : upright(from, head, size);
            upright = true;
            byte[] jpeg = encoded(from, picture, messages);
            files.add(0, new PictureFile(from.getWidth(), from.getHeight(),
                    new SiteFile(path(caseId, picture, from.getWidth()), jpeg)));
        }
        return List.copyOf(files);
    }

    /** The sizes to make, widest first: each is scaled from the one before it. */
    private static List<Dimension> sizes(PictureReader.Head head) {
        List<Dimension> sizes = new ArrayList<>();
        Dimension from = head.isOnItsSide() ? new Dimension(head.height(), head.width())
                : new Dimension(head.width(), head.height());
        for (int width : widths(from.width)) {
            from = new Dimension(width, Math.max(1, (int) Math.round((double) from.height * width / from.width)));
            sizes.add(from);
        }
        return sizes;
    }

    /** The widths to make, widest first; never wider than the picture is, and no two that are nearly alike. */
    private static List<Integer> widths(int own) {
        List<Integer> widths = new ArrayList<>();
        WIDTHS.stream().filter(width -> own > widest() ? width < own : width * 10 <= own * 9).forEach(width -> widths.add(0, width));
        if (own <= widest()) {
            widths.add(0, own);
        }
        return widths;
    }

    private static int widest() {
        return WIDTHS.get(WIDTHS.size() - 1);
    }

    /** Scaled before it is turned, so that only a small copy is made. */
    private static BufferedImage upright(BufferedImage image, PictureReader.Head head, Dimension size) {
        BufferedImage small = flat(head.isOnItsSide() ? resized(image, size.height, size.width)
                : resized(image, size.width, size.height));
        return flat(ExifFilterUtils.getFilterForOrientation(Orientation.typeOf(head.orientation())).apply(small));
    }

    private static BufferedImage resized(BufferedImage image, int width, int height) {
        if (image.getWidth() == width && image.getHeight() == height) {
            return image;
        }
        try {
            return Thumbnails.of(image).forceSize(width, height).scalingMode(ScalingMode.PROGRESSIVE_BILINEAR)
                    .imageType(image.getColorModel().hasAlpha() ? BufferedImage.TYPE_INT_ARGB
                            : BufferedImage.TYPE_INT_RGB)
                    .asBufferedImage();
        } catch (IOException impossible) {
            throw new UncheckedIOException("a picture in memory could not be scaled", impossible);
        }
    }

    /** On white where it was transparent, and in the colours of a screen. */
    private static BufferedImage flat(BufferedImage image) {
        if (image.getType() == BufferedImage.TYPE_INT_RGB) {
            return image;
        }
        BufferedImage flat = new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = flat.createGraphics();
        pen.drawImage(image, 0, 0, Color.WHITE, null);
        pen.dispose();
        return flat;
    }

    private static byte[] encoded(BufferedImage image, Picture picture, Messages messages) {
        byte[] jpeg = {};
        for (float quality : QUALITIES) {
            jpeg = RightsBlock.into(jpeg(image, quality), picture.credit(), picture.licence());
            if (jpeg.length <= budget(image.getWidth())) {
                return jpeg;
            }
        }
        if (jpeg.length <= BUDGET) {
            return jpeg;
        }
        messages.add(PictureMessages.OVER_BUDGET.at(picture.place(), "picture", picture.id(), "size",
                jpeg.length / 1000, "width", image.getWidth(), "budget", BUDGET / 1000));
        return jpeg;
    }

    /** A copy made for a phone is to be light; only the widest may weigh the whole budget. */
    private static int budget(int width) {
        return width <= PHONE_WIDTH ? PHONE_BUDGET : BUDGET;
    }

    static byte[] jpeg(BufferedImage image, float quality) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(quality);
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, null), param);
        } catch (IOException impossible) {
            throw new UncheckedIOException("a picture could not be written to memory", impossible);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
