package org.riseandgel.platform.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LocalPathTest {
    private static final URI HERE = URI.create("https://school.example/sign-in");

    @ParameterizedTest
    @ValueSource(strings = {"/", "/today", "/account?done=ended", "/practice/1#answer", "/a/%2F%2Fb", "/a?next=//b"})
    void pathsOfThisServerAreKept(String path) {
        assertThat(LocalPath.of(path)).contains(path);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "today",
                "//other.example",
                "///other.example",
                "/\\other.example",
                "\\/other.example",
                "https://other.example",
                "/a b",
                "/a\nb",
                "/\tother",
                "javascript:alert(1)",
                "/.//other.example",
                "/a//b",
                "/..//other.example",
                "/[",
                "http:/today"
            })
    void everythingElseIsDropped(String path) {
        assertThat(LocalPath.of(path)).isEmpty();
    }

    @Property
    void whateverIsKeptLeadsToThisServer(
            @ForAll
                    @Chars({'/', '\\', ':', '.', '@', '?', '#', '%', 'a', 'h', '2', 'F', ' ', '\t'})
                    @StringLength(max = 12)
                    String path) {
        LocalPath.of(path).ifPresent(kept -> {
            URI target = HERE.resolve(kept).normalize();
            assertThat(target.getHost()).isEqualTo("school.example");
            assertThat(target.getScheme()).isEqualTo("https");
        });
    }
}
