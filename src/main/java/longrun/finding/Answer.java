package longrun.finding;

import longrun.plan.choice.Says;

/**
 * The decision of an inspector, fitter or supplier on a finding.
 *
 * @param says accepted or refused
 * @param who decided, as entered; empty where not entered
 * @param date the day, as entered; empty where not entered
 */
public record Answer(Says says, String who, String date) {}
