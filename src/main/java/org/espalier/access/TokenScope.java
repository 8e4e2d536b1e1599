package org.espalier.access;

import java.util.EnumSet;
import java.util.Set;

/** What an archive may do with its key. */
public enum TokenScope {
    /** Send films. */
    SEND,
    /** Find and fetch films. */
    FETCH;

    /** Everything there is. */
    public static Set<TokenScope> all() {
        return EnumSet.allOf(TokenScope.class);
    }

    /** What a request needs. */
    public static TokenScope neededFor(String method) {
        return method.equals("GET") || method.equals("HEAD") ? FETCH : SEND;
    }

    /** As a session's or request's authorities name it. */
    public String authority() {
        return "SCOPE_" + name();
    }
}
