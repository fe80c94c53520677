package longrun.sizing;

import longrun.origin.Confidence;
import longrun.quantity.Length;

/**
 * One reason why a run counts as longer than it measures.
 *
 * @param what in trade words, with the section it stands in
 * @param length what it adds
 * @param how the equation or table behind it
 * @param confidence how sure that is
 */
public record AllowanceItem(String what, Length length, String how, Confidence confidence) {}
