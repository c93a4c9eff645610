package org.riseandgel.bench.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.riseandgel.bench.Calculation;
import org.riseandgel.bench.Catalogue;
import org.riseandgel.bench.Input;

class InputViewTest {
    @Test
    void everyKindOfInputThereIsHasItsView() {
        // a new kind must be described by InputView before it is added here
        assertThat(Input.class.getPermittedSubclasses()).isEqualTo(new Class<?>[] {
            Input.Measured.class, Input.Anything.class, Input.Choice.class, Input.Readings.class, Input.Mesh.class
        });
    }

    @Test
    void everyInputOfTheCatalogueIsDescribed() {
        for (Calculation calculation : Catalogue.standard().all()) {
            for (Input input : calculation.inputs()) {
                InputView view = InputView.of(input);
                assertThat(view.name()).isEqualTo(input.name());
                assertThat(Set.of("measured", "anything", "choice", "readings", "mesh"))
                        .contains(view.kind());
                assertThat(view.kind().equals("measured")).isEqualTo(view.unit() != null);
                assertThat(view.kind().equals("choice")).isEqualTo(view.options() != null);
            }
        }
    }
}
