package org.benchleaf.rule;

import java.util.stream.Stream;
import org.benchleaf.model.Part;

/** The ids of the tools and materials that a part names, besides its liquid. */
final class PartTools implements Part.Kinds<Stream<String>> {

    @Override
    public Stream<String> bath(Part.Bath part) {
        return Stream.empty();
    }

    @Override
    public Stream<String> mist(Part.Mist part) {
        return part.tool().stream();
    }

    @Override
    public Stream<String> chamber(Part.Chamber part) {
        return Stream.empty();
    }

    @Override
    public Stream<String> blotters(Part.Blotters part) {
        return part.blotter().stream();
    }

    @Override
    public Stream<String> press(Part.Press part) {
        return part.between().stream();
    }

    @Override
    public Stream<String> mend(Part.Mend part) {
        return Stream.of(part.tissue());
    }

    @Override
    public Stream<String> heat(Part.Heat part) {
        return Stream.of(part.tool());
    }

    @Override
    public Stream<String> support(Part.Support part) {
        return Stream.concat(Stream.of(part.under()), part.between().stream());
    }

    @Override
    public Stream<String> cleaning(Part.Cleaning part) {
        return part.tools().stream();
    }

    @Override
    public Stream<String> fixing(Part.Fixing part) {
        return Stream.empty();
    }

    @Override
    public Stream<String> weighing(Part.Weighing part) {
        return Stream.empty();
    }

    @Override
    public Stream<String> housing(Part.Housing part) {
        return part.materials().stream();
    }

    @Override
    public Stream<String> layer(Part.Layer part) {
        return part.between().stream();
    }

    @Override
    public Stream<String> suction(Part.Suction part) {
        return Stream.of(part.tool());
    }

    @Override
    public Stream<String> light(Part.Light part) {
        return Stream.empty();
    }

    @Override
    public Stream<String> gas(Part.Gas part) {
        return Stream.concat(Stream.of(part.of()), part.tool().stream());
    }

    @Override
    public Stream<String> tape(Part.Tape part) {
        return Stream.empty();
    }

    @Override
    public Stream<String> ageing(Part.Ageing part) {
        return Stream.empty();
    }
}
