package org.riseandgel.platform.sql;

import java.lang.reflect.Proxy;
import java.sql.SQLException;
import javax.sql.DataSource;

/** A database that does not answer. */
public final class NoDatabase {
    private NoDatabase() {}

    /** Statements that all fail as they do when the server is gone. */
    public static Sql sql() {
        return new Sql((DataSource) Proxy.newProxyInstance(
                NoDatabase.class.getClassLoader(), new Class<?>[] {DataSource.class}, (proxy, method, arguments) -> {
                    throw new SQLException("the connection was refused", "08001");
                }));
    }
}
