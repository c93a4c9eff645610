package org.riseandgel.course;

import java.util.Optional;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.platform.content.ContentSource;

/** The course of this project as it is, for tests of rules that look at a course. */
public final class RealContent {
    private RealContent() {}

    /** The lessons and exercises of this project. */
    public static Content now() {
        return ContentLoader.load(new ContentSource(Optional.of(".")).read(), Catalogue.standard())
                .content();
    }
}
