package org.riseandgel.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.CustomBlock;
import org.commonmark.node.CustomNode;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;

/** Takes a lesson apart at its headings and leaves only its words, those of captions, cautions and asides included. */
final class PassageReader extends AbstractVisitor {
    /** Stands for a number that a worked example gives, which is written anew for each decimal mark. */
    private static final String NUMBER = "…";

    private final Map<Node, Heading> headings;
    private final List<Passage> passages = new ArrayList<>();
    private final StringBuilder text = new StringBuilder();
    private String heading = "";
    private String anchor = "";

    private PassageReader(Map<Node, Heading> headings) {
        this.headings = headings;
    }

    static List<Passage> read(Node document, Map<Node, Heading> headings) {
        PassageReader reader = new PassageReader(headings);
        document.accept(reader);
        reader.end();
        return reader.passages;
    }

    private void end() {
        passages.add(new Passage(heading, anchor, text.toString().strip()));
        text.setLength(0);
    }

    @Override
    public void visit(org.commonmark.node.Heading begun) {
        end();
        Heading known = headings.get(begun);
        heading = known.words();
        anchor = known.anchor();
    }

    @Override
    public void visit(Paragraph paragraph) {
        visitChildren(paragraph);
        text.append(' ');
    }

    @Override
    public void visit(Text words) {
        text.append(words.getLiteral().replace('\n', ' '));
    }

    @Override
    public void visit(Code code) {
        text.append(code.getLiteral());
    }

    @Override
    public void visit(SoftLineBreak line) {
        text.append(' ');
    }

    @Override
    public void visit(HardLineBreak line) {
        text.append(' ');
    }

    @Override
    public void visit(CustomNode node) {
        if (node instanceof InlineNumber) {
            text.append(NUMBER);
        }
        visitChildren(node);
        if (node instanceof TableCell) {
            text.append(' ');
        }
    }

    @Override
    public void visit(CustomBlock block) {
        if (block instanceof LessonBlock.Drawn drawn) {
            sentence(drawn.title);
        } else if (block instanceof LessonBlock.WorkedOut out) {
            sentence(out.worked.title());
            sentence(out.worked.story());
        } else if (block instanceof LessonBlock.Warned warned) {
            sentence(warned.word + ": " + warned.title);
        } else if (block instanceof LessonBlock.Beside beside) {
            sentence(beside.title);
        }
        visitChildren(block);
    }

    private void sentence(String words) {
        if (!words.isEmpty()) {
            text.append(words).append(words.endsWith(".") || words.endsWith("?") ? " " : ". ");
        }
    }
}
