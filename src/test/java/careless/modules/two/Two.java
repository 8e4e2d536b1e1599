package careless.modules.two;

/** What another module should not use. */
public record Two(int value) {}
