package org.riseandgel.exercise;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.riseandgel.bench.Catalogue;

/**
 * Reads an exercise file and checks all that can be checked: every problem is noted with line, field and what would be
 * right, and a file with any problem gives no template.
 */
public final class TemplateLoader {
    private static final List<String> OF_ALL =
            List.of("id", "title", "skill", "level", "kind", "critical", "objectives", "at-the-bench", "story");
    private static final List<String> AT_END = List.of("hints", "source");
    private static final Map<ExerciseKind, List<String>> OF_KIND = Map.of(
            ExerciseKind.NUMERIC, List.of("draw", "work", "conditions", "ask", "slips", "given-steps"),
            ExerciseKind.CHOOSE_ONE, List.of("figure", "alt", "shown", "options"),
            ExerciseKind.CHOOSE_ALL, List.of("figure", "alt", "shown", "options"),
            ExerciseKind.PUT_IN_ORDER, List.of("shown", "steps"),
            ExerciseKind.MATCH, List.of("shown", "pairs", "others"));

    private final Catalogue catalogue;
    private final HeadReader heads;
    private final boolean stored;

    /** Checks against the calculations, and the skills and objectives of the course. */
    public TemplateLoader(Catalogue catalogue, Set<String> skills, Set<String> objectives) {
        this(catalogue, new HeadReader(Optional.of(skills), objectives), false);
    }

    private TemplateLoader(Catalogue catalogue, HeadReader heads, boolean stored) {
        this.catalogue = catalogue;
        this.heads = heads;
        this.stored = stored;
    }

    /** For files that were good once: a skill or objective that has since left the course is no problem. */
    static TemplateLoader ofStored(Catalogue catalogue) {
        return new TemplateLoader(catalogue, new HeadReader(Optional.empty(), Set.of()), true);
    }

    /** The template; nothing when the file has problems, which are then noted. */
    Optional<ExerciseTemplate> load(SourceFile file, FigureShelf figures, Problems problems) {
        return YamlReader.read(file.text(), problems)
                .flatMap(root -> Field.root(root, problems))
                .flatMap(root -> template(file, root, figures, problems));
    }

    private Optional<ExerciseTemplate> template(SourceFile file, Fields root, FigureShelf figures, Problems problems) {
        Optional<ExerciseKind> kind = HeadReader.kind(root);
        kind.ifPresent(one -> root.only(fieldsOf(one)));
        ExerciseTemplate.Head head = heads.read(file, root);
        Optional<ExerciseTemplate> template =
                kind.flatMap(one -> template(one, head, root, figures)).filter(good -> problems.none());
        if (!stored) {
            template.ifPresent(good -> rehearse(good, root, problems));
        }
        return template.filter(good -> problems.none());
    }

    private Optional<ExerciseTemplate> template(
            ExerciseKind kind, ExerciseTemplate.Head head, Fields root, FigureShelf figures) {
        return switch (kind) {
            case NUMERIC -> Optional.of(new NumericReader(catalogue).read(head, root));
            case CHOOSE_ONE, CHOOSE_ALL -> OptionsReader.read(head, kind, root, figures);
            case PUT_IN_ORDER -> OrderReader.read(head, root);
            case MATCH -> new MatchReader(figures).read(head, root);
        };
    }

    private void rehearse(ExerciseTemplate template, Fields root, Problems problems) {
        Drawer drawer = new Drawer(catalogue);
        if (template instanceof NumericTemplate numbers) {
            Rehearsal.check(numbers, drawer, root, problems);
            return;
        }
        try {
            drawer.draw(template, 1, Rehearsal.MOST_TRIES);
        } catch (UndrawableException undrawable) {
            root.problem(undrawable.getMessage() + " Show more of them.");
        }
    }

    private static String[] fieldsOf(ExerciseKind kind) {
        List<String> names = new ArrayList<>(OF_ALL);
        names.addAll(OF_KIND.get(kind));
        names.addAll(AT_END);
        return names.toArray(String[]::new);
    }
}
