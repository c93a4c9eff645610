package org.riseandgel.course;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Node;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.exercise.Figure;
import org.riseandgel.exercise.Problems;

/** Reads the Markdown of a lesson: turns its special blocks into what they mean, then has the whole text checked. */
final class BodyReader {
    private static final Set<String> KINDS = Set.of("figure", "worked", "caution", "aside");
    private static final Set<String> SIGNAL_WORDS = Set.of("DANGER", "WARNING", "CAUTION", "NOTICE");
    private static final Parser MARKDOWN = Parser.builder()
            .extensions(List.of(TablesExtension.create()))
            .includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES)
            .build();

    private final int linesBefore;
    private final Map<String, Figure> figures;
    private final Set<String> brokenFigures;
    private final Catalogue catalogue;
    private final Problems problems;
    private final Map<String, Worked> byName = new HashMap<>();
    private final List<Worked> worked = new ArrayList<>();
    private final List<String> drawn = new ArrayList<>();
    private boolean worksSomething;

    private BodyReader(int linesBefore, FiguresOfStage figures, Catalogue catalogue, Problems problems) {
        this.linesBefore = linesBefore;
        this.figures = figures.sound();
        this.brokenFigures = figures.broken();
        this.catalogue = catalogue;
        this.problems = problems;
    }

    /** The figures that lie beside a lesson: those that passed the check by file name, and the names of those that did not. */
    record FiguresOfStage(Map<String, Figure> sound, Set<String> broken) {}

    /** What was read, with the links that are still to be checked against all other lessons. */
    record Draft(LessonBody body, List<LinkUse> links) {}

    static Draft read(
            String markdown, int linesBefore, FiguresOfStage figures, Catalogue catalogue, Problems problems) {
        return new BodyReader(linesBefore, figures, catalogue, problems).draft(markdown);
    }

    private Draft draft(String markdown) {
        Node document = MARKDOWN.parse(markdown);
        for (FencedCodeBlock fence : fences(document)) {
            special(fence);
        }
        if (drawn.isEmpty()) {
            problems.add(linesBefore + 1, "body", "has no figure; draw at least one and show it in a figure block");
        }
        if (!worksSomething) {
            problems.add(linesBefore + 1, "body", "has no worked example; add at least one worked block");
        }
        BodyCheck check = new BodyCheck(linesBefore, byName, problems);
        document.accept(check);
        check.finish();
        return new Draft(new LessonBody(document, check.headings(), worked), check.links());
    }

    private static List<FencedCodeBlock> fences(Node document) {
        List<FencedCodeBlock> fences = new ArrayList<>();
        document.accept(new AbstractVisitor() {
            @Override
            public void visit(FencedCodeBlock fence) {
                fences.add(fence);
            }
        });
        return fences;
    }

    private void special(FencedCodeBlock fence) {
        String kind = fence.getInfo().strip();
        if (kind.isEmpty()) {
            return;
        }
        int line = linesBefore + fence.getSourceSpans().get(0).getLineIndex() + 1;
        if (!KINDS.contains(kind)) {
            problems.add(line, kind, "is not a block that lessons know; use figure, worked, caution or aside");
            return;
        }
        Fields.read(fence.getLiteral(), line, kind, problems)
                .flatMap(fields -> block(kind, fields, line))
                .ifPresent(block -> replace(fence, block));
    }

    private static void replace(FencedCodeBlock fence, LessonBlock block) {
        fence.insertBefore(block);
        fence.unlink();
    }

    private Optional<LessonBlock> block(String kind, Fields fields, int line) {
        return switch (kind) {
            case "figure" -> figure(fields, line);
            case "worked" -> worked(fields, line);
            case "caution" -> caution(fields, line);
            default -> aside(fields, line);
        };
    }

    private Optional<LessonBlock> figure(Fields fields, int line) {
        String file = fields.text("file");
        String title = fields.text("title");
        String alt = fields.text("alt");
        fields.noOthers();
        drawn.add(file);
        Figure figure = figures.get(file);
        if (figure == null && !file.isEmpty() && !brokenFigures.contains(file)) {
            fields.problem(
                    "file", "“%s” is not beside the lesson; put the drawing there or mend the name".formatted(file));
        }
        if (drawn.indexOf(file) < drawn.size() - 1) {
            fields.problem("file", "“" + file + "” is shown twice in this lesson; show a figure once");
        }
        return figure == null
                ? Optional.empty()
                : Optional.of(new LessonBlock.Drawn(line, figure, title, alt, drawn.size()));
    }

    private Optional<LessonBlock> worked(Fields fields, int line) {
        worksSomething = true;
        Optional<Worked> read = WorkedReader.read(fields, catalogue);
        read.ifPresentOrElse(
                one -> {
                    worked.add(one);
                    if (one.name().equals(EmergencyCall.OWNER)) {
                        fields.problem("name", "“school” stands for the school itself; choose another name");
                    }
                    if (!one.name().isEmpty() && byName.put(one.name(), one) != null) {
                        fields.problem(
                                "name", "“" + one.name() + "” is here twice; each worked block has its own name");
                    }
                },
                () -> byName.putIfAbsent(fields.optional("name").orElse(""), null));
        return read.map(one -> new LessonBlock.WorkedOut(line, one));
    }

    private Optional<LessonBlock> caution(Fields fields, int line) {
        String word = fields.text("word");
        if (!word.isEmpty() && !SIGNAL_WORDS.contains(word)) {
            fields.problem("word", "is “" + word + "”, must be DANGER, WARNING, CAUTION or NOTICE");
        }
        LessonBlock block = new LessonBlock.Warned(line, word, fields.text("title"));
        fill(block, fields.text("text"));
        fields.noOthers();
        return Optional.of(block);
    }

    private Optional<LessonBlock> aside(Fields fields, int line) {
        LessonBlock block = new LessonBlock.Beside(line, fields.text("title"));
        fill(block, fields.text("text"));
        fields.noOthers();
        return Optional.of(block);
    }

    private static void fill(LessonBlock block, String markdown) {
        Node inner = MARKDOWN.parse(markdown);
        while (inner.getFirstChild() != null) {
            block.appendChild(inner.getFirstChild());
        }
    }
}
