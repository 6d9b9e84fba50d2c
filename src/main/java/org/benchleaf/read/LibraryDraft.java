package org.benchleaf.read;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Place;
import org.benchleaf.message.SourceText;
import org.benchleaf.model.Formulary;
import org.benchleaf.model.Reference;

/**
 * What all cases share, as it was read.
 *
 * @param studio studio.yaml
 * @param materials the files of materials/, by name
 * @param glossary glossary.yaml
 * @param sources sources.yaml
 * @param formulary the methods and sources that come with the program
 * @param ruleBook the rules of the trade and the matrix
 * @param reference the tables of hazards and care
 * @param classes the files of classes/, by name
 * @param issues what of each class was handed out, by the name of the class
 * @param words the studio's words in other languages, each named by the language
 * @param caseIds the names of the case folders
 * @param texts the studio's own files, as they may be shown
 * @param messages what was said while reading
 */
public record LibraryDraft(Optional<YamlPart> studio, List<YamlPart> materials, Optional<YamlPart> glossary,
        Optional<YamlPart> sources, Formulary formulary, RuleBook ruleBook, Reference reference,
        List<YamlPart> classes, List<YamlPart> issues, List<YamlPart> words, List<String> caseIds, List<SourceText> texts,
        Messages messages) {

    public LibraryDraft {
        materials = List.copyOf(materials);
        classes = List.copyOf(classes);
        issues = List.copyOf(issues);
        words = List.copyOf(words);
        caseIds = List.copyOf(caseIds);
        texts = List.copyOf(texts);
    }

    /** The files of classes that work through a case, sound or not. */
    public List<SourceText> textsOf(String caseId) {
        Set<String> files = classes.stream().filter(part -> part.root().get("case")
                        .filter(named -> named instanceof Node.Scalar scalar && scalar.text().strip().equals(caseId)).isPresent())
                .map(part -> part.place().file()).collect(Collectors.toSet());
        return texts.stream().filter(text -> files.contains(text.file())).toList();
    }

    /**
     * One file.
     *
     * @param name its name without its ending
     * @param root what it holds
     * @param place its head
     */
    public record YamlPart(String name, Node.Mapping root, Place place) {
    }
}
