package org.benchleaf.quantity;

import org.teavm.jso.JSBody;

/** The shortest text of a double and back, by the browser. */
final class DoubleText {

    private DoubleText() {
    }

    @JSBody(params = "number", script = "return String(number);")
    static native String of(double number);

    @JSBody(params = "digits", script = "return Number(digits);")
    static native double read(String digits);
}
