/**
 * The door: signing in by password, passkey or site token, sessions, and the filters that read the table of
 * permissions.
 */
@NullMarked
package org.espalier.access.internal;

import org.jspecify.annotations.NullMarked;
