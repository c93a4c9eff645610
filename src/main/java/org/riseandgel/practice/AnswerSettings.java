package org.riseandgel.practice;

import io.smallrye.config.ConfigMapping;
import io.smallrye.config.WithDefault;

/** How long answers are kept. */
@ConfigMapping(prefix = "riseandgel.answers")
public interface AnswerSettings {
    /** Years after which the answers of practice may become counts; at least one. */
    @WithDefault("2")
    int keepYears();
}
