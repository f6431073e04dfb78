package dev.placket.packs.sample;

import org.jspecify.annotations.Nullable;

/**
 * What is stated of a sample as a whole, in the first language of its pack; empty where nothing is.
 *
 * @param stage as in second fit
 * @param round its number, as written
 * @param colour the colourway that it is made in
 * @param received the date on which it came, as written
 * @param measured the date on which it was measured, as written
 * @param wash whether it was washed before; null if not stated
 * @param substitutions what is not as it was asked for
 * @param verdict what is decided on it; null for nothing yet
 * @param by who checked it
 */
public record CheckFacts(
    String stage,
    String round,
    String colour,
    String received,
    String measured,
    @Nullable Wash wash,
    String substitutions,
    @Nullable SampleVerdict verdict,
    String by) {}
