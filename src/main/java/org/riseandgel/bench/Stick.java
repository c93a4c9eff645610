package org.riseandgel.bench;

import io.quarkus.qute.RawString;
import java.util.List;

/** What the page of a printed volume stick shows: strips and print check are our own SVG. */
public record Stick(List<RawString> strips, RawString check, String query, boolean inParts) {
    static Stick of(Given given, QuantityText text, String query) {
        List<RawString> strips =
                new StickStrips(given, text).svgs().stream().map(RawString::new).toList();
        return new Stick(strips, new RawString(PrintCheck.svg()), query, strips.size() > 1);
    }
}
