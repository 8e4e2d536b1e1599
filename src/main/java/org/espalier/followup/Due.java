package org.espalier.followup;

import java.time.LocalDate;
import java.util.Optional;

/**
 * By when to look, and why.
 *
 * @param lookBy the last day on which the next look is in time
 * @param listBy the day by which an operation must be asked for, apart from the look
 * @param decideBy the day after which a choice is gone
 * @param film whether a film is worth taking then
 * @param rule the rule that decided
 * @param plate the growth plate that decided; empty when the rule is about the child
 * @param risk what a month's wait would risk
 * @param harm how bad it is to wait longer, as of the day the rules were asked
 */
public record Due(
        LocalDate lookBy,
        Optional<LocalDate> listBy,
        Optional<LocalDate> decideBy,
        boolean film,
        DueRule rule,
        Optional<GrowthPlate> plate,
        Risk risk,
        Harm harm) {}
