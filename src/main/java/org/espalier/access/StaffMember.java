package org.espalier.access;

import java.util.List;

/**
 * Somebody of the network as the operator sees them.
 *
 * @param active whether they may sign in
 * @param operator whether they run the network
 * @param memberships running and coming ones
 */
public record StaffMember(
        StaffId id, String login, String name, boolean active, boolean operator, List<Membership> memberships) {}
