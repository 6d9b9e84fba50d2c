package org.benchleaf.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.text.PDFTextStripper;
import org.benchleaf.compose.cases.Book;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.verapdf.core.VeraPDFException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** A sheet in Arabic on paper: sound by the standards, read back as it was written, its rows begun at the right. */
class ArabicSheetTest {

    private static final String PAGE = """
            <!DOCTYPE html><html lang="ar" dir="rtl"><head><title>صحيفة الخطوات</title>
            <meta name="description" content="ورقة للتجربة"></head><body><main>
            <h1>جدول مدّ وجزر</h1>
            <p>ضع الورقة في الحمام <bdi><span>412</span> <span>mm</span></bdi> مدة <bdi>30 إلى <bdi dir="ltr">45 min</bdi></bdi>
            ثم انتظر.</p>
            <dl><div><dt>الأشخاص</dt><dd>اثنان</dd></div><div><dt>السائل</dt><dd>ماء منزوع الأيونات</dd></div></dl>
            <table><caption>المدخلات</caption><thead><tr><th scope="col">المدخل</th><th scope="col">القيمة</th></tr></thead>
            <tbody><tr><th scope="row">العمق</th><td><bdi>25 mm</bdi></td></tr></tbody></table>
            </main></body></html>
            """;

    private static byte[] file;

    @BeforeAll
    static void layOut() throws IOException {
        VeraGreenfieldFoundryProvider.initialise();
        TakenStyles styles = new TakenStyles("", Files.readString(Path.of("templates/paper/sheet.css")), "");
        PrintedSheet sheet = new PrintedSheet("ar/cases/tide/steps.html", new FinishedPage("ar/cases/tide/steps.html",
                Jsoup.parse(PAGE)), Map.of(), styles);
        assertThat(sheet.missing()).isEmpty();
        file = sheet.file(book()).bytes();
    }

    private static Book book() {
        return new Book("جدول", "Studio", "ar", "rtl", "tide", LocalDate.of(2026, 1, 1), "", Map.of(), List.of(), Optional.empty());
    }

    @Test
    void it_is_sound_for_the_checker_of_the_standards() throws IOException, VeraPDFException {
        for (PDFAFlavour standard : List.of(PDFAFlavour.PDFUA_1, PDFAFlavour.PDFA_2_A)) {
            try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(file), standard)) {
                assertThat(Foundries.defaultInstance().createValidator(standard, false).validate(parser).isCompliant())
                        .as(standard.getId()).isTrue();
            }
        }
    }

    @Test
    void its_words_are_read_back_letter_by_letter_and_a_number_stands_before_its_unit() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(file)) {
            String text = new PDFTextStripper().getText(pdf).replaceAll("[\u202a\u202c\u00a0]", "");
            // Where the direction changes within a line, the reader puts the pieces in an order of its own.
            assertThat(text).contains("جدول مدّ وجزر", "ضع الورقة في الحمام", "412 mm", "45 min",
                    "ثم انتظر.", "ماء منزوع الأيونات", "25 mm")
                    .doesNotContain("#");
        }
    }

    @Test
    void the_tags_name_the_cells_of_a_row_in_the_order_in_which_they_are_read() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(file)) {
            List<PDStructureElement> rows = new ArrayList<>();
            rows(pdf.getDocumentCatalog().getStructureTreeRoot(), rows);
            assertThat(rows).hasSize(2);
            assertThat(rows.get(1).getKids().stream().map(cell -> ((PDStructureElement) cell).getStructureType()))
                    .containsExactly("TH", "TD");
        }
    }

    private static void rows(PDStructureNode node, List<PDStructureElement> rows) {
        if (node instanceof PDStructureElement element && element.getStructureType().equals("TR")) {
            rows.add(element);
        }
        node.getKids().stream().filter(PDStructureNode.class::isInstance).forEach(kid -> rows((PDStructureNode) kid, rows));
    }
}
