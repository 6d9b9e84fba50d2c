package org.benchleaf.publish;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import nu.validator.validation.SimpleDocumentValidator;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXParseException;

/** Asks the Nu HTML checker what it finds in a page; set up once, because that takes two seconds. */
public final class HtmlChecker {

    private static final String SCHEMA = "http://s.validator.nu/html5-rdfalite.rnc";
    /** As if served, so that the page's policy is judged with its own files as 'self'. Nothing is fetched. */
    private static final String ORIGIN = "http://127.0.0.1/";
    private static final List<String> FOUND = new ArrayList<>();
    private static final SimpleDocumentValidator CHECKER = setUp();

    private HtmlChecker() {
    }

    /** Errors and warnings, each with its line; empty if the page is right. */
    public static synchronized List<String> findings(String path, byte[] html) throws Exception {
        FOUND.clear();
        InputSource source = new InputSource(new ByteArrayInputStream(html));
        source.setEncoding("UTF-8");
        source.setSystemId(ORIGIN + path);
        CHECKER.checkHtmlInputSource(source);
        List<String> lines = new String(html, StandardCharsets.UTF_8).lines().toList();
        return FOUND.stream().filter(finding -> !isDataBlock(finding, lines)).map(finding -> path + finding).toList();
    }

    /**
     * Data for programs is never run, so the policy for scripts does not bear on it (HTML Standard, "prepare the
     * script element": a data block returns before the policy is asked); this version of the checker says it does.
     */
    private static boolean isDataBlock(String finding, List<String> lines) {
        return finding.contains("Inline script violates Content Security Policy") && lines
                .get(Integer.parseInt(finding.substring(1, finding.indexOf(':', 1))) - 1)
                .startsWith("<script type=\"application/ld+json\">");
    }

    private static SimpleDocumentValidator setUp() {
        ErrorHandler handler = new ErrorHandler() {
            @Override
            public void warning(SAXParseException found) {
                note(found);
            }

            @Override
            public void error(SAXParseException found) {
                note(found);
            }

            @Override
            public void fatalError(SAXParseException found) {
                note(found);
            }

            private void note(SAXParseException found) {
                FOUND.add(":" + found.getLineNumber() + ": " + found.getMessage());
            }
        };
        try {
            SimpleDocumentValidator checker = new SimpleDocumentValidator(true);
            checker.setUpMainSchema(SCHEMA, handler);
            checker.setUpValidatorAndParsers(handler, false, false);
            return checker;
        } catch (Exception broken) {
            throw new IllegalStateException("the HTML checker cannot be set up", broken);
        }
    }
}
