package org.benchleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/** Opens every page of the published demo in a browser, from its file: each once, one of each kind in every setting. */
@Execution(ExecutionMode.CONCURRENT)
class PagesInTheBrowserIT {

    private static final SiteUnderTest SITE = SiteUnderTest.demo();
    private static final Map<String, WrittenPage> KINDS = SITE.onePageOfEachKind();

    /** Each page is walked at the desk with the key; in these settings the focus is put to each of its stops. */
    private static final List<Setting> OTHER_LOOKS_OF_THE_FOCUS = List.of(Setting.PHONE, new Setting(320, Setting.Look.DARK),
            new Setting(768, Setting.Look.FORCED));

    @TestFactory
    Stream<DynamicTest> every_page_is_sound_on_a_phone() {
        List<LiveRule> rules = Stream.of(LiveRules.onOpening(), LiveRules.inEverySetting(), LiveRules.onScreen(),
                List.of(LiveRules.ROOM_FOR_WIDE_SPACING)).flatMap(List::stream).toList();
        return SITE.pages().stream().map(page -> DynamicTest.dynamicTest(page.path(), () -> Windows.lend(window -> {
            window.show(Setting.PHONE);
            window.open(page.path());
            Fault.none(Stream.concat(broken(window, rules),
                    broken(window, KINDS.containsValue(page) ? List.of() : LiveRules.ofEveryLayout())));
        })));
    }

    @TestFactory
    Stream<DynamicTest> one_page_of_each_kind_is_sound_in_every_setting() {
        return kinds((window, page) -> {
            window.open(page.path());
            Fault.none(Setting.all().stream().flatMap(setting -> {
                window.show(setting);
                return broken(window, rulesOf(setting.look()));
            }).toList().stream());
        });
    }

    /** The page is laid out alike in the looks of a screen, so that in the dark only its colours are new. */
    private static List<LiveRule> rulesOf(Setting.Look look) {
        List<LiveRule> rules = new ArrayList<>(LiveRules.inEverySetting());
        rules.addAll(look == Setting.Look.PRINT ? List.of(LiveRules.CLOSED_PARTS_PRINT) : LiveRules.onScreen());
        rules.addAll(look == Setting.Look.LIGHT || look == Setting.Look.PRINT
                ? LiveRules.ofEveryLayout() : LiveRules.ofOtherColours());
        return rules;
    }

    @TestFactory
    Stream<DynamicTest> one_page_of_each_kind_keeps_the_rules_of_its_text_after_its_scripts_ran() {
        return kinds((window, page) -> {
            window.open(page.path());
            WrittenPage now = window.asItStands();
            Fault.none(RuleBook.ofPages(SITE).stream().flatMap(rule -> rule.faults(now).stream()));
        });
    }

    @TestFactory
    Stream<DynamicTest> one_page_of_each_kind_has_room_for_large_text_and_stays_when_a_control_is_set() {
        return kinds((window, page) -> {
            window.open(page.path());
            Fault.none(broken(window, List.of(LiveRules.ROOM_FOR_LARGE_TEXT, LiveRules.NO_LEAVING_ON_CHANGE)));
        });
    }

    @TestFactory
    Stream<DynamicTest> one_page_of_each_kind_can_be_walked_by_keyboard() {
        return kinds((window, page) -> {
            window.open(page.path());
            KeyboardTour tour = KeyboardTour.of(window);
            List<Fault> faults = new ArrayList<>(told(window, Stream.of(tour.badOutlines(), tour.obscured(), tour.missed())));
            OTHER_LOOKS_OF_THE_FOCUS.forEach(look -> faults.addAll(told(window, Stream.of(tour.faultsIn(look)))));
            Fault.none(faults.stream());
        });
    }

    private static List<Fault> told(Window window, Stream<List<String>> faults) {
        return faults.flatMap(List::stream).map(fault -> new Fault("keyboard", window.place(), fault)).toList();
    }

    @TestFactory
    Stream<DynamicTest> one_page_of_each_kind_tells_the_same_numbers_without_scripts() {
        String numbers = Scripts.named("numbers");
        return kinds((window, page) -> {
            window.open(page.path());
            List<String> with = new ArrayList<>(window.texts(numbers));
            window.letScriptsRun(false);
            try {
                window.open(page.path());
                List<String> without = window.texts(numbers);
                assertThat(without).allSatisfy(number -> assertThat(with.remove(number)).as(number).isTrue());
                window.show(new Setting(768, Setting.Look.PRINT));
                Fault.none(broken(window, List.of(LiveRules.CLOSED_PARTS_PRINT)));
            } finally {
                window.letScriptsRun(true);
            }
        });
    }

    private static Stream<DynamicTest> kinds(BiConsumer<Window, WrittenPage> look) {
        return KINDS.entrySet().stream().map(one -> DynamicTest.dynamicTest(
                one.getKey() + ": " + one.getValue().path(),
                () -> Windows.lend(window -> look.accept(window, one.getValue()))));
    }

    private static Stream<Fault> broken(Window window, List<LiveRule> rules) {
        return LiveRule.faults(window, rules).stream();
    }
}
