package dev.placket.layout.fit;

/** What the fitter answers: a fit, or the conflict that says why there is none. */
public sealed interface Outcome permits Fit, Conflict {}
