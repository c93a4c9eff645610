package org.riseandgel.course;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.riseandgel.course.Simulation.Caution;
import org.riseandgel.course.Simulation.Choice;
import org.riseandgel.course.Simulation.Outcome;
import org.riseandgel.course.Simulation.Scene;
import org.riseandgel.exercise.Problems;

/**
 * Reads {@code lessons/simulations.yaml} and {@code lessons/simulations-<name>.yaml}, and finds scenes that lead nowhere or
 * that nobody can come to.
 */
final class SimulationsParser {
    private static final Pattern FILE = Pattern.compile("lessons/simulations(-[a-z0-9-]+)?\\.yaml");
    private static final Pattern ID = Pattern.compile("[a-z][a-z0-9-]{0,59}");
    private static final List<String> WORDS = List.of("DANGER", "WARNING", "CAUTION", "NOTICE");
    private static final int FEWEST = 3;
    private static final int MOST = 6;
    private static final int LONGEST = 600;
    private static final int LONGEST_MINUTES = 60;
    private static final int LEAST_SECONDS = 5;
    private static final int MOST_SECONDS = 600;

    private final List<String> skills;

    private SimulationsParser(List<String> skills) {
        this.skills = skills;
    }

    /** Whether a file of that path has simulations in it. */
    static boolean reads(String path) {
        return FILE.matcher(path).matches();
    }

    /**
     * Reads the simulations of a file.
     *
     * @param skills those of the course
     * @param seen ids that other files have used; those of this file are added
     */
    static List<Simulation> parse(String text, List<String> skills, Set<String> seen, Problems problems) {
        return Fields.read(text, 0, "simulations.yaml", problems)
                .map(fields -> new SimulationsParser(skills).simulations(fields, seen))
                .orElse(List.of());
    }

    private List<Simulation> simulations(Fields fields, Set<String> seen) {
        List<Simulation> simulations = new ArrayList<>();
        for (Fields group : fields.groups("simulations")) {
            simulations.add(simulation(group, seen));
        }
        fields.noOthers();
        return simulations;
    }

    private Simulation simulation(Fields fields, Set<String> seen) {
        String id = id(fields, seen);
        String title = fields.text("title");
        String about = fields.text("about");
        String skill = fields.text("skill");
        if (!skill.isEmpty() && !skills.contains(skill)) {
            fields.problem("skill", CourseParser.unknownSkill(skill, skills));
        }
        int minutes = fields.whole("minutes", 1, LONGEST_MINUTES);
        Map<String, Fields> places = new LinkedHashMap<>();
        List<Scene> scenes = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (Fields group : fields.groups("scenes")) {
            Scene scene = scene(id, group, ids);
            places.putIfAbsent(scene.id(), group);
            scenes.add(scene);
        }
        if (scenes.isEmpty() && !fields.isMissing("scenes")) {
            fields.problem("scenes", "is empty, must have at least one scene with choices and one without");
        }
        fields.noOthers();
        checkWays(scenes, places);
        return new Simulation(id, title, about, skill, minutes, scenes);
    }

    private static String id(Fields fields, Set<String> seen) {
        String id = fields.text("id");
        if (!id.isEmpty() && !ID.matcher(id).matches()) {
            fields.problem("id", "is “" + id + "”, must be small letters, digits and hyphens");
        } else if (!id.isEmpty() && !seen.add(id)) {
            fields.problem("id", "“" + id + "” is here twice; every id is used once");
        }
        return id;
    }

    private static Scene scene(String simulation, Fields fields, Set<String> ids) {
        String id = id(fields, ids);
        String title = fields.text("title");
        String text = text(fields, "text");
        int seconds = fields.isMissing("seconds") ? 0 : fields.whole("seconds", LEAST_SECONDS, MOST_SECONDS);
        Caution caution = fields.isMissing("caution")
                ? null
                : fields.group("caution").map(SimulationsParser::caution).orElse(null);
        boolean ending = fields.flag("ending");
        List<Choice> choices = ending ? noChoices(fields) : choices(simulation + "/" + id, fields);
        fields.noOthers();
        return new Scene(id, title, text, Math.max(0, seconds), caution, choices);
    }

    private static Caution caution(Fields fields) {
        Caution caution = new Caution(fields.text("word"), fields.text("title"), text(fields, "text"));
        if (!caution.word().isEmpty() && !WORDS.contains(caution.word())) {
            fields.problem("word", "is “%s”, must be one of %s".formatted(caution.word(), String.join(", ", WORDS)));
        }
        fields.noOthers();
        return caution;
    }

    private static List<Choice> noChoices(Fields fields) {
        if (!fields.isMissing("choices")) {
            fields.problem("choices", "cannot be in a scene with “ending: true”; take one of the two out");
        }
        return List.of();
    }

    private static List<Choice> choices(String scene, Fields fields) {
        List<Choice> choices = new ArrayList<>();
        Set<String> texts = new HashSet<>();
        for (Fields group : fields.groups("choices")) {
            Choice choice = choice(scene, group);
            if (!choice.text().isEmpty() && !texts.add(choice.text())) {
                group.problem("text", "“" + choice.text() + "” is offered twice; offer it once");
            }
            choices.add(choice);
        }
        if (!fields.isMissing("choices")) {
            checkChoices(fields, choices);
        }
        choices.sort(Comparator.comparing(Choice::key));
        return choices;
    }

    private static void checkChoices(Fields fields, List<Choice> choices) {
        if (choices.size() < FEWEST || choices.size() > MOST) {
            fields.problem("choices", "has %d choices, must have %d to %d".formatted(choices.size(), FEWEST, MOST));
        }
        if (choices.stream().noneMatch(choice -> choice.outcome() == Outcome.SAFE)) {
            fields.problem("choices", "has no choice with “outcome: safe”; there must be a way to do it rightly");
        }
    }

    private static Choice choice(String scene, Fields fields) {
        String text = text(fields, "text");
        String written = fields.text("outcome");
        if (!written.isEmpty() && Outcome.byId(written).isEmpty()) {
            fields.problem("outcome", "is “" + written + "”, must be safe, slip or harm");
        }
        Choice choice = new Choice(
                TextDigest.of(scene + "\n" + text).substring(0, 16),
                text,
                Outcome.byId(written).orElse(Outcome.SLIP),
                text(fields, "consequence"),
                text(fields, "why"),
                fields.text("to"));
        fields.noOthers();
        return choice;
    }

    private static String text(Fields fields, String name) {
        String text = fields.text(name);
        if (text.length() > LONGEST) {
            fields.problem(name, "has %d characters, at most %d".formatted(text.length(), LONGEST));
        }
        return text;
    }

    /** Every choice leads to a scene, every scene can be come to, and from every scene there is a way to an ending. */
    private static void checkWays(List<Scene> scenes, Map<String, Fields> places) {
        Map<String, List<String>> back = new HashMap<>();
        for (Scene scene : scenes) {
            for (Choice choice : scene.choices()) {
                if (!choice.to().isEmpty() && !places.containsKey(choice.to())) {
                    places.get(scene.id())
                            .problem(
                                    "choices",
                                    "leads to “%s”, which is no scene here; the scenes are %s"
                                            .formatted(choice.to(), String.join(", ", places.keySet())));
                }
                back.computeIfAbsent(choice.to(), to -> new ArrayList<>()).add(scene.id());
            }
        }
        if (scenes.isEmpty()) {
            return;
        }
        Map<String, List<String>> forth = new HashMap<>();
        scenes.forEach(scene ->
                forth.put(scene.id(), scene.choices().stream().map(Choice::to).toList()));
        Set<String> reached = walk(List.of(scenes.get(0).id()), forth);
        Set<String> ends =
                walk(scenes.stream().filter(Scene::isEnding).map(Scene::id).toList(), back);
        for (Scene scene : scenes) {
            if (!reached.contains(scene.id())) {
                places.get(scene.id()).problem("id", "no choice leads to this scene; lead one here or take it out");
            } else if (!ends.contains(scene.id())) {
                places.get(scene.id())
                        .problem("choices", "never come to an end; lead one to a scene with “ending: true”");
            }
        }
    }

    private static Set<String> walk(List<String> from, Map<String, List<String>> ways) {
        Set<String> seen = new HashSet<>(from);
        Deque<String> next = new ArrayDeque<>(from);
        while (!next.isEmpty()) {
            for (String to : ways.getOrDefault(next.pop(), List.of())) {
                if (seen.add(to)) {
                    next.push(to);
                }
            }
        }
        return seen;
    }
}
