package org.riseandgel.practice;

/** How far a person is with a skill, in words; a page adds a shape, never colour alone. */
public enum SkillState {
    NOT_BEGUN("not begun", "none"),
    BEGUN("begun", "begun"),
    GROWING("growing", "growing"),
    MASTERED("mastered", "mastered"),
    STUCK("stuck", "stuck");

    private final String words;
    private final String icon;

    SkillState(String words, String icon) {
        this.words = words;
        this.icon = icon;
    }

    /** What a page says. */
    public String words() {
        return words;
    }

    /** The shape beside the words, by its name in the icon sheet. */
    public String icon() {
        return icon;
    }
}
