package org.riseandgel.exercise;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A figure becomes part of the page, so nothing in it may run, load, restyle or reach beyond itself. */
class FigureReaderTest {
    private static final String BEGIN = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 10 10\">";

    static Stream<String> attacks() {
        return Stream.of(
                "<script>alert(1)</script>",
                "<script href=\"https://example.org/x.js\"/>",
                "<style>@import url(https://example.org/x.css)</style>",
                "<foreignObject><p xmlns=\"http://www.w3.org/1999/xhtml\">hello</p></foreignObject>",
                "<image href=\"https://example.org/x.png\"/>",
                "<image xmlns:xlink=\"http://www.w3.org/1999/xlink\" xlink:href=\"https://example.org/x.png\"/>",
                "<use href=\"https://example.org/x.svg#a\"/>",
                "<use href=\"#a\"/>",
                "<a href=\"javascript:alert(1)\"><path d=\"M0 0\"/></a>",
                "<animate attributeName=\"href\" to=\"javascript:alert(1)\"/>",
                "<set attributeName=\"onload\" to=\"alert(1)\"/>",
                "<path d=\"M0 0\" onclick=\"alert(1)\"/>",
                "<path d=\"M0 0\" onload=\"alert(1)\"/>",
                "<path d=\"M0 0\" style=\"fill:url(https://example.org/x)\"/>",
                "<path d=\"M0 0\" fill=\"url(https://example.org/x#a)\"/>",
                "<path d=\"M0 0\" fill=\"red\"/>",
                "<path d=\"M0 0\" class=\"button danger\"/>",
                "<path d=\"M0 0\" id=\"main\"/>",
                "<path d=\"M0 0&quot;/&gt;&lt;script&gt;\"/>",
                "<path d=\"M0 0\" transform=\"translate(1)&quot; onload=&quot;x\"/>",
                "<text font-family=\"Elsewhere\">a</text>",
                "<rect width=\"calc(1px)\"/>",
                "<filter id=\"figure-f\"><feImage href=\"https://example.org/x\"/></filter>",
                "<iframe xmlns=\"http://www.w3.org/1999/xhtml\" src=\"https://example.org\"/>",
                "<path xmlns=\"http://www.w3.org/1999/xhtml\" d=\"M0 0\"/>",
                "<svg viewBox=\"0 0 1 1\"><path d=\"M0 0\"/></svg>");
    }

    @ParameterizedTest
    @MethodSource("attacks")
    void whatIsNotOnTheListIsRefused(String attack) {
        Problems problems = new Problems("figure.svg");
        assertThat(FigureReader.read("lessons/01/figure.svg", BEGIN + "\n" + attack + "</svg>", problems))
                .isEmpty();
        assertThat(problems.found()).isNotEmpty().allSatisfy(problem -> {
            assertThat(problem.line()).isEqualTo(2);
            assertThat(problem.field()).isEqualTo("figure");
        });
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<!DOCTYPE svg [<!ENTITY x SYSTEM \"file:///etc/passwd\">]>" + BEGIN + "<text>&x;</text></svg>",
                "<!DOCTYPE svg [<!ENTITY a \"aaaa\"><!ENTITY b \"&a;&a;&a;\">]>" + BEGIN + "<text>&b;</text></svg>",
                "<!DOCTYPE svg SYSTEM \"https://example.org/svg.dtd\">" + BEGIN + "</svg>",
                BEGIN + "<text>&unknown;</text></svg>",
                BEGIN + "<path d=\"M0 0\">",
                "not a drawing",
                "",
                "<html xmlns=\"http://www.w3.org/1999/xhtml\"><script>alert(1)</script></html>",
                "<svg viewBox=\"0 0 10 10\"><path d=\"M0 0\"/></svg>",
                "<svg xmlns=\"http://www.w3.org/2000/svg\"><path d=\"M0 0\"/></svg>"
            })
    void whatIsNoPlainDrawingIsRefused(String text) {
        Problems problems = new Problems("figure.svg");
        assertThat(FigureReader.read("lessons/01/figure.svg", text, problems)).isEmpty();
        assertThat(problems.found()).isNotEmpty();
        assertThat(problems.found().toString()).doesNotContain("root:");
    }

    @Test
    void whatIsDrawnIsKeptAndNothingElse() {
        Figure figure = read(BEGIN
                + "<?x y?><!-- c --><title>own</title><desc>own</desc><g class=\"f-line f-thin\" transform=\"translate(1 2)\">"
                + "<circle cx=\"1\" cy=\"2\" r=\"3.5\"/></g><text x=\"1\" y=\"2\"><![CDATA[<b>]]></text></svg>");
        assertThat(figure.viewBox()).isEqualTo("0 0 10 10");
        assertThat(figure.markup())
                .isEqualTo(
                        "<g class=\"f-line f-thin\" transform=\"translate(1 2)\"><circle cx=\"1\" cy=\"2\" r=\"3.5\">"
                                + "</circle></g><text x=\"1\" y=\"2\">&lt;b&gt;</text>");
    }

    @Test
    void anIdOfItsOwnBeginsWithTheNameOfTheFile() {
        assertThat(read(BEGIN + "<g id=\"figure-cup\"/></svg>").markup()).isEqualTo("<g id=\"figure-cup\"></g>");
    }

    private static Figure read(String text) {
        Problems problems = new Problems("figure.svg");
        Optional<Figure> figure = FigureReader.read("lessons/01/figure.svg", text, problems);
        assertThat(problems.found()).isEqualTo(List.<ContentProblem>of());
        return figure.orElseThrow();
    }
}
