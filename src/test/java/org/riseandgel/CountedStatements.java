package org.riseandgel;

import io.agroal.api.AgroalDataSource;
import io.quarkus.arc.ClientProxy;
import io.quarkus.test.junit.QuarkusMock;
import java.lang.reflect.InvocationHandler;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.Statement;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/**
 * Writes down every statement that the program sends to the database from now until the end of the test, by SQL or
 * through entities:
 *
 * <pre>{@code
 * CountedStatements counted = CountedStatements.of(dataSource);
 * browser.get("/cohorts");
 * assertThat(counted.taken()).hasSizeLessThanOrEqualTo(3);
 * }</pre>
 */
public final class CountedStatements {
    private final List<String> statements = new CopyOnWriteArrayList<>();

    private CountedStatements() {}

    /** Begins to listen at the data source that was injected into a test. */
    public static CountedStatements of(AgroalDataSource injected) {
        CountedStatements counted = new CountedStatements();
        AgroalDataSource real = ClientProxy.unwrap(injected);
        CountedEntityStatements.tell(counted.statements::add);
        QuarkusMock.installMockForInstance(counted.listening(real), injected);
        return counted;
    }

    /** The statements since the last question. */
    public List<String> taken() {
        List<String> taken = List.copyOf(statements);
        statements.clear();
        return taken;
    }

    private AgroalDataSource listening(AgroalDataSource real) {
        return proxy(
                AgroalDataSource.class,
                real,
                (method, arguments, result) ->
                        method.getName().equals("getConnection") ? listening((Connection) result) : result);
    }

    private Connection listening(Connection real) {
        return proxy(Connection.class, real, (method, arguments, result) -> {
            if (result instanceof PreparedStatement prepared) {
                return listening(PreparedStatement.class, prepared, (String) arguments[0]);
            }
            return result instanceof Statement plain ? listening(Statement.class, plain, null) : result;
        });
    }

    private <S extends Statement> S listening(Class<S> type, S real, String sql) {
        return proxy(type, real, (method, arguments, result) -> {
            if (method.getName().startsWith("execute")) {
                statements.add(sql == null ? String.valueOf(arguments[0]) : sql);
            }
            return result;
        });
    }

    private interface After {
        Object seen(Method method, Object[] arguments, Object result);
    }

    private static <T> T proxy(Class<T> type, T real, After after) {
        InvocationHandler handler = (self, method, arguments) -> {
            try {
                return after.seen(method, arguments, method.invoke(real, arguments));
            } catch (InvocationTargetException e) {
                throw e.getCause();
            }
        };
        return type.cast(Proxy.newProxyInstance(type.getClassLoader(), new Class<?>[] {type}, handler));
    }
}
