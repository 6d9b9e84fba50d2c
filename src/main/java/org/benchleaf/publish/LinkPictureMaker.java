package org.benchleaf.publish;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import org.benchleaf.compose.part.LinkPicture;
import org.benchleaf.model.Picture;
import org.benchleaf.page.OnTheWeb;

/** Makes the picture beside a link: finished pictures of the case side by side, whole, on a light ground. */
public final class LinkPictureMaker {

    private static final Color GROUND = new Color(0xF2, 0xF0, 0xEB);
    private static final int MARGIN = 24;
    private static final float QUALITY = 0.85f;

    private LinkPictureMaker() {
    }

    /**
     * Its file.
     *
     * @param link what it is made of
     * @param finished files of these pictures, in the same order
     */
    public static SiteFile make(LinkPicture link, List<SiteFile> finished) {
        BufferedImage image = new BufferedImage(OnTheWeb.PICTURE_WIDTH, OnTheWeb.PICTURE_HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        pen.setColor(GROUND);
        pen.fillRect(0, 0, OnTheWeb.PICTURE_WIDTH, OnTheWeb.PICTURE_HEIGHT);
        int room = (OnTheWeb.PICTURE_WIDTH - MARGIN) / finished.size() - MARGIN;
        for (int at = 0; at < finished.size(); at++) {
            draw(pen, read(finished.get(at)), MARGIN + at * (room + MARGIN), room);
        }
        pen.dispose();
        return new SiteFile(link.path(),
                RightsBlock.into(PictureMaker.jpeg(image, QUALITY), said(link, Picture::credit), said(link, Picture::licence)));
    }

    private static String said(LinkPicture link, Function<Picture, String> what) {
        return link.pictures().stream().map(what).distinct().collect(Collectors.joining("; "));
    }

    /** As large as its room lets it be, in the middle of it. */
    private static void draw(Graphics2D pen, BufferedImage picture, int left, int room) {
        int high = OnTheWeb.PICTURE_HEIGHT - 2 * MARGIN;
        double scale = Math.min((double) room / picture.getWidth(), (double) high / picture.getHeight());
        int width = Math.max(1, (int) Math.round(picture.getWidth() * scale));
        int height = Math.max(1, (int) Math.round(picture.getHeight() * scale));
        pen.drawImage(picture, left + (room - width) / 2, MARGIN + (high - height) / 2, width, height, null);
    }

    private static BufferedImage read(SiteFile file) {
        try {
            return ImageIO.read(new ByteArrayInputStream(file.bytes()));
        } catch (IOException impossible) {
            throw new UncheckedIOException("a picture in memory could not be read", impossible);
        }
    }
}
