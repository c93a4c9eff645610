package org.riseandgel.course;

/** The addresses of other features' pages that lessons lead to. */
final class Addresses {
    private Addresses() {}

    static String practice(String skill) {
        return "/practice#" + skill;
    }

    static String bench(String calculation) {
        return "/bench/" + calculation;
    }
}
