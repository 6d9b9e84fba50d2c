package org.benchleaf.compose.site;

import java.util.Map;
import java.util.stream.Collectors;
import org.benchleaf.model.Library;
import org.benchleaf.model.Matrix;
import org.benchleaf.model.Rule;
import org.benchleaf.words.Words;

/** The rules and the cells of the matrix in one sentence each, by the id that findings name. */
public final class RuleStatements {

    private RuleStatements() {
    }

    public static Map<String, String> of(Words words, Library library) {
        Map<String, String> statements = library.rules().stream()
                .collect(Collectors.toMap(Rule::id, Rule::statement, (one, other) -> one));
        Matrix matrix = library.matrix();
        matrix.rows().forEach(row -> matrix.actions().forEach(action -> statements.putIfAbsent(Matrix.cellId(row, action),
                RulesPage.cell(words, row, action) + ": " + library.phrases().of(row.on(action.id()).words()))));
        return statements;
    }
}
