package dev.placket.layout.sheet;

/**
 * A region that pictures may use.
 *
 * <p>Windows that meet at a grid line act as one room for a flat that may use both.
 *
 * @param name unique among the sheet's windows
 * @param area where it lies in the grid
 */
public record SheetWindow(String name, GridArea area) {}
