package org.riseandgel;

import io.quarkus.hibernate.orm.PersistenceUnitExtension;
import java.util.function.Consumer;
import org.hibernate.resource.jdbc.spi.StatementInspector;

/** Hears the statements that come from entities; these go past the data source that a test can replace. */
@PersistenceUnitExtension
public class CountedEntityStatements implements StatementInspector {
    private static volatile Consumer<String> listener = statement -> {};

    static void tell(Consumer<String> to) {
        listener = to;
    }

    @Override
    public String inspect(String statement) {
        listener.accept(statement);
        return statement;
    }
}
