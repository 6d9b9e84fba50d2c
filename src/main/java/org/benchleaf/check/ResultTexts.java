package org.benchleaf.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.model.MeasuringConditions;
import org.benchleaf.model.Result;

/** What an author writes in words about a result: how, where, with what note. */
final class ResultTexts implements Result.Kinds<List<String>> {

    @Override
    public List<String> readings(Result.Readings result) {
        return Stream.of(List.of(result.method()), result.places(), read(result.conditions()), result.note().stream().toList())
                .flatMap(List::stream).toList();
    }

    @Override
    public List<String> colour(Result.Colour result) {
        return Stream.concat(result.spots().stream().map(Result.ColourSpot::at),
                Stream.of(result.formula(), result.illuminant(), result.observer(), result.geometry(), result.note())
                        .flatMap(Optional::stream)).toList();
    }

    @Override
    public List<String> size(Result.Size result) {
        return Stream.concat(Stream.of(result.method()), result.note().stream()).toList();
    }

    @Override
    public List<String> reserve(Result.Reserve result) {
        return Stream.of(result.method(), result.note()).flatMap(Optional::stream).toList();
    }

    private static List<String> read(MeasuringConditions conditions) {
        return Stream.of(conditions.methodAfter(), conditions.aged()).flatMap(Optional::stream).toList();
    }

    @Override
    public List<String> stated(Result.Stated result) {
        return Stream.of(List.of(result.method()), read(result.conditions()), result.note().stream().toList())
                .flatMap(List::stream).toList();
    }

    @Override
    public List<String> words(Result.Words result) {
        return Stream.concat(Stream.concat(Stream.of(result.method()), read(result.conditions()).stream()),
                Stream.concat(result.ranks().stream(),
                        Stream.of(result.before(), result.after(), result.note()).flatMap(Optional::stream))).toList();
    }

    @Override
    public List<String> notMeasured(Result.NotMeasured result) {
        return List.of(result.because());
    }
}
