package org.espalier.access;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.espalier.TestNetwork;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.jspecify.annotations.Nullable;
import org.springframework.aop.support.AopUtils;
import org.springframework.context.ApplicationContext;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.stereotype.Component;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;
import org.springframework.util.function.SingletonSupplier;

/** Calls every method of every service as anybody, and says what came of it. */
@Component
class ServiceCalls {

    private final ApplicationContext context;
    private final TestNetwork network;
    private final TransactionTemplate transactions;
    private final Supplier<String> contents = SingletonSupplier.of(this::contentsOfASite);

    ServiceCalls(ApplicationContext context, TestNetwork network, TransactionTemplate transactions) {
        this.context = context;
        this.network = network;
        this.transactions = transactions;
    }

    /** A method and what it is called on. */
    record Call(Object service, Method method) {}

    /** What came of a call: whether the guard refused it, and whether it told or did anything. */
    record Outcome(boolean refused, boolean told) {}

    /** By {@code Service.method}. */
    Map<String, Call> all() {
        var calls = new TreeMap<String, Call>();
        context.getBeansWithAnnotation(Service.class).values().stream()
                .filter(service -> isModuleRoot(AopUtils.getTargetClass(service)))
                .forEach(service -> publicMethods(AopUtils.getTargetClass(service))
                        .forEach(method -> calls.put(name(method), new Call(service, method))));
        return calls;
    }

    /** Reads the file itself, so that a mistake in the code that reads it for the guard does not hide. */
    static boolean isExpected(String name, String who) {
        return rows().stream()
                .filter(row -> row[0].equals("service") && row[1].equals(name))
                .map(row -> List.of(row[2].split(" ")))
                .anyMatch(keys ->
                        keys.contains(who) || keys.contains("PUBLIC") || keys.contains("ANY") && !who.equals("NOBODY"));
    }

    Outcome ask(@Nullable UUID staff, Call call, @Nullable Object[] arguments, boolean undo, List<String> secrets) {
        return staff == null
                ? ask(call, arguments, undo, secrets)
                : Callers.callAs(new Caller.Staff(staff), () -> ask(call, arguments, undo, secrets));
    }

    /** A digest of all rows of the site, the log of accesses apart: a refusal belongs there. */
    String contents(UUID site) {
        return network.owner()
                .sql(contents.get())
                .param("site", site)
                .query(String.class)
                .list()
                .toString();
    }

    private static boolean isModuleRoot(Class<?> type) {
        return type.getPackageName().matches("org\\.espalier\\.[a-z]+");
    }

    private static List<Method> publicMethods(Class<?> type) {
        return Arrays.stream(type.getDeclaredMethods())
                .filter(method -> Modifier.isPublic(method.getModifiers()))
                .filter(method -> !Modifier.isStatic(method.getModifiers()) && !method.isSynthetic())
                .toList();
    }

    private static String name(Method method) {
        return method.getDeclaringClass().getSimpleName() + "." + method.getName();
    }

    private static List<String[]> rows() {
        try (var file = Permission.class.getResourceAsStream("permissions.csv")) {
            return new String(Objects.requireNonNull(file).readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .map(line -> line.split(","))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Outcome ask(Call call, @Nullable Object[] arguments, boolean undo, List<String> secrets) {
        var outcome = new Outcome[1];
        try {
            transactions.executeWithoutResult(status -> {
                if (undo) {
                    status.setRollbackOnly();
                }
                outcome[0] = invoke(call, arguments, undo, secrets);
            });
        } catch (RuntimeException e) {
            return outcome[0] == null ? new Outcome(false, false) : outcome[0];
        }
        return outcome[0];
    }

    /** A method without an answer that did not complain counts as told where it may work; elsewhere the rows say. */
    private static Outcome invoke(Call call, @Nullable Object[] arguments, boolean mayWork, List<String> secrets) {
        try {
            var result = call.method().invoke(call.service(), arguments);
            boolean silent = call.method().getReturnType() == void.class;
            return new Outcome(false, silent ? mayWork : tells(result, secrets));
        } catch (InvocationTargetException e) {
            boolean guard = e.getCause() instanceof AccessDeniedException denied
                    && name(call.method()).equals(denied.getMessage());
            return new Outcome(guard, false);
        } catch (IllegalAccessException | IllegalArgumentException e) {
            return new Outcome(false, false);
        }
    }

    /** A report or an answer in words tells when it names what is secret; any other result when there is one. */
    private static boolean tells(@Nullable Object result, List<String> secrets) {
        return switch (result) {
            case null -> false;
            case Boolean truth -> truth;
            case Optional<?> optional ->
                optional.filter(one -> tells(one, secrets)).isPresent();
            case Collection<?> collection -> collection.stream().anyMatch(one -> tells(one, secrets));
            case Record words when !secrets.isEmpty() -> secrets.stream().anyMatch(words.toString()::contains);
            default -> true;
        };
    }

    private String contentsOfASite() {
        return network
                .owner()
                .sql("select table_name from information_schema.columns where table_schema = 'espalier'"
                        + " and column_name = 'site_id' and table_name <> 'access_entry' order by table_name")
                .query(String.class)
                .list()
                .stream()
                .map(name -> "select coalesce(md5(string_agg(t::text, ',' order by t::text)), '') from " + name
                        + " t where site_id = :site")
                .collect(Collectors.joining(" union all "));
    }
}
