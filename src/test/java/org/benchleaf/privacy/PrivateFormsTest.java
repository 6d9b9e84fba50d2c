package org.benchleaf.privacy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.benchleaf.message.LeakMessages;
import org.benchleaf.message.Message;
import org.benchleaf.message.Place;
import org.benchleaf.model.Confidential;
import org.benchleaf.publish.SiteFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Parts and other spellings of a private name, sum or number that tell it as well as the whole: common usage of each language and
 * trade, from memory. All names are invented.
 */
class PrivateFormsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "Northmere Museum of Rope | Lent by the Northmere Museum at Withymoor.",
        "Northmere Museum of Rope | in Northmere’s stores",
        "Crowdale & Peake | of whom Crowdale bought it",
        "Crowdale & Peake | Peake has it as well",
        "Lloydmere Mutual plc | insured by Lloydmere",
        "Wrexholme County Record Office | copied at Wrexholme",
        "Perdreaux & Cie SA | Perdreaux sold it",
        "Oberquell Verlags GmbH | bei Oberquell",
        "Messrs Tolliver & Daughters Ltd | Messrs Tolliver",
        "Tolliver's Book Room Ltd | from Tolliver in June",
        "Tolliver 's Ltd | from Tolliver in June",
        "Müllerquell GmbH | bei Muellerquell",
        "大和文化館 | この紙は大和文化のもの",
        "株式会社大和堂文庫 | 大和堂より",
    })
    void an_organisation_is_found_by_a_word_of_its_own(String organisation, String text) {
        assertThat(scan("owner", Map.of("organisation", organisation), text)).isNotEmpty();
        assertThat(scan("owner", Map.of("organisation", organisation), "The museum of the county keeps rope and books.")).isEmpty();
    }

    @Test
    void an_ordinary_word_of_an_organisation_is_looked_for_if_the_author_says_so() {
        Confidential.Secret owner = new Confidential.Secret("owner", Map.of("organisation", "Rope and Anchor Museum"),
                Place.file("case.md"));
        Confidential.Secret always = new Confidential.Secret("always names", Map.of("", "Anchor"), Place.file("case.md"));
        Searchable page = Searchable.of(SiteFile.text("a.html", "<p>lent by the Anchor in June</p>"));

        assertThat(PrivateScan.ofCase("tide", new Confidential(List.of(owner)), "").scan(page)).isEmpty();
        assertThat(PrivateScan.ofCase("tide", new Confidential(List.of(owner, always)), "").scan(page)).isNotEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "1.2 million pounds | bought for £1,200,000",
        "1.2 million pounds | bought for £1.2m",
        "1.2 million pounds | bought for £1.2 million",
        "1.2 million pounds | für 1,2 Mio. €",
        "£1,200,000 | bought for £1.2m",
        "£1,200,000 | bought for 1.2 million pounds",
        "£12k | bought for £12,000",
        "£12,000 | bought for £12k",
        "£1,450 | paid 1.45k for it",
        "12 million yen | ¥12,000,000",
        "12 million yen | 1200万円",
        "850 zł | 850 PLN",
        "PLN 850 | 850 zł",
        "850 Kč | CZK 850",
        "CZK 850 | 850,- Kč",
        "R$ 850 | BRL 850",
        "₩850000 | 850,000 won",
        "₹850 | Rs 850",
        "Fr. 850.– | CHF 850",
        "CHF 850 | Fr. 850.–",
    })
    void a_sum_is_found_in_every_way_of_writing_it(String value, String text) {
        assertThat(scan("value", Map.of("", value), "It was " + text + " then")).isNotEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "1.2 million pounds | a tear of 1.2 m, and 12 mm",
        "1.2 million pounds | bought for £12m",
        "£12k | 12 kg of sand at £3",
        "850 zł | 850 mL of water",
    })
    void another_figure_is_no_sum(String value, String text) {
        assertThat(scan("value", Map.of("", value), text)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "01632 960123 / 07700 900123 | Call 07700 900123",
        "01632 960123 / 07700 900123 | Call +44 1632 960123",
        "01632 960123, 07700 900123 | Call 01632 960123",
        "01632 960123 or 07700 900123 | Call 07700 900123",
        "01632 960123/4 | Call 01632 960124",
        "01632 960123 ext. 44 | Call 01632 960123",
        "01632 960123 x44 | Call 01632 960123",
        "01632 960123 | Tel. 960 123",
        "089 901820-55 | write or 901820-55",
        "020 7946 0958 | 7946 0958",
        "030/1234567 | 030 1234567",
        "030/1234567, 030/7654321 | 030 7654321",
        "4711 | Tel. 4711",
    })
    void each_telephone_number_is_found_with_and_without_its_codes(String telephone, String text) {
        assertThat(scan("contact", Map.of("telephone", telephone), "Words: " + text + " today")).isNotEmpty();
        assertThat(scan("contact", Map.of("telephone", telephone), "960.123 mL of 96,012 and 4711 of 0.79460958")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "MS 1234/7 | Peake has it as MS 1234.",
        "MS 1234/7 | as MS1234, dry",
        "P.12-1987 | as P.12 of the list",
        "№ 1234 п | under №1234 there",
        "1880.12.7 | inv. no. 1880.12",
    })
    void an_inventory_number_is_found_without_its_last_part(String number, String text) {
        assertThat(scan("number", Map.of("number", number), text)).isNotEmpty();
        assertThat(scan("number", Map.of("number", number), "See p. 12: 1234 mL at 1880 s, step p12.")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "Кузнецова Анна Сергеевна | лист Кузнецовой",
        "Кузнецова Анна Сергеевна | Анна Кузнецова",
        "Nguyễn Thị Minh Khai | the Nguyen sheet",
        "山田太郎 | 山田さんのもの",
        "王小明 | 王先生的纸",
        "欧阳娜娜 | 欧阳女士的纸",
        "김민수 | 이 종이는 김씨의 것",
        "Gabriel García Marquezal | as García wrote",
        "Gabriel García Marquezal | as Marquezal wrote",
        "José Ortega y Gassetón | as Ortega wrote",
        "Siobhán O'Shaughnessybeg | a Shaughnessybeg sheet",
        "Fergus MacGillyquay | a Mac Gillyquay sheet",
        "Fergus MacGillyquay | a McGillyquay sheet",
        "Fergus McGillyquay | a MacGillyquay sheet",
        "Jörg Müllerstätter | a Muellerstaetter sheet",
        "Joerg Muellerstaetter | a Müllerstätter sheet",
        "ნინო ბერიძე | ბერიძის ფურცელი",
        "Baron Götz von und zu Hardtmuth | a Hardtmuth sheet",
        "Halcyon Brandreth-Voss | by Brand&shy;reth in June",
        "Halcyon Brandreth-Voss | by Brand&ZeroWidthSpace;reth in June",
    })
    void a_person_is_found_by_each_name_that_may_be_the_familys(String person, String text) {
        assertThat(scan("owner", Map.of("person", person), text)).isNotEmpty();
        assertThat(scan("owner", Map.of("person", person), "The tide table was washed, dried and pressed by hand.")).isEmpty();
    }

    @Test
    void a_common_given_name_in_the_middle_is_not_looked_for_alone() {
        assertThat(scan("owner", Map.of("person", "Ada Margaret Quillerby"), "a print of Margaret at sea")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"lent by Brown", "owned by Brown", "a gift of <b>Brown</b>", "bought from   Brown"})
    void an_ordinary_word_is_a_name_behind_words_for_passing_something_on(String text) {
        assertThat(scan("owner", Map.of("person", "Ada Brown"), text, "brown")).isNotEmpty();
        assertThat(scan("owner", Map.of("person", "Ada Brown"), "darkened by brown stains; Brown spots", "brown")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"otto@quillmail.example,otto(at)quillmail.example", "otto@quillmail.example,otto at quillmail dot example",
        "otto@quillmail.example,otto [arroba] quillmail.example"})
    void an_e_mail_address_is_found_with_words_for_its_signs(String address, String text) {
        assertThat(scan("contact", Map.of("e-mail", address), text)).isNotEmpty();
    }

    @Test
    void a_town_of_an_address_is_looked_for_until_it_is_answered_to_be_open() {
        Map<String, String> address = Map.of("address", "3 Tarn Row, Withymoor");
        assertThat(scan("contact", address, "the library at Withymoor")).isNotEmpty();
        assertThat(scan("contact", address, "the library at Withymoor", "withymoor")).isEmpty();
        assertThat(messages("contact", Map.of("address", "3 Tarn Row, Reading"))).extracting(Message::id)
                .containsExactly(LeakMessages.ORDINARY_WORD);
    }

    private static List<Message> scan(String field, Map<String, String> parts, String text, String... ordinary) {
        return made(field, parts, ordinary).scan(Searchable.of(SiteFile.text("a.html", "<p>" + text + "</p>")));
    }

    private static List<Message> messages(String field, Map<String, String> parts) {
        return made(field, parts).messages().all();
    }

    private static PrivateScan made(String field, Map<String, String> parts, String... ordinary) {
        List<Confidential.Secret> secrets = new ArrayList<>(List.of(new Confidential.Secret(field, parts, Place.file("case.md"))));
        for (String word : ordinary) {
            secrets.add(new Confidential.Secret("ordinary words", Map.of("word", word), Place.file("case.md")));
        }
        return PrivateScan.ofCase("tide", new Confidential(secrets), "");
    }
}
