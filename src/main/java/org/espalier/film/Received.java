package org.espalier.film;

/** What came of a file at the door. Whatever names a film is on the disk and in the database, whole. */
public sealed interface Received {

    /** Taken in; its picture is being prepared. */
    record Taken(FilmId film) implements Received {}

    /** The same bytes had been received before. */
    record AlreadyHere(FilmId film) implements Received {}

    /** Kept, but it cannot be shown. */
    record KeptAside(FilmId film, AsideReason reason) implements Received {}

    /** Not kept. */
    record Refused(DoorReason reason) implements Received {}
}
