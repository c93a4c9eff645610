package org.riseandgel.exercise;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.riseandgel.exercise.NumericTemplate.Condition;
import org.riseandgel.exercise.NumericTemplate.InputSource;
import org.riseandgel.exercise.NumericTemplate.WorkUse;

/** Whether texts name only what is drawn, and whether every drawn value is used and told. */
final class ToldNames {
    private final Known known;
    private boolean textsAreSound = true;
    private final Set<String> told = new LinkedHashSet<>();
    private final Set<String> used = new LinkedHashSet<>();

    private ToldNames(Known known) {
        this.known = known;
    }

    static void check(Fields root, Known known, List<Condition> conditions) {
        ToldNames names = new ToldNames(known);
        names.collectUses(known.works(), conditions);
        root.find("story").ifPresent(names::told);
        items(root, "ask").forEach(part -> part.inner("prompt").ifPresent(names::told));
        if (known.isComplete() && names.textsAreSound) {
            names.unusedOrUntold(root);
        }
        items(root, "hints").forEach(names::told);
    }

    private static List<Field> items(Fields root, String name) {
        return root.find(name).map(Field::items).orElse(List.of());
    }

    private void collectUses(List<WorkUse> works, List<Condition> conditions) {
        for (WorkUse work : works) {
            for (InputSource source : work.inputs().values()) {
                if (source instanceof InputSource.Drawn drawn) {
                    used.add(drawn.name());
                }
            }
        }
        for (Condition condition : conditions) {
            if (condition.value() instanceof ValueRef.Drawn drawn) {
                used.add(drawn.name());
            }
        }
    }

    private void told(Field field) {
        Optional<String> text = field.plain();
        if (text.isEmpty()) {
            return;
        }
        if (!NamedText.isBalanced(text.get())) {
            textsAreSound = false;
            field.problem("Has a brace without its partner; braces stand only around the name of a drawn value.");
            return;
        }
        for (String name : NamedText.names(text.get())) {
            if (!known.isDrawn(name)) {
                textsAreSound = false;
                field.problem("{%s} is not drawn; the drawn values are %s.".formatted(name, known.drawWords()));
            }
            told.add(name);
        }
    }

    private void unusedOrUntold(Fields root) {
        for (DrawRule rule : known.draws()) {
            Field field =
                    root.find("draw").flatMap(draw -> draw.inner(rule.name())).orElseThrow();
            if (!used.contains(rule.name()) && !told.contains(rule.name())) {
                field.problem("Is drawn but never used; take it out, or use it.");
            } else if (rule.count() > 1 && !told.contains(rule.name())) {
                field.problem("Differs from draw to draw but is never told; write {%s} in the story or a prompt."
                        .formatted(rule.name()));
            }
        }
    }
}
