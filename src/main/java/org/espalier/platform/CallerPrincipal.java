package org.espalier.platform;

/** A signed-in principal that says for whom its requests speak. */
public interface CallerPrincipal {

    Caller caller();
}
