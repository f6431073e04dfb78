package dev.placket.pictures.css;

/**
 * One thing about the style sheets of a drawing that its designer should know.
 *
 * @param text one clause without a full stop
 * @param changesDrawing whether a style is left out that may show
 */
public record StyleNote(String text, boolean changesDrawing) {}
