package longrun.sizing;

import longrun.origin.Confidence;

/**
 * One reason why a run counts as longer than it measures.
 *
 * @param what in trade words, with the section it stands in
 * @param feet what it adds
 * @param how the equation or table behind it
 * @param confidence how sure that is
 */
public record AllowanceItem(String what, double feet, String how, Confidence confidence) {}
