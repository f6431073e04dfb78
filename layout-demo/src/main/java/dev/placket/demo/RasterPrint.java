package dev.placket.demo;

import dev.placket.layout.density.EffectiveDensity;
import dev.placket.layout.density.PixelSize;
import dev.placket.layout.density.PrintState;
import dev.placket.layout.image.FineDetail;
import java.awt.image.BufferedImage;

/**
 * What the pixels of a raster come to at its printed size.
 *
 * @param pixels the pixels of the whole picture
 * @param density pixels per printed inch
 * @param state what that means for the eye
 * @param wanted the pixels to ask for, for the whole picture at the size it aims at
 * @param image what is embedded for its ink
 * @param fine the finest line of it, in its pixels
 * @param resolvedShare the share of its density that carries detail, at most 1
 */
public record RasterPrint(
    PixelSize pixels,
    EffectiveDensity density,
    PrintState state,
    PixelSize wanted,
    BufferedImage image,
    FineDetail fine,
    double resolvedShare) {}
