package org.riseandgel.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.platform.content.ContentSource;

/** The lessons and exercises of this project themselves. */
class RealCourseTest {
    private static final ContentLoader.Loaded REAL =
            ContentLoader.load(new ContentSource(Optional.of(".")).read(), Catalogue.standard());

    @Test
    void hasNoProblem() {
        assertThat(REAL.problems()).isEmpty();
    }
}
