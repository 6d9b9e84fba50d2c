package org.benchleaf.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Asks in the terminal for what no option said: an empty line is no answer, and the end of the input ends the asking. */
final class Asking {

    private Asking() {
    }

    /** What was said, else what is typed; empty where that is nothing. */
    static String one(String said, String question, BufferedReader in, PrintWriter out) {
        return said.isEmpty() ? answer(question, in, out) : said;
    }

    /** What was said, else what is typed, cut at its semicolons. */
    static List<String> many(List<String> said, String question, BufferedReader in, PrintWriter out) {
        return !said.isEmpty() ? said : Stream.of(answer(question, in, out).split(";")).map(String::strip)
                .filter(part -> !part.isEmpty()).toList();
    }

    /** The same, asked again until nothing is wrong with it; what is wrong is told. */
    static List<String> many(List<String> said, String question, Function<List<String>, Optional<String>> wrong, BufferedReader in,
            PrintWriter out) {
        List<String> answer = many(said, question, in, out);
        for (Optional<String> why = wrong.apply(answer); why.isPresent(); why = wrong.apply(answer)) {
            out.println(why.get());
            answer = many(List.of(), question, in, out);
        }
        return answer;
    }

    private static String answer(String question, BufferedReader in, PrintWriter out) {
        out.println(question);
        out.print("> ");
        out.flush();
        try {
            String line = in.readLine();
            return line == null ? "" : line.strip();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
