package org.riseandgel.course;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.heading.anchor.IdGenerator;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.CustomBlock;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.riseandgel.exercise.Problems;

/**
 * Walks the text of a lesson once: puts the worked numbers in, names the headings, collects the links, counts the
 * words, and reports what does not belong in a lesson.
 */
final class BodyCheck extends AbstractVisitor {
    static final int FEWEST_WORDS = 600;
    static final int MOST_WORDS = 1_200;
    private static final Pattern NUMBER = Pattern.compile("\\{\\{\\s*([a-z][a-z0-9-]*)\\.([A-Za-z][A-Za-z0-9]*)\\s*}}");
    private static final Pattern WORD = Pattern.compile("\\S*[\\p{L}\\p{N}]\\S*");

    private final int linesBefore;
    private final Map<String, Worked> worked;
    private final Problems problems;
    private final IdGenerator anchors =
            IdGenerator.builder().prefix(Heading.PREFIX).build();
    private final Map<Node, Heading> headings = new LinkedHashMap<>();
    private final List<LinkUse> links = new ArrayList<>();
    private int words;
    private int lastLevel = 1;
    private String lastHeading = "";

    /** A worked name that maps to null was reported already. */
    BodyCheck(int linesBefore, Map<String, Worked> worked, Problems problems) {
        this.linesBefore = linesBefore;
        this.worked = worked;
        this.problems = problems;
    }

    Map<Node, Heading> headings() {
        return headings;
    }

    List<LinkUse> links() {
        return links;
    }

    /** Reports what only the whole text can tell. */
    void finish() {
        if (words < FEWEST_WORDS || words > MOST_WORDS) {
            problems.add(
                    linesBefore + 1,
                    "body",
                    "has %d words, must have %d to %d; %s"
                            .formatted(
                                    words,
                                    FEWEST_WORDS,
                                    MOST_WORDS,
                                    words < FEWEST_WORDS ? "say more" : "split it in two"));
        }
    }

    @Override
    public void visit(CustomBlock block) {
        visitChildren(block);
        if (block instanceof TableBlock) {
            LessonBlock frame = new LessonBlock.Scrolled(lineOf(block), lastHeading);
            block.insertBefore(frame);
            frame.appendChild(block);
        }
    }

    @Override
    public void visit(org.commonmark.node.Heading heading) {
        visitChildren(heading);
        int level = heading.getLevel();
        if (level == 1) {
            problems.add(lineOf(heading), "heading", "is of the first level, which is the title's; begin with ##");
        } else if (level > lastLevel + 1) {
            problems.add(lineOf(heading), "heading", "jumps over a level; use " + "#".repeat(lastLevel + 1));
        }
        lastLevel = level;
        String text = wordsOf(heading);
        lastHeading = text;
        headings.put(heading, new Heading(level, anchors.generateId(text), text));
    }

    @Override
    public void visit(Text text) {
        Matcher count = WORD.matcher(text.getLiteral());
        while (count.find()) {
            words++;
        }
        if (text.getLiteral().contains("{{")) {
            putNumbersIn(text);
        }
    }

    @Override
    public void visit(Link link) {
        links.add(new LinkUse(link, lineOf(link)));
        visitChildren(link);
    }

    @Override
    public void visit(Image image) {
        problems.add(
                lineOf(image), "image", "is not allowed in a lesson; use a figure block, which asks for a text too");
    }

    @Override
    public void visit(HtmlBlock html) {
        problems.add(lineOf(html), "html", "is not allowed in a lesson; write it as Markdown");
    }

    @Override
    public void visit(HtmlInline html) {
        problems.add(
                lineOf(html),
                "html",
                "%s is not allowed in a lesson; write it as Markdown".formatted(html.getLiteral()));
    }

    @Override
    public void visit(FencedCodeBlock fence) {
        if (fence.getParent() instanceof LessonBlock && !fence.getInfo().isBlank()) {
            problems.add(lineOf(fence), fence.getInfo(), "cannot stand inside another block; put it before or after");
        }
    }

    private void putNumbersIn(Text text) {
        String literal = text.getLiteral();
        Matcher number = NUMBER.matcher(literal);
        int from = 0;
        Node last = text;
        while (number.find()) {
            last = after(last, plain(literal.substring(from, number.start()), text));
            Node value = numberOrNull(number.group(1), number.group(2), lineOf(text));
            last = value == null ? last : after(last, value);
            from = number.end();
        }
        after(last, plain(literal.substring(from), text));
        text.unlink();
    }

    private Text plain(String literal, Text from) {
        if (literal.contains("{{")) {
            problems.add(
                    lineOf(from),
                    "number",
                    "“{{” must be followed by the name of a worked block, a point, a result and “}}”");
        }
        return new Text(literal);
    }

    private static Node after(Node last, Node next) {
        last.insertAfter(next);
        return next;
    }

    private Node numberOrNull(String name, String result, int line) {
        if (name.equals(EmergencyCall.OWNER)) {
            return emergencyOrNull(result, line);
        }
        Worked one = worked.get(name);
        if (one == null) {
            if (!worked.containsKey(name)) {
                problems.add(
                        line, "number", "{{%s.%s}}: no worked block here has “name: %s”".formatted(name, result, name));
            }
            return null;
        }
        if (!one.has(result)) {
            String known = String.join(
                    ", ",
                    one.calculation().results().stream().map(r -> r.name()).toList());
            problems.add(line, "number", "{{%s.%s}}: %s gives %s".formatted(name, result, name, known));
            return null;
        }
        return new InlineNumber(one, result);
    }

    private Node emergencyOrNull(String name, int line) {
        if (name.equals(EmergencyCall.NAME)) {
            return new EmergencyCall();
        }
        problems.add(
                line, "number", "{{school.%s}}: of the school a lesson can write {{school.emergency}}".formatted(name));
        return null;
    }

    /** The line of the file: a node's own, or that of the special block whose text it is in. */
    private int lineOf(Node node) {
        for (Node at = node; at != null; at = at.getParent()) {
            if (at instanceof LessonBlock block) {
                return block.line();
            }
        }
        for (Node at = node; at != null; at = at.getParent()) {
            if (!at.getSourceSpans().isEmpty()) {
                return linesBefore + at.getSourceSpans().get(0).getLineIndex() + 1;
            }
        }
        return linesBefore + 1;
    }

    private static String wordsOf(Node heading) {
        StringBuilder words = new StringBuilder();
        heading.accept(new AbstractVisitor() {
            @Override
            public void visit(Text text) {
                words.append(text.getLiteral());
            }

            @Override
            public void visit(Code code) {
                words.append(code.getLiteral());
            }
        });
        return words.toString();
    }
}
