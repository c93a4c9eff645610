package org.riseandgel.course;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Heading;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;

/** Links the first use of each word of the glossary in a lesson; headings and links stay as they are. */
final class TermLinks {
    private final Glossary glossary;
    private final Set<Term> met = new LinkedHashSet<>();

    private TermLinks(Glossary glossary) {
        this.glossary = glossary;
    }

    /** Puts the links in and gives the words that were met, in the order of the text. */
    static Set<Term> put(Node document, Glossary glossary) {
        TermLinks links = new TermLinks(glossary);
        texts(document).stream().filter(text -> text.getParent() != null).forEach(links::link);
        return links.met;
    }

    private static List<Text> texts(Node document) {
        List<Text> texts = new ArrayList<>();
        document.accept(new AbstractVisitor() {
            @Override
            public void visit(Text text) {
                texts.add(text);
            }

            @Override
            public void visit(Heading heading) {
                // The words of a heading are in the list of contents as well, where a link would lead elsewhere.
            }

            @Override
            public void visit(Link link) {
                // A link within a link is none.
            }
        });
        return texts;
    }

    private void link(Text text) {
        joinWithNext(text);
        String literal = text.getLiteral();
        List<WordRun> words = WordRun.of(literal);
        Node last = text;
        int done = 0;
        int passed = 0;
        for (int at = 0; at < words.size(); at++) {
            if (words.get(at).from() < passed) {
                continue;
            }
            Optional<Glossary.Use> use = glossary.useAt(literal, words, at);
            passed = use.map(Glossary.Use::to).orElse(passed);
            if (use.isPresent() && met.add(use.get().term())) {
                last = after(last, new Text(literal.substring(done, use.get().from())));
                last = after(last, link(use.get(), literal));
                done = use.get().to();
            }
        }
        if (done > 0) {
            after(last, new Text(literal.substring(done)));
            text.unlink();
        }
    }

    private static Link link(Glossary.Use use, String literal) {
        Link link = new Link(use.term().address(), use.term().means());
        link.appendChild(new Text(literal.substring(use.from(), use.to())));
        return link;
    }

    /** A word may go on in the next line of the file. */
    private static void joinWithNext(Text text) {
        while (text.getNext() instanceof SoftLineBreak line && line.getNext() instanceof Text next) {
            text.setLiteral(text.getLiteral() + "\n" + next.getLiteral());
            line.unlink();
            next.unlink();
        }
    }

    private static Node after(Node last, Node next) {
        last.insertAfter(next);
        return next;
    }
}
