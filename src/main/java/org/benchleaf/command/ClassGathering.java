package org.benchleaf.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.check.CaseChecker;
import org.benchleaf.check.CheckedLibrary;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.compose.classes.ClassResults;
import org.benchleaf.derive.Deriver;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Nearest;
import org.benchleaf.message.RecordMessages;
import org.benchleaf.model.BenchRecord;
import org.benchleaf.model.CourseClass;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.pack.PrivateFolder;
import org.benchleaf.publish.Pictures;
import org.benchleaf.publish.SitePublisher;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.LibraryReader;

/** Gathers the records of one class into its results. */
final class ClassGathering {

    private final Path content;
    private final CheckedLibrary library;
    private final Messages messages = new Messages();

    /** With the classes of a content folder. */
    ClassGathering(Path content) {
        this.content = content;
        this.library = LibraryChecker.check(LibraryReader.read(content));
        messages.addAll(library.messages());
    }

    /** What was said so far. */
    Messages messages() {
        return messages;
    }

    /**
     * Writes the results of a class.
     *
     * @param records of that class
     * @return whether they could be written
     */
    boolean write(String name, List<BenchRecord> records, Path folder) {
        Optional<CourseClass> course = library.library().classes().stream().filter(one -> one.id().equals(name)).findFirst();
        if (course.isEmpty()) {
            List<String> known = library.library().classes().stream().map(CourseClass::id).toList();
            messages.add(RecordMessages.UNKNOWN_CLASS.at(records.get(0).seat().orElseThrow().place(), "name", name, "remedy",
                    Nearest.to(name, known).map(near -> "Did you mean '" + near + "'? Put 'class' in the record right.")
                            .orElse("Name the content folder of the class with --content.")));
            return false;
        }
        Optional<TreatmentCase> treatment = treatment(course.get());
        treatment.ifPresent(one -> write(course.get(), one, records, folder));
        return treatment.isPresent();
    }

    private void write(CourseClass course, TreatmentCase treatment, List<BenchRecord> records, Path folder) {
        tell(course, records);
        ClassResults results = new ClassResults(course, treatment, records);
        Map<String, String> files = new LinkedHashMap<>();
        files.put("index.html", SitePublisher.withOwnTemplates(Pictures.none()).publish(results.page()));
        results.files().forEach(file -> files.put(file.path(), file.text()));
        PrivateFolder.write(folder.resolve(course.id()), files);
    }

    private Optional<TreatmentCase> treatment(CourseClass course) {
        Path folder = content.resolve("cases").resolve(course.caseId());
        if (!Files.isDirectory(folder)) {
            return Optional.empty();
        }
        var checked = CaseChecker.check(CaseReader.read(content, folder), library.library(), LocalDate.now(),
                new Deriver(library.library())::ph);
        messages.addAll(checked.messages());
        return checked.treatment();
    }

    private void tell(CourseClass course, List<BenchRecord> records) {
        Map<Integer, Integer> seen = new HashMap<>();
        for (BenchRecord record : records) {
            BenchRecord.Seat seat = record.seat().orElseThrow();
            if (seat.station() > course.stations()) {
                messages.add(RecordMessages.NO_SUCH_STATION.at(seat.place(), "stations", course.stations(), "station", seat.station()));
            }
            if (seen.merge(seat.station(), 1, Integer::sum) > 1) {
                messages.add(RecordMessages.STATION_TWICE.at(seat.place(), "station", seat.station()));
            }
            course.papers().issue().filter(now -> seat.issue().filter(issue -> issue != now.number()).isPresent()).ifPresent(
                    now -> messages.add(RecordMessages.OTHER_ISSUE.at(seat.place(), "worked", seat.issue().get(),
                            "now", now.number())));
            tellUnknown(course, record);
        }
    }

    private void tellUnknown(CourseClass course, BenchRecord record) {
        record.marks().stream().filter(mark -> course.papers().outcomes().stream().noneMatch(one ->
                one.at().equals(mark.step()) && one.will().equals(mark.will()))).forEach(mark -> messages.add(
                        RecordMessages.NOT_IN_THE_CLASS.at(mark.place(), "what", mark.will())));
    }
}
