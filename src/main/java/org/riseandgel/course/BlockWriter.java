package org.riseandgel.course;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.commonmark.node.Node;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;
import org.commonmark.renderer.html.HtmlWriter;
import org.riseandgel.bench.Outcome;
import org.riseandgel.core.quantity.DecimalMark;

/** Writes the special blocks of a lesson, in the same marks as the tags that other pages are made of. */
final class BlockWriter implements NodeRenderer {
    private static final String TRIANGLE = "<svg viewBox=\"0 0 24 24\" aria-hidden=\"true\">"
            + "<path d=\"M12 2.5 23 21.5H1z\" fill=\"currentColor\"/>"
            + "<path d=\"M12 9v6m0 3v.4\" class=\"caution-hole\"/></svg>";

    private static final String NO_EMERGENCY = "nobody is entered yet: the office has to fill it in;"
            + " until then ask your instructor before you start, and dial the public emergency number";

    private final HtmlNodeRendererContext context;
    private final HtmlWriter html;
    private final DecimalMark mark;
    private final String emergency;

    BlockWriter(HtmlNodeRendererContext context, DecimalMark mark, String emergency) {
        this.context = context;
        this.html = context.getWriter();
        this.mark = mark;
        this.emergency = emergency;
    }

    @Override
    public Set<Class<? extends Node>> getNodeTypes() {
        return Set.of(
                LessonBlock.Drawn.class,
                LessonBlock.WorkedOut.class,
                LessonBlock.Warned.class,
                LessonBlock.Beside.class,
                LessonBlock.Scrolled.class,
                InlineNumber.class,
                EmergencyCall.class);
    }

    @Override
    public void render(Node node) {
        if (node instanceof LessonBlock.Drawn drawn) {
            drawn(drawn);
        } else if (node instanceof LessonBlock.WorkedOut out) {
            new WorkedWriter(html, mark).write(out.worked);
        } else if (node instanceof LessonBlock.Warned warned) {
            warned(warned);
        } else if (node instanceof LessonBlock.Beside beside) {
            beside(beside);
        } else if (node instanceof LessonBlock.Scrolled scrolled) {
            scrolled(scrolled);
        } else if (node instanceof InlineNumber number) {
            number(number);
        } else if (node instanceof EmergencyCall) {
            emergency();
        }
    }

    private void emergency() {
        html.tag("strong", Map.of("class", "emergency"));
        html.text(emergency.isBlank() ? NO_EMERGENCY : emergency);
        html.tag("/strong");
    }

    private void number(InlineNumber number) {
        Outcome outcome = number.worked.run();
        html.tag("span", Map.of("class", "worked-number"));
        html.text(Worked.written(outcome, number.worked.result(number.result), mark));
        html.tag("/span");
    }

    private void drawn(LessonBlock.Drawn drawn) {
        String title = "figure-" + drawn.number + "-title";
        String text = "figure-" + drawn.number + "-text";
        html.tag("figure");
        Map<String, String> frame = new LinkedHashMap<>();
        frame.put("role", "img");
        frame.put("focusable", "false");
        frame.put("viewBox", drawn.figure.viewBox());
        frame.put("aria-labelledby", title);
        frame.put("aria-describedby", text);
        html.tag("svg", frame);
        html.tag("title", Map.of("id", title));
        html.text(drawn.title);
        html.tag("/title");
        html.tag("desc", Map.of("id", text));
        html.text(drawn.alt);
        html.tag("/desc");
        html.raw(drawn.figure.markup());
        html.tag("/svg");
        html.tag("figcaption");
        html.text(drawn.title);
        html.tag("/figcaption");
        html.tag("/figure");
        html.line();
    }

    private void warned(LessonBlock.Warned warned) {
        Map<String, String> section = new LinkedHashMap<>();
        section.put("class", "caution " + look(warned.word));
        section.put("aria-label", warned.word + ": " + warned.title);
        html.tag("section", section);
        html.tag("p", Map.of("class", "caution-word"));
        if (!warned.word.equals("NOTICE")) {
            html.raw(TRIANGLE);
        }
        html.text(warned.word);
        html.tag("/p");
        html.tag("div", Map.of("class", "caution-body"));
        html.tag("p", Map.of("class", "caution-title"));
        html.text(warned.title);
        html.tag("/p");
        children(warned);
        html.tag("/div");
        html.tag("/section");
        html.line();
    }

    private static String look(String word) {
        return word.equals("CAUTION") ? "caution-level" : word.toLowerCase(Locale.ROOT);
    }

    private void beside(LessonBlock.Beside beside) {
        html.tag("details", Map.of("class", "aside"));
        html.tag("summary");
        html.text(beside.title);
        html.tag("/summary");
        children(beside);
        html.tag("/details");
        html.line();
    }

    private void scrolled(LessonBlock.Scrolled scrolled) {
        Map<String, String> frame = new LinkedHashMap<>();
        frame.put("class", "scroller");
        frame.put("tabindex", "0");
        frame.put("role", "region");
        frame.put("aria-label", scrolled.label.isEmpty() ? "Table" : "Table: " + scrolled.label);
        html.tag("div", frame);
        children(scrolled);
        html.tag("/div");
        html.line();
    }

    private void children(Node parent) {
        for (Node child = parent.getFirstChild(); child != null; child = child.getNext()) {
            context.render(child);
        }
    }
}
