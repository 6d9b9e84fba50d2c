package org.benchleaf.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.cases.CasePages;
import org.benchleaf.compose.part.LinkPicture;
import org.benchleaf.publish.LinkPictureMaker;
import org.benchleaf.publish.SiteFile;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

/** What pages say for programs that show a link to them (Open Graph protocol, ogp.me: title, type, image and url are required). */
class OnTheWebTest {

    private static final String STUDIO = "https://tarn-quay.example/";

    @Test
    void a_page_of_a_case_with_pictures_has_all_that_the_protocol_requires() {
        int pages = 0;
        for (CasePages one : DemoSite.made().cases()) {
            for (Page page : one.pages().stream().filter(each -> !each.path().contains("/class-")).toList()) {
                Document html = html(page.path());
                assertThat(said(html, "og:title")).isEqualTo(page.title());
                assertThat(said(html, "og:type")).isNotBlank();
                assertThat(said(html, "og:url")).isEqualTo(STUDIO + page.path());
                assertThat(said(html, "og:image")).isEqualTo(STUDIO + "cases/" + one.card().id() + "/pictures/link.jpg");
                assertThat(said(html, "og:image:alt")).isNotBlank();
                pages++;
            }
        }
        assertThat(pages).isGreaterThan(10);
    }

    @Test
    void a_page_of_the_site_has_its_address_and_no_picture_of_a_case() {
        assertThat(said(html("index.html"), "og:url")).isEqualTo(STUDIO + "index.html");
        assertThat(html("index.html").select("meta[property=og:image]")).isEmpty();
    }

    /** Made by hand: a red sheet and a blue one side by side, each whole, on a light ground. */
    @Test
    void the_picture_beside_a_link_shows_before_on_the_left_and_after_on_the_right() throws IOException {
        LinkPicture link = DemoSite.made().cases().stream().map(CasePages::linkPicture).flatMap(Optional::stream)
                .filter(one -> one.pictures().size() == 2).findFirst().orElseThrow();

        BufferedImage made = ImageIO.read(new ByteArrayInputStream(
                LinkPictureMaker.make(link, List.of(sheet(Color.RED), sheet(Color.BLUE))).bytes()));

        assertThat(List.of(made.getWidth(), made.getHeight())).containsExactly(1200, 630);
        assertThat(new Color(made.getRGB(300, 315))).matches(dot -> dot.getRed() > 200 && dot.getBlue() < 60);
        assertThat(new Color(made.getRGB(900, 315))).matches(dot -> dot.getBlue() > 200 && dot.getRed() < 60);
        assertThat(new Color(made.getRGB(600, 315))).matches(dot -> dot.getRed() > 200 && dot.getGreen() > 200 && dot.getBlue() > 200);
        assertThat(new Color(made.getRGB(5, 5))).matches(dot -> dot.getRed() > 200 && dot.getGreen() > 200 && dot.getBlue() > 200);
    }

    private static SiteFile sheet(Color colour) throws IOException {
        BufferedImage sheet = new BufferedImage(300, 400, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < 300; x++) {
            for (int y = 0; y < 400; y++) {
                sheet.setRGB(x, y, colour.getRGB());
            }
        }
        ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
        ImageIO.write(sheet, "jpg", jpeg);
        return new SiteFile("sheet.jpg", jpeg.toByteArray());
    }

    private static String said(Document page, String property) {
        return page.select("meta[property=" + property + "]").attr("content");
    }

    private static Document html(String path) {
        return Jsoup.parse(DemoSite.made().files().stream().filter(file -> file.path().equals(path)).findFirst().orElseThrow().text());
    }
}
