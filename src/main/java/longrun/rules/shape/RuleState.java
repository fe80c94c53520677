package longrun.rules.shape;

import longrun.rules.limit.State;

/**
 * A rule's state at one place.
 *
 * @param rule its public name
 * @param at the id it stands at, or tank, site, plan
 * @param pointer JSON pointer of that place
 * @param state what it says there
 */
public record RuleState(String rule, String at, String pointer, State state) {}
