package org.benchleaf.privacy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The measure is {@link String#startsWith(String, int)}, asked of every word at every place. */
class WordFinderTest {

    private static final int LONGEST_WORD = 14;
    private static final int LONGEST_TEXT = 400;

    /** Of few letters, many words begin alike and stand in each other; of many, hardly one stands in the text. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 26})
    void every_place_of_every_word_is_told_and_no_other(int letters) {
        Random random = new Random(letters);
        for (int count = 0; count < 200; count += 7) {
            List<String> words = Stream.generate(() -> text(random, letters, 1 + random.nextInt(LONGEST_WORD))).limit(count).distinct()
                    .toList();
            String text = text(random, letters, random.nextInt(LONGEST_TEXT)) + words.stream().limit(3).collect(Collectors.joining("x"));
            List<String> found = new ArrayList<>();
            new WordFinder(words).find(text.toCharArray(), (start, word) -> found.add(start + " " + word));
            assertThat(found).doesNotHaveDuplicates();
            assertThat(new TreeSet<>(found)).isEqualTo(IntStream.range(0, text.length()).boxed().flatMap(start ->
                    words.stream().filter(word -> text.startsWith(word, start)).map(word -> start + " " + word))
                    .collect(Collectors.toCollection(TreeSet::new)));
        }
    }

    private static String text(Random random, int letters, int length) {
        return random.ints(length, 0, letters).mapToObj(letter -> String.valueOf((char) ('a' + letter))).collect(Collectors.joining());
    }
}
