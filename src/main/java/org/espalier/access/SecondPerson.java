package org.espalier.access;

/**
 * Takes the word of a second person at the screen of the first, by that person's own name and password. It signs nobody
 * in.
 */
public interface SecondPerson {

    /** What came of it. */
    sealed interface Answer {

        /** It is who they say. */
        record Confirmed(StaffId staff) implements Answer {}

        /** Name or password is wrong; which is not told. */
        record Wrong() implements Answer {}

        /** Too many wrong ones: wait before the next. */
        record Wait() implements Answer {}
    }

    /** Looks at name and password; throttled like signing in. */
    Answer confirm(String login, String password);
}
