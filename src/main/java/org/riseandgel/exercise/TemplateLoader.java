package org.riseandgel.exercise;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.bench.Slip;

/**
 * Reads an exercise file and checks all that can be checked: every problem is noted with line, field and what would be
 * right, and a file with any problem gives no template.
 */
public final class TemplateLoader {
    private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
    private static final int LONGEST_ID = 60;
    private static final int LONGEST_TITLE = 80;
    private static final int LONGEST_STORY = 1_500;
    private static final int LONGEST_LINE = 400;
    private static final int MOST_HINTS = 5;
    private static final int MOST_SLIPS = 20;

    private final Catalogue catalogue;
    private final Optional<Set<String>> skills;

    /** Checks against the calculations and the skills of the course. */
    public TemplateLoader(Catalogue catalogue, Set<String> skills) {
        this(catalogue, Optional.of(skills));
    }

    private TemplateLoader(Catalogue catalogue, Optional<Set<String>> skills) {
        this.catalogue = catalogue;
        this.skills = skills;
    }

    /** For files that were good once: a skill that has since left the course is no problem. */
    static TemplateLoader ofStored(Catalogue catalogue) {
        return new TemplateLoader(catalogue, Optional.empty());
    }

    /** The template; nothing when the file has problems, which are then noted. */
    public Optional<ExerciseTemplate> load(SourceFile file, Problems problems) {
        return YamlReader.read(file.text(), problems)
                .flatMap(root -> Field.root(root, problems))
                .flatMap(root -> template(file, root, problems));
    }

    private Optional<ExerciseTemplate> template(SourceFile file, Fields root, Problems problems) {
        root.only(
                "id",
                "title",
                "skill",
                "level",
                "kind",
                "critical",
                "story",
                "draw",
                "work",
                "conditions",
                "ask",
                "slips",
                "given-steps",
                "hints",
                "source");
        String id = id(root, file);
        String title = line(root, "title", LONGEST_TITLE);
        String skill = skill(root, file);
        int level = root.need("level").flatMap(field -> field.whole(1, 3)).orElse(1);
        kind(root);
        boolean critical = root.find("critical").flatMap(Field::flag).orElse(false);
        String story = line(root, "story", LONGEST_STORY);
        Known known = new Known();
        DrawSection.read(root, known);
        new WorkSection(catalogue, known).read(root);
        AskSection asks = new AskSection(known);
        List<ExerciseTemplate.Condition> conditions = asks.conditions(root);
        List<ExerciseTemplate.Part> parts = asks.parts(root);
        List<ValueRef.OfStep> givenSteps = asks.givenSteps(root);
        List<Slip> slips = slips(root);
        List<String> hints = hints(root);
        String source = line(root, "source", LONGEST_LINE);
        ToldNames.check(root, known, conditions);
        if (!problems.none()) {
            return Optional.empty();
        }
        ExerciseTemplate template = new ExerciseTemplate(
                file,
                Version.of(file.text()),
                id,
                title,
                skill,
                level,
                critical,
                story,
                known.draws(),
                known.works(),
                conditions,
                parts,
                slips,
                givenSteps,
                hints,
                source);
        if (skills.isPresent()) {
            Rehearsal.check(template, new Drawer(catalogue), root, problems);
        }
        return problems.none() ? Optional.of(template) : Optional.empty();
    }

    private static String line(Fields root, String name, int longest) {
        return root.need(name).flatMap(field -> field.text(longest)).orElse("");
    }

    private static String id(Fields root, SourceFile file) {
        Optional<Field> field = root.need("id");
        String id = field.flatMap(f -> f.text(LONGEST_ID)).orElse("");
        if (id.isEmpty()) {
            return id;
        }
        if (!ID.matcher(id).matches()) {
            field.get().problem("Is “%s”; write small letters, digits and single hyphens.".formatted(id));
        } else if (!file.name().equals(id + ".yaml")) {
            field.get().problem("Is “%s”, but the file is %s; they must agree.".formatted(id, file.name()));
        }
        return id;
    }

    private String skill(Fields root, SourceFile file) {
        Optional<Field> field = root.need("skill");
        String skill = field.flatMap(f -> f.text(LONGEST_ID)).orElse("");
        if (skill.isEmpty()) {
            return skill;
        }
        if (skills.isPresent() && !skills.get().contains(skill)) {
            field.get()
                    .problem("“%s” is no skill of the course; the skills are %s."
                            .formatted(
                                    skill,
                                    String.join(
                                            ", ", skills.get().stream().sorted().toList())));
        } else if (!file.folder().equals(skill)) {
            field.get()
                    .problem("Is “%s”, but the file is in the folder %s; they must agree."
                            .formatted(skill, file.folder()));
        }
        return skill;
    }

    private static void kind(Fields root) {
        root.need("kind").ifPresent(field -> field.text(LONGEST_ID)
                .filter(kind -> !kind.equals("numeric"))
                .ifPresent(kind -> field.problem("Is “%s”; the kind must be numeric.".formatted(kind))));
    }

    private static List<Slip> slips(Fields root) {
        return root.find("slips").map(field -> field.list(MOST_SLIPS)).orElse(List.of()).stream()
                .map(TemplateLoader::slip)
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<Slip> slip(Field field) {
        return field.text(LONGEST_ID).flatMap(id -> {
            Optional<Slip> slip = Slip.byId(id);
            if (slip.isEmpty()) {
                field.problem("“%s” is no slip known here; the slips are %s.".formatted(id, SlipNames.all()));
            } else if (slip.get() == Slip.POWER_OF_TEN || slip.get() == Slip.ROUNDED_EARLY) {
                field.problem("“%s” is looked for in every exercise; leave it out.".formatted(id));
            }
            return slip;
        });
    }

    private static List<String> hints(Fields root) {
        return root.find("hints").map(field -> field.list(MOST_HINTS)).orElse(List.of()).stream()
                .map(field -> field.text(LONGEST_LINE))
                .flatMap(Optional::stream)
                .toList();
    }
}
