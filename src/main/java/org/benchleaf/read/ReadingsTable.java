package org.benchleaf.read;

import java.util.List;
import org.benchleaf.message.Place;

/**
 * A table of readings as an instrument wrote it.
 *
 * @param file the file's name inside the case's folder
 * @param header the cells of the first line
 * @param rows the other lines that hold anything
 * @param place the head of the file
 */
public record ReadingsTable(String file, List<Cell> header, List<List<Cell>> rows, Place place) {

    public ReadingsTable {
        header = List.copyOf(header);
        rows = rows.stream().map(List::copyOf).toList();
    }

    /** One cell, blanks and quotes around it removed. */
    public record Cell(String text, Place place) {
    }
}
