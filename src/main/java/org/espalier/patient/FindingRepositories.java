package org.espalier.patient;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.espalier.patient.JdbcFindingRepository.Entry;
import org.springframework.stereotype.Component;

/** Where findings are kept, each kind in its own table. */
@Component
class FindingRepositories {

    private final Map<Class<?>, JdbcFindingRepository<?>> byKind;

    FindingRepositories(List<JdbcFindingRepository<?>> all) {
        byKind = all.stream().collect(Collectors.toMap(JdbcFindingRepository::kind, Function.identity()));
    }

    /** Whether the entry of this kind is kept now; not when what it supersedes was superseded by another. */
    <F extends Finding> boolean add(Class<F> kind, Entry<F> entry) {
        return of(kind).add(entry);
    }

    <F extends Finding> History<F> all(Class<F> kind, ChildId child) {
        return of(kind).all(child);
    }

    /** A repository stands under the kind it keeps. */
    @SuppressWarnings("unchecked")
    private <F extends Finding> JdbcFindingRepository<F> of(Class<F> kind) {
        return (JdbcFindingRepository<F>) Objects.requireNonNull(byKind.get(kind), kind::getName);
    }
}
