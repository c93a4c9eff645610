package org.riseandgel.exercise;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The figures that lie beside an exercise, by file name. One that is itself broken is known, and its users not blamed. */
final class FigureShelf {
    static final FigureShelf EMPTY = new FigureShelf();

    private final Map<String, Optional<Figure>> figures = new LinkedHashMap<>();
    private final Map<String, String> texts = new LinkedHashMap<>();

    /** The figures of all folders, by folder; what is wrong with a figure is noted in a report of its own. */
    static Map<String, FigureShelf> byFolder(List<SourceFile> files, List<ContentProblem> found) {
        Map<String, FigureShelf> shelves = new HashMap<>();
        for (SourceFile file : files) {
            if (isFigure(file)) {
                Problems problems = new Problems(file.path());
                shelves.computeIfAbsent(file.folder(), folder -> new FigureShelf())
                        .put(file, problems);
                found.addAll(problems.found());
            }
        }
        return shelves;
    }

    static boolean isFigure(SourceFile file) {
        return file.path().endsWith(".svg");
    }

    /** The figures that were kept with a text. */
    static FigureShelf of(KeptText kept, Problems problems) {
        FigureShelf shelf = new FigureShelf();
        kept.figures().forEach((name, text) -> shelf.put(new SourceFile(name, text), problems));
        return shelf;
    }

    private void put(SourceFile file, Problems problems) {
        figures.put(file.name(), FigureReader.read(file.path(), file.text(), problems));
        texts.put(file.name(), file.text());
    }

    boolean has(String name) {
        return figures.containsKey(name);
    }

    Optional<Figure> figure(String name) {
        return figures.getOrDefault(name, Optional.empty());
    }

    String text(String name) {
        return texts.get(name);
    }

    /** All names, for messages. */
    String names() {
        return Known.words(figures.keySet());
    }
}
